namespace FixPlanner.Files.Runs;

/// <summary>A unit of speed with its factor to m/s.</summary>
/// <param name="Name">As it is written for people.</param>
/// <param name="MetresPerSecond">One of it in m/s.</param>
public sealed record SpeedUnit(string Name, double MetresPerSecond)
{
    /// <summary>Kilometres per hour.</summary>
    public static SpeedUnit KilometresPerHour { get; } = new("km/h", 1 / 3.6);

    /// <summary>Metres per second.</summary>
    public static SpeedUnit MetresPerSecondUnit { get; } = new("m/s", 1);

    /// <summary>Miles per hour.</summary>
    public static SpeedUnit MilesPerHour { get; } = new("mph", 0.44704);

    /// <summary>Knots.</summary>
    public static SpeedUnit Knots { get; } = new("kn", 1852.0 / 3600);

    /// <summary>The unit that a word means; null when it is none.</summary>
    /// <param name="word">As written in a header or on the command line.</param>
    /// <returns>The unit or null.</returns>
    public static SpeedUnit? Of(string word)
    {
        ArgumentNullException.ThrowIfNull(word);
        return word.Trim().ToLowerInvariant() switch
        {
            "km/h" or "kmh" or "kph" or "kmph" or "km_h" or "kilometers/hour" or "kilometres/hour" => KilometresPerHour,
            "m/s" or "ms" or "mps" or "m_s" or "meters/second" or "metres/second" => MetresPerSecondUnit,
            "mph" or "mi/h" or "miles/hour" => MilesPerHour,
            "kn" or "kt" or "kts" or "knots" or "knot" => Knots,
            _ => null,
        };
    }
}
