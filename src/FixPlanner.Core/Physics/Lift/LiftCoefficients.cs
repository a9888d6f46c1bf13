using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Lift;

/// <summary>Lift of old saloons as far as anyone can say without measuring: on frontal area, up positive.</summary>
public static class LiftCoefficients
{
    /// <summary>Front axle: 0 to 0.35, because blunt noses without an air dam reach the upper end.</summary>
    /// <source key="from-memory" place="docs/theory/crosswind-and-lift.md">range</source>
    public static Triangle Front { get; } = new(0, 0.12, 0.35);

    /// <summary>Rear axle: notchbacks and fastbacks high, square backs low.</summary>
    /// <source key="from-memory" place="docs/theory/crosswind-and-lift.md">range</source>
    public static Triangle Rear { get; } = new(0.05, 0.20, 0.35);
}
