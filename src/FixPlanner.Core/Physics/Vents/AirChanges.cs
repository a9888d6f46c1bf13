using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>How often the air of the cabin is replaced, and what leak that takes.</summary>
public static class AirChanges
{
    /// <summary>Air changes per hour of a compartment.</summary>
    /// <param name="solution">Flows of the network.</param>
    /// <param name="compartment">Usually the cabin.</param>
    /// <param name="volume">Free volume of air in it, above zero.</param>
    /// <returns>Per hour.</returns>
    /// <validity>All air that enters counts, also from the engine bay; well mixed.</validity>
    /// <uncertainty>That of the flows, 20 to 30 %, and of the leak areas, often a factor of two.</uncertainty>
    /// <source key="definition" place="air change rate">n = Q / V, for an hour</source>
    /// <exception cref="ArgumentOutOfRangeException">Volume not above zero.</exception>
    public static double PerHour(VentSolution solution, string compartment, Volume volume)
    {
        double flow = solution.Throughflow(compartment).KilogramsPerSecond / solution.DensityIn(compartment).KilogramsPerCubicMetre;
        return 3600 * flow / Valid.Positive(volume.CubicMetres, "m3", nameof(volume));
    }

    /// <summary>Leak area that a measured air change rate speaks for.</summary>
    /// <param name="perHour">Air changes per hour, zero or more.</param>
    /// <param name="volume">Free volume of the cabin, above zero.</param>
    /// <param name="speed">Of the air, above zero.</param>
    /// <param name="pressureCoefficientAcross">Cp where air comes in minus Cp where it goes out, above zero; 0.4 is a usual guess for leaks.</param>
    /// <returns>Discharge coefficient times area of the way in and the way out in series.</returns>
    /// <validity>All vents shut, so that leaks alone pass air; square-root leaks.</validity>
    /// <uncertainty>The pressure coefficient is a guess within a factor of two: 40 % on the area.</uncertainty>
    /// <source key="own-derivation" place="orifice law solved for the area; rates of Knibbs, de Dear and Atkinson 2009 as example">CdA = n V / (3600 U sqrt(dCp))</source>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static Area LeakArea(double perHour, Volume volume, AirSpeed speed, double pressureCoefficientAcross)
    {
        double flow = Valid.NotNegative(perHour, "per hour") * Valid.Positive(volume.CubicMetres, "m3", nameof(volume)) / 3600;
        double across = Math.Sqrt(Valid.Positive(pressureCoefficientAcross, "(a coefficient)"));
        return Area.FromSquareMetres(flow / (Valid.Positive(speed.MetresPerSecond, "m/s", nameof(speed)) * across));
    }
}
