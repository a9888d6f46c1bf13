using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.FlowPaint;

/// <summary>How fast a wet film dries in the wind.</summary>
public static class FilmEvaporation
{
    private const double GasConstant = 8.314472;
    private const double Prandtl = 0.71;
    private const double AirHeat = 1006;

    /// <summary>Mass that a square metre of wet panel loses in a second, the film as warm as the panel.</summary>
    /// <param name="carrier">A carrier with figures.</param>
    /// <param name="weather">The day.</param>
    /// <param name="speed">Air along the panel, 5 to 45 m/s.</param>
    /// <param name="run">x: length of attached flow ahead of the place, 0.05 to 4 m.</param>
    /// <returns>In kg/(m2 s); zero or less means that dew falls instead.</returns>
    /// <validity>Attached turbulent flow; film under 0.2 mm on steel, which holds the film at its own temperature.</validity>
    /// <uncertainty>Plate law on a car: 40 %. Diffusivity 5 to 12 %. Mixtures lose their light ends first.</uncertainty>
    /// <source key="incropera" place="ch. 7, from memory">Sh = 0.0296 Re^0.8 Sc^(1/3)</source>
    /// <source key="from-memory" place="diffusion through a resting gas (Stefan)">m = k (p M / (R T)) ln[(p - p_far) / (p - p_s)]</source>
    /// <exception cref="ArgumentException">The carrier has no figures.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Speed or run outside its range.</exception>
    public static double FluxKgM2S(Carrier carrier, PaintWeather weather, AirSpeed speed, Length run)
    {
        double speedMs = Valid.Within(speed.MetresPerSecond, 5, 45, "m/s", nameof(speed));
        double runM = Valid.Within(run.Metres, 0.05, 4, "m", nameof(run));
        return Flux(Known(carrier), weather, speedMs, runM, weather.Panel.Kelvins, Moisture(carrier, weather));
    }

    /// <summary>Temperature that a film takes when the panel gives it no heat: the wet bulb of that liquid.</summary>
    /// <param name="carrier">A carrier with figures.</param>
    /// <param name="weather">The day.</param>
    /// <returns>The lower bound of the film's temperature; independent of the speed.</returns>
    /// <validity>Thick film on plastic or foam. On steel the panel warms it.</validity>
    /// <uncertainty>0.3 K for water against the psychrometric chart.</uncertainty>
    /// <source key="own derivation" place="heat and vapour cross the same layer (Chilton-Colburn)">h (T - T_s) = m h_fg</source>
    /// <exception cref="ArgumentException">The carrier has no figures.</exception>
    public static Temperature AdiabaticFilm(Carrier carrier, PaintWeather weather)
    {
        LiquidConstants liquid = Known(carrier);
        double moisturePa = Moisture(carrier, weather);

        // Speed and place cancel: both flows cross the same layer. Any values in range do.
        const double speedMs = 20;
        const double runM = 1;
        double reynolds = speedMs * runM / weather.KinematicViscosityM2S;
        double heatWm2K = PlateTransfer.LocalTurbulent(reynolds, Prandtl) * weather.DensityKgM3 * weather.KinematicViscosityM2S * AirHeat / Prandtl / runM;
        double low = weather.Air.Kelvins - 60;
        double high = weather.Air.Kelvins;
        while (high - low > 1e-6)
        {
            double middle = (low + high) / 2;
            double gainedWm2 = heatWm2K * (weather.Air.Kelvins - middle);
            double lostWm2 = Flux(liquid, weather, speedMs, runM, middle, moisturePa) * liquid.LatentJKg(middle);
            (low, high) = gainedWm2 > lostWm2 ? (middle, high) : (low, middle);
        }

        return Temperature.FromKelvins((low + high) / 2);
    }

    internal static LiquidConstants Known(Carrier carrier) =>
        carrier.Liquid ?? throw new ArgumentException($"no figures are known for {carrier.Name}", nameof(carrier));

    internal static double Moisture(Carrier carrier, PaintWeather weather) =>
        carrier == Carrier.Water ? weather.Humidity * Liquids.Water.VapourPressurePa(weather.Air.Kelvins) : 0;

    internal static double Flux(LiquidConstants liquid, PaintWeather weather, double speedMs, double runM, double filmK, double farPa)
    {
        double pressurePa = weather.Pressure.Pascals;
        double diffusivity = VapourDiffusion.InAir(weather.Air.Kelvins, pressurePa, liquid.MolarMassKgMol, liquid.DiffusionVolume);
        double reynolds = speedMs * runM / weather.KinematicViscosityM2S;
        double sherwood = PlateTransfer.LocalTurbulent(reynolds, weather.KinematicViscosityM2S / diffusivity);
        double surfacePa = Math.Min(liquid.VapourPressurePa(filmK), 0.99 * pressurePa);
        double driving = Math.Log((pressurePa - farPa) / (pressurePa - surfacePa));
        return sherwood * diffusivity / runM * pressurePa * liquid.MolarMassKgMol / (GasConstant * weather.Air.Kelvins) * driving;
    }
}
