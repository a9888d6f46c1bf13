namespace FixPlanner.Core.Pictures;

/// <summary>A point of a drawing.</summary>
/// <param name="X">To the right: in columns for a drawing in characters, in cm for one in lines. Any finite number.</param>
/// <param name="Y">Downward: in rows, or in cm.</param>
public readonly record struct PicturePoint(double X, double Y);
