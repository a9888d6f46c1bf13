using FixPlanner.Core.Quantities;
using MathNet.Numerics.Distributions;

namespace FixPlanner.Core.Physics.Glass;

/// <summary>How likely a pane leaves its edge at a load. A belief that ranks cars and fixes, not a measured rate.</summary>
public static class LossProbability
{
    /// <summary>Spread of the load from pressures that were not measured: standard deviation of its natural logarithm.</summary>
    public const double UsualLoadDeviation = 0.34;

    /// <summary>Chance that the load beats the hold.</summary>
    /// <param name="peakEdge">Middle value of the peak edge load; nothing is lost at or below zero.</param>
    /// <param name="hold">What is believed of the edge.</param>
    /// <param name="loadDeviation">Standard deviation of the logarithm of the load, zero or more.</param>
    /// <returns>0 to 1.</returns>
    /// <validity>One drive at this speed in the stated gust. Logarithms of load and hold taken as normal.</validity>
    /// <uncertainty>Within a factor of ten either way: it rests on a hold that nobody measured.</uncertainty>
    /// <source key="own-derivation" place="load against strength, both log-normal">P = Phi(ln(load / hold) / sqrt(sL² + sH²))</source>
    /// <exception cref="ArgumentOutOfRangeException">Deviation below zero.</exception>
    public static double At(LineLoad peakEdge, GlassHold hold, double loadDeviation = UsualLoadDeviation)
    {
        if (peakEdge.NewtonsPerMetre <= 0)
        {
            return 0;
        }

        double spread = Math.Sqrt(Math.Pow(Valid.NotNegative(loadDeviation, "(a deviation)"), 2) + Math.Pow(hold.LogDeviation, 2));
        return Normal.CDF(0, 1, Math.Log(peakEdge.NewtonsPerMetre / hold.Middle.NewtonsPerMetre) / spread);
    }
}
