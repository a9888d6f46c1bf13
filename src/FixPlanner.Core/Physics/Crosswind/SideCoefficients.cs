using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Crosswind;

/// <summary>How side force and yaw moment of a body rise with yaw, for each degree, on frontal area and wheelbase.</summary>
/// <param name="SideForcePerDegree">C_Y'.</param>
/// <param name="YawMomentPerDegree">C_N', nose turned downwind.</param>
public sealed record SideCoefficients(Triangle SideForcePerDegree, Triangle YawMomentPerDegree)
{
    /// <summary>Saloons, estates and hatchbacks.</summary>
    /// <source key="hucho" place="ch. 5 (from memory)">range</source>
    public static SideCoefficients Car { get; } = new(new(0.03, 0.04, 0.05), new(0.004, 0.007, 0.010));

    /// <summary>Forward-control vans: half as much again, because the flat side is so much larger than the front.</summary>
    /// <source key="from-memory" place="docs/theory/crosswind-and-lift.md">range</source>
    public static SideCoefficients ForwardControlVan { get; } = new(new(0.05, 0.06, 0.07), new(0.004, 0.007, 0.010));
}
