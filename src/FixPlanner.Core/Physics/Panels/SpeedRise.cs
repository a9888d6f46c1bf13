using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Panels;

/// <summary>What a higher top speed does to every load of the air.</summary>
public static class SpeedRise
{
    /// <summary>Load at the new speed over load at the old, the gust in both.</summary>
    /// <param name="from">Old speed, above zero.</param>
    /// <param name="to">New speed.</param>
    /// <param name="gust">Speed that a gust adds; zero for the plain square.</param>
    /// <returns>Factor.</returns>
    /// <validity>Coefficients that do not change with speed.</validity>
    /// <uncertainty>None of the rule; shapes that lift or open change the coefficients.</uncertainty>
    /// <source key="definition" place="q goes with the square of the speed">((V2 + w) / (V1 + w))²</source>
    /// <exception cref="ArgumentOutOfRangeException">Old speed not above zero, or new speed below zero.</exception>
    public static double LoadFactor(AirSpeed from, AirSpeed to, AirSpeed gust)
    {
        double before = Valid.Positive(from.MetresPerSecond, "m/s", nameof(from)) + gust.MetresPerSecond;
        double after = Valid.NotNegative(to.MetresPerSecond, "m/s", nameof(to)) + gust.MetresPerSecond;
        return after * after / (before * before);
    }
}
