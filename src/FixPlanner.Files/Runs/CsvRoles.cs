namespace FixPlanner.Files.Runs;

/// <summary>What a column of a run file can be.</summary>
public static class CsvRoles
{
    /// <summary>All roles, the needed ones first.</summary>
    public static IReadOnlyList<string> All { get; } =
        ["time", "speed", "run", "direction", "configuration", "wind", "temperature", "pressure", "date", "mass", "latitude", "longitude", "course"];
}
