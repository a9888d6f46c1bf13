using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Crosswind;

/// <summary>Winds at which people start to feel it, are warned, or should not test.</summary>
public static class WindThresholds
{
    /// <summary>Wind from which cars need correction: 25 to 30 mph.</summary>
    /// <source key="driver-advice-page" place="first section">25 to 30 mph</source>
    public static AirSpeed NeedsCorrection { get; } = AirSpeed.FromMilesPerHour(27.5);

    /// <summary>Gust for which a weather service warns of high wind: 58 mph.</summary>
    /// <source key="us-nws" place="criterion as quoted on a driver advice page">58 mph</source>
    public static AirSpeed HighWindGust { get; } = AirSpeed.FromMilesPerHour(58);

    /// <summary>Mean wind above which a coast-down day is called off.</summary>
    /// <source key="own-choice" place="tighter than the limits of the standards, which are from memory">5 m/s</source>
    public static AirSpeed TestDayMean { get; } = AirSpeed.FromMetresPerSecond(5);

    /// <summary>Wind across the road above which a coast-down day is called off.</summary>
    /// <source key="own-choice" place="tighter than the limits of the standards, which are from memory">2 m/s</source>
    public static AirSpeed TestDayAcross { get; } = AirSpeed.FromMetresPerSecond(2);
}
