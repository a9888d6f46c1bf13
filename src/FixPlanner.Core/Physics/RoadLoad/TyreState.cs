using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>What warmth does to a tyre: its pressure rises and it rolls easier. Two runs of a test must not differ in it.</summary>
public static class TyreState
{
    private const double AtmospherePa = 101325;

    /// <summary>Pressure of a closed tyre at another temperature.</summary>
    /// <param name="gaugePressure">As the gauge reads at the first temperature.</param>
    /// <param name="from">First temperature of the air in the tyre.</param>
    /// <param name="to">Second temperature.</param>
    /// <returns>Gauge pressure at the second temperature.</returns>
    /// <validity>Dry air, volume unchanged (it grows by less than 1 %).</validity>
    /// <uncertainty>2 %: the air in the tyre is not at one temperature.</uncertainty>
    /// <source key="textbook" place="ideal gas at constant volume">p_abs / T = constant</source>
    public static PressureDifference Warmed(PressureDifference gaugePressure, Temperature from, Temperature to) =>
        PressureDifference.FromPascals(((gaugePressure.Pascals + AtmospherePa) * to.Kelvins / from.Kelvins) - AtmospherePa);

    /// <summary>Rolling resistance at another pressure, as a share of the first.</summary>
    /// <param name="from">First gauge pressure.</param>
    /// <param name="to">Second gauge pressure.</param>
    /// <returns>The factor: 10 % more pressure gives 4 % less resistance.</returns>
    /// <validity>1.2 to 3.5 bar, load unchanged, hard road.</validity>
    /// <uncertainty>Exponent 0.3 to 0.5.</uncertainty>
    /// <source key="clark" place="Mechanics of Pneumatic Tires (from memory)">F ~ p^-0.4</source>
    public static double ResistanceFactor(PressureDifference from, PressureDifference to) =>
        Math.Pow(Valid.Positive(to.Pascals, "Pa") / Valid.Positive(from.Pascals, "Pa"), -0.4);

    /// <summary>Rolling resistance on a colder or warmer day, as a share of that at 20 °C.</summary>
    /// <param name="ambient">Air temperature.</param>
    /// <returns>The factor: above one when it is colder than 20 °C.</returns>
    /// <validity>-5 to 40 °C, tyres driven warm.</validity>
    /// <uncertainty>A third of the correction.</uncertainty>
    /// <source key="road-load-standards" place="K0 = 8.6e-3 for each kelvin (from memory)">F / F20 = 1 / (1 + 0.0086 (T − 20 °C))</source>
    public static double AmbientFactor(Temperature ambient) => 1 / (1 + (8.6e-3 * (Valid.Within(ambient.DegreesCelsius, -40, 60, "°C") - 20)));
}
