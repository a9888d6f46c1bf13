namespace FixPlanner.Core.Pictures;

/// <summary>A car drawn from the side in ASCII characters, its nose at the left, with the cells of each zone.</summary>
/// <param name="Rows">Rows of equal length.</param>
/// <param name="Zones">Zone id to the blocks of cells that show it; a block is always inside the drawing.</param>
public sealed record CharacterDrawing(IReadOnlyList<string> Rows, IReadOnlyDictionary<string, IReadOnlyList<CellBox>> Zones)
{
    /// <summary>Columns.</summary>
    public int Width => Rows[0].Length;

    /// <summary>Rows.</summary>
    public int Height => Rows.Count;
}
