using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Air;

/// <summary>The pressure of the wind of driving: what every load and every manometer reading is measured by.</summary>
public static class DynamicPressure
{
    /// <summary>Dynamic pressure.</summary>
    /// <param name="density">ρ, of the day.</param>
    /// <param name="speed">V, air past the car: road speed plus head wind.</param>
    /// <returns>q.</returns>
    /// <validity>Up to 70 m/s; a stagnation reading is higher by the share M²/4 (0.65 % at 200 km/h), see <see cref="StagnationRise"/>.</validity>
    /// <uncertainty>Twice the uncertainty of the speed: 1 km/h at 100 is 2 %.</uncertainty>
    /// <source key="textbook" place="definition">q = ρ V² / 2</source>
    public static PressureDifference Of(AirDensity density, AirSpeed speed) =>
        PressureDifference.FromPascals(0.5 * density.KilogramsPerCubicMetre * speed.MetresPerSecond * speed.MetresPerSecond);

    /// <summary>What a tube that points into the wind reads above the still air.</summary>
    /// <param name="density">ρ, of the day.</param>
    /// <param name="speed">V, air past the car.</param>
    /// <param name="temperature">T, for the speed of sound.</param>
    /// <returns>Stagnation pressure above ambient.</returns>
    /// <validity>Up to 100 m/s: first term of the compressible form.</validity>
    /// <uncertainty>The tube must stand in undisturbed air, at least half a car length off the body.</uncertainty>
    /// <source key="textbook" place="isentropic stagnation, first term">p_t − p = q (1 + M² / 4)</source>
    public static PressureDifference StagnationRise(AirDensity density, AirSpeed speed, Temperature temperature)
    {
        double mach = speed.MetresPerSecond / AirProperties.SpeedOfSound(temperature).MetresPerSecond;
        return (1 + (mach * mach / 4)) * Of(density, speed);
    }
}
