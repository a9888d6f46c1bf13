using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Air;

/// <summary>Viscosity of air and speed of sound in it.</summary>
public static class AirProperties
{
    /// <summary>Gas constant of dry air in J/(kg K), as the standard atmosphere has it.</summary>
    internal const double GasConstantDryAir = 287.05287;

    /// <summary>Ratio of the specific heats of dry air.</summary>
    internal const double HeatRatio = 1.4;

    /// <summary>Dynamic viscosity.</summary>
    /// <param name="temperature">T.</param>
    /// <returns>μ.</returns>
    /// <validity>100 to 1900 K; humidity lowers it by less than 1 % on the road.</validity>
    /// <uncertainty>1 %.</uncertainty>
    /// <source key="us-standard-atmosphere-1976" place="eq. 51 (from memory), table values read at second hand">μ = 1.458e-6 T^1.5 / (T + 110.4)</source>
    public static DynamicViscosity Viscosity(Temperature temperature)
    {
        double kelvins = Valid.Positive(temperature.Kelvins, "K");
        return DynamicViscosity.FromPascalSeconds(1.458e-6 * Math.Pow(kelvins, 1.5) / (kelvins + 110.4));
    }

    /// <summary>Speed of sound.</summary>
    /// <param name="temperature">T.</param>
    /// <returns>c.</returns>
    /// <validity>Dry air; full humidity at 30 °C adds 0.7 %, which no answer here depends on.</validity>
    /// <uncertainty>0.1 % dry.</uncertainty>
    /// <source key="us-standard-atmosphere-1976" place="eq. 50 (from memory), table values read">c = √(1.4 · 287.05 T)</source>
    public static AirSpeed SpeedOfSound(Temperature temperature) =>
        AirSpeed.FromMetresPerSecond(Math.Sqrt(HeatRatio * GasConstantDryAir * Valid.Positive(temperature.Kelvins, "K")));

    /// <summary>Kinematic viscosity ν = μ / ρ in m2/s, for Reynolds numbers.</summary>
    internal static double KinematicViscosity(Temperature temperature, AirDensity density) =>
        Viscosity(temperature).PascalSeconds / Valid.Positive(density.KilogramsPerCubicMetre, "kg/m3");
}
