using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>A U-tube with water, or a cheap sensor, between two taps.</summary>
public static class PressureGauge
{
    private const double PascalsPerMillimetre = 9.80665;

    /// <summary>What a water column weighs.</summary>
    /// <param name="millimetres">Difference of the two levels; signed.</param>
    /// <returns>The pressure difference.</returns>
    /// <validity>Clean water; a slope of the car shifts it, so read it at rest as well and take that off.</validity>
    /// <uncertainty>1 mm by eye, that is 10 Pa.</uncertainty>
    /// <source key="definition" place="conventional millimetre of water, from memory">9.80665 Pa</source>
    public static PressureDifference FromWater(double millimetres) => PressureDifference.FromPascals(millimetres * PascalsPerMillimetre);

    /// <summary>Smallest step of a pressure coefficient that a gauge reads.</summary>
    /// <param name="step">Smallest step of the gauge: 1 mm of water is 9.8 Pa.</param>
    /// <param name="speed">Air past the car; above zero.</param>
    /// <param name="density">Of the air.</param>
    /// <returns>A pure number.</returns>
    /// <validity>Steady speed.</validity>
    /// <uncertainty>That of the speed: 1 km/h in 80 is 2.5 %.</uncertainty>
    /// <source key="arithmetic" place="Δp / q">definition of the coefficient</source>
    public static double CoefficientStep(PressureDifference step, AirSpeed speed, AirDensity density) =>
        Math.Abs(step.Pascals) / (0.5 * density.KilogramsPerCubicMetre * speed.MetresPerSecond * speed.MetresPerSecond);
}
