namespace FixPlanner.Core.Pictures;

/// <summary>A block of cells of a drawing in characters.</summary>
/// <param name="X">First column, counted from 0.</param>
/// <param name="Y">First row, counted from 0.</param>
/// <param name="Width">Columns, at least 1.</param>
/// <param name="Height">Rows, at least 1.</param>
public readonly record struct CellBox(int X, int Y, int Width, int Height);
