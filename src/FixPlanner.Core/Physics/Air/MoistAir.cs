using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Air;

/// <summary>Density of the air of the day.</summary>
public static class MoistAir
{
    private const double GasConstant = 8.314472;
    private const double MolarMassDryAir = 28.96546e-3; // at 400 ppm of carbon dioxide
    private const double MolarMassWater = 18.01528e-3;

    /// <summary>Density by the formula of the metrologists. The one that the tool uses everywhere: it costs nothing more than the short forms.</summary>
    /// <param name="temperature">T, in the shade, 1 to 2 m above the road.</param>
    /// <param name="pressure">p, at the place itself; not reduced to sea level.</param>
    /// <param name="relativeHumidity">h, 0 to 1.</param>
    /// <returns>ρ.</returns>
    /// <validity>Stated for 15 to 27 °C and 600 to 1100 hPa; agrees with the others to 1e-4 at 40 °C. Air with 400 ppm of carbon dioxide.</validity>
    /// <uncertainty>The formula 2e-5. On a road test: 1 °C moves it by 0.35 %, 3 hPa by 0.3 %, 20 % of humidity by 0.17 %, together about 0.5 %.</uncertainty>
    /// <source key="picard-2008" place="eq. 1 and appendix A1 (constants partly from memory)">ρ = p M_a / (Z R T) · (1 − x_v (1 − M_v / M_a))</source>
    /// <exception cref="ArgumentOutOfRangeException">Humidity outside 0 to 1, or a temperature or pressure that is not set.</exception>
    public static AirDensity Density(Temperature temperature, Pressure pressure, double relativeHumidity)
    {
        double pascals = Valid.Positive(pressure.Pascals, "Pa");
        double kelvins = Valid.Positive(temperature.Kelvins, "K");
        Valid.Within(relativeHumidity, 0, 1, "(a share)");
        double celsius = temperature.DegreesCelsius;
        double vapourShare = relativeHumidity * SaturationVapour.Enhancement(pascals, celsius) * SaturationVapour.Pressure(temperature).Pascals / pascals;
        double compressibility = Compressibility(pascals, kelvins, celsius, vapourShare);
        double dry = pascals * MolarMassDryAir / (compressibility * GasConstant * kelvins);
        return AirDensity.FromKilogramsPerCubicMetre(dry * (1 - (vapourShare * (1 - (MolarMassWater / MolarMassDryAir)))));
    }

    /// <summary>Density as a mixture of two ideal gases: the short form for a check by hand.</summary>
    /// <param name="temperature">T.</param>
    /// <param name="pressure">p, at the place itself.</param>
    /// <param name="relativeHumidity">h, 0 to 1.</param>
    /// <returns>ρ.</returns>
    /// <validity>-20 to 45 °C, 700 to 1080 hPa: within 0.05 % of <see cref="Density"/>.</validity>
    /// <uncertainty>0.05 %.</uncertainty>
    /// <source key="textbook" place="mixture of ideal gases, gas constants 287.055 and 461.5 J/(kg K)">ρ = (p − p_v) / (287.055 T) + p_v / (461.5 T)</source>
    /// <exception cref="ArgumentOutOfRangeException">Humidity outside 0 to 1, or a temperature or pressure that is not set.</exception>
    public static AirDensity DensityOfIdealMixture(Temperature temperature, Pressure pressure, double relativeHumidity)
    {
        double pascals = Valid.Positive(pressure.Pascals, "Pa");
        double kelvins = Valid.Positive(temperature.Kelvins, "K");
        double vapourPa = Valid.Within(relativeHumidity, 0, 1, "(a share)") * SaturationVapour.Pressure(temperature).Pascals;
        return AirDensity.FromKilogramsPerCubicMetre(((pascals - vapourPa) / (287.055 * kelvins)) + (vapourPa / (461.5 * kelvins)));
    }

    /// <summary>Density by the exponential short form of weighing practice.</summary>
    /// <param name="temperature">T.</param>
    /// <param name="pressure">p, at the place itself.</param>
    /// <param name="relativeHumidity">h, 0 to 1.</param>
    /// <returns>ρ.</returns>
    /// <validity>10 to 30 °C, 900 to 1100 hPa, humidity up to 80 %.</validity>
    /// <uncertainty>2e-4 inside that range.</uncertainty>
    /// <source key="oiml-r111" place="short form for weighing; constants second-hand">ρ = (0.34848 p − 0.009 h exp(0.061 t)) / (273.15 + t), p in hPa, h in %</source>
    /// <exception cref="ArgumentOutOfRangeException">Humidity outside 0 to 1, or a result that is not above zero.</exception>
    public static AirDensity DensityByWeighingFormula(Temperature temperature, Pressure pressure, double relativeHumidity)
    {
        double percent = 100 * Valid.Within(relativeHumidity, 0, 1, "(a share)");
        double vapour = 0.009 * percent * Math.Exp(0.061 * temperature.DegreesCelsius);
        return AirDensity.FromKilogramsPerCubicMetre(((0.34848 * pressure.Hectopascals) - vapour) / temperature.Kelvins);
    }

    private static double Compressibility(double pascals, double kelvins, double celsius, double vapourShare)
    {
        double a = 1.58123e-6 + (celsius * (-2.9331e-8 + (1.1043e-10 * celsius)));
        double b = 5.707e-6 - (2.051e-8 * celsius);
        double c = 1.9898e-4 - (2.376e-6 * celsius);
        double perKelvin = pascals / kelvins;
        return 1 - (perKelvin * (a + (vapourShare * (b + (c * vapourShare))))) + (perKelvin * perKelvin * (1.83e-11 - (0.765e-8 * vapourShare * vapourShare)));
    }
}
