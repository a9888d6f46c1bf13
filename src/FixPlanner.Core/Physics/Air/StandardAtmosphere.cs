using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Air;

/// <summary>Air of the standard atmosphere at a height: what instruments and old road tests assume when they name no weather.</summary>
/// <param name="Temperature">T.</param>
/// <param name="Pressure">p.</param>
/// <param name="Density">ρ, dry.</param>
public sealed record StandardAtmosphere(Temperature Temperature, Pressure Pressure, AirDensity Density)
{
    internal const double SeaLevelPa = 101325;
    internal const double SeaLevelKelvins = 288.15;
    internal const double LapseKelvinsPerMetre = 0.0065;

    // g0 M / (R* L) with the standard's own constants.
    internal const double Exponent = 5.25588;
    private const double EarthRadiusMetres = 6356766;

    /// <summary>The standard air at a height.</summary>
    /// <param name="height">Z, above sea level as a map gives it.</param>
    /// <returns>The air there.</returns>
    /// <validity>-2000 to 11 000 m: the lowest layer only.</validity>
    /// <uncertainty>A definition; the day differs by ±20 K and ±30 hPa.</uncertainty>
    /// <source key="us-standard-atmosphere-1976" place="lowest layer; a handbook's table of it was read">H = r Z / (r + Z); T = 288.15 − 0.0065 H; p = 101325 (T / 288.15)^5.25588</source>
    /// <exception cref="ArgumentOutOfRangeException">Height outside -2000 to 11 000 m.</exception>
    public static StandardAtmosphere At(Length height)
    {
        double geopotential = Geopotential(Valid.Within(height.Metres, -2000, 11000, "m"));
        double kelvins = SeaLevelKelvins - (LapseKelvinsPerMetre * geopotential);
        double pascals = SeaLevelPa * Math.Pow(kelvins / SeaLevelKelvins, Exponent);
        return new(
            Temperature.FromKelvins(kelvins),
            Pressure.FromPascals(pascals),
            AirDensity.FromKilogramsPerCubicMetre(pascals / (AirProperties.GasConstantDryAir * kelvins)));
    }

    internal static double Geopotential(double metres) => EarthRadiusMetres * metres / (EarthRadiusMetres + metres);
}
