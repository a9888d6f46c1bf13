namespace FixPlanner.Files.Runs;

/// <summary>What the person says about the files, where the files do not say it themselves.</summary>
public sealed record RunReadingOptions
{
    /// <summary>Nothing said.</summary>
    public static RunReadingOptions None { get; } = new();

    /// <summary>Column to use for a role: time, speed, run, direction, configuration, wind, temperature, pressure, date, mass, latitude, longitude, course.</summary>
    public IReadOnlyDictionary<string, string> Columns { get; init; } = new Dictionary<string, string>();

    /// <summary>Unit of speeds that carry none; it never overrides a unit that the file states.</summary>
    public SpeedUnit? SpeedUnit { get; init; }

    /// <summary>Use NMEA sentences whose checksum is wrong.</summary>
    public bool IgnoreChecksum { get; init; }
}
