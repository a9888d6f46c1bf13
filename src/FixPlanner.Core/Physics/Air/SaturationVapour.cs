using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Air;

/// <summary>Water vapour that air can hold.</summary>
public static class SaturationVapour
{
    /// <summary>Pressure of water vapour over a flat surface of pure water.</summary>
    /// <param name="temperature">T, of the air.</param>
    /// <returns>p_sv.</returns>
    /// <validity>Made for 0 to 27 °C; used here from -20 to 45 °C, where it stays within 0.3 % of steam tables (below 0 °C over undercooled water, not ice).</validity>
    /// <uncertainty>Of no weight beside the humidity itself: 0.05 % at 27 °C.</uncertainty>
    /// <source key="picard-2008" place="appendix A1 (constants partly from memory)">p_sv = exp(A T² + B T + C + D / T)</source>
    public static Pressure Pressure(Temperature temperature)
    {
        double kelvins = temperature.Kelvins;
        return Quantities.Pressure.FromPascals(Math.Exp((1.2378847e-5 * kelvins * kelvins) - (1.9121316e-2 * kelvins) + 33.93711047 - (6.3431645e3 / kelvins)));
    }

    /// <summary>How much more vapour real air holds than a vacuum: about 0.4 %.</summary>
    internal static double Enhancement(double pressurePa, double celsius) => 1.00062 + (3.14e-8 * pressurePa) + (5.6e-7 * celsius * celsius);
}
