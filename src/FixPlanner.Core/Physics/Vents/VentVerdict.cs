using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>Which way a vent blows over a band of speeds, where it turns, and why.</summary>
/// <param name="Direction">The answer.</param>
/// <param name="TurnsAt">Speeds at which it turns, rising; empty unless it turns.</param>
/// <param name="InWhenSlow">Its direction at the low end of the band: true for in.</param>
/// <param name="Reason">What makes it turn, or what holds it.</param>
/// <param name="WeakestPressureShare">Smallest pressure across it over the band, as a share of the dynamic pressure.</param>
public sealed record VentVerdict(VentDirection Direction, IReadOnlyList<RoadSpeed> TurnsAt, bool InWhenSlow, VentDriver Reason, double WeakestPressureShare)
{
    /// <summary>Below this share of the dynamic pressure a direction is not worth stating: tap readings differ by as much from day to day.</summary>
    public const double ReadableShare = 0.05;

    /// <summary>True when the pressures are so close that the direction may be the other one.</summary>
    public bool IsClose => Direction is VentDirection.AlwaysIn or VentDirection.AlwaysOut && WeakestPressureShare < ReadableShare;
}
