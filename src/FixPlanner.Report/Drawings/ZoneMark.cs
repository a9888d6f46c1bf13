namespace FixPlanner.Report.Drawings;

/// <summary>A zone that is marked on the drawing of the car.</summary>
/// <param name="Number">Its number on the drawing, from 1.</param>
/// <param name="Zone">Id of the zone.</param>
/// <param name="Pattern">lines, dots, cross, or empty for an outline only.</param>
/// <param name="Second">A second pattern over the first, or empty.</param>
internal sealed record ZoneMark(int Number, string Zone, string Pattern, string Second = "")
{
    /// <summary>Tufts drawn in the zone; 0 for none.</summary>
    public int Tufts { get; init; }
}
