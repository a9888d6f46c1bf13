namespace FixPlanner.Core.Measurement.Sizing;

/// <summary>The air on the day of a comparison, in three steps that a person can tell apart.</summary>
public enum TestWeather
{
    /// <summary>Smoke rises straight: mean wind about 0.5 m/s, gusts of 0.2 m/s. Usually the hour after dawn.</summary>
    Calm,

    /// <summary>Leaves rustle: about 1.5 m/s, gusts of 0.6 m/s.</summary>
    Ordinary,

    /// <summary>Twigs move: about 3 m/s, gusts of 1.2 m/s.</summary>
    Gusty,
}
