using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.FlowPaint;

/// <summary>How long a film of paint moves before its pattern stands.</summary>
public static class FilmSetting
{
    /// <summary>How much thicker the pigment makes the carrier: default factor on its viscosity.</summary>
    /// <source key="common practice" place="from memory">2, up to 10</source>
    public const double PigmentThickening = 2;

    /// <summary>The thickness at which the pigment no longer moves.</summary>
    /// <source key="common practice" place="from memory">about one pigment grain</source>
    public static Length StandingThickness { get; } = Length.FromMetres(1e-6);

    /// <summary>Length of the painted patch from which a streak is drawn out.</summary>
    /// <source key="common practice" place="from memory">a hand's width</source>
    public static Length Patch { get; } = Length.FromMetres(0.15);

    /// <summary>Time until the pattern stands, in attached flow.</summary>
    /// <param name="carrier">A carrier with figures.</param>
    /// <param name="weather">The day.</param>
    /// <param name="speed">Air along the panel, 5 to 45 m/s.</param>
    /// <param name="run">x: length of attached flow ahead of the place, 0.05 to 4 m.</param>
    /// <param name="thickness">h0: thickness of the fresh film, 10 to 300 micrometres.</param>
    /// <param name="film">Whether the panel or the wind sets the film's temperature.</param>
    /// <returns>The time.</returns>
    /// <validity>Attached flow. In dead zones only evaporation acts and the film stays wet for an hour: use the still time.</validity>
    /// <uncertainty>Times or divided by 2: film thickness, pigment and the plate law.</uncertainty>
    /// <source key="tanner-blows-1976" place="from memory">dh/dt = -a h2 - E, a = tau / (mu x_p)</source>
    /// <exception cref="ArgumentException">The carrier has no figures.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static Duration Time(Carrier carrier, PaintWeather weather, AirSpeed speed, Length run, Length thickness, FilmHeat film = FilmHeat.FromPanel)
    {
        LiquidConstants liquid = FilmEvaporation.Known(carrier);
        double speedMs = Valid.Within(speed.MetresPerSecond, 5, 45, "m/s", nameof(speed));
        double runM = Valid.Within(run.Metres, 0.05, 4, "m", nameof(run));
        double startM = Valid.Within(thickness.Metres, 10e-6, 300e-6, "m", nameof(thickness));
        double filmK = (film == FilmHeat.FromPanel ? weather.Panel : FilmEvaporation.AdiabaticFilm(carrier, weather)).Kelvins;
        double flux = FilmEvaporation.Flux(liquid, weather, speedMs, runM, filmK, FilmEvaporation.Moisture(carrier, weather));

        // Dew instead of drying: only the wind thins the film. A vanishing rate keeps the closed form finite.
        double recedingMs = Math.Max(flux, 0) / liquid.DensityKgM3(filmK);
        double thinning = ShearPa(weather, speedMs, runM) / (PigmentThickening * liquid.ViscosityPaS(filmK) * Patch.Metres);
        return Duration.FromSeconds(Seconds(startM, StandingThickness.Metres, thinning, recedingMs));
    }

    /// <summary>Shear of the wind on an attached panel, Pa.</summary>
    internal static double ShearPa(PaintWeather weather, double speedMs, double runM) =>
        0.5 * weather.DensityKgM3 * speedMs * speedMs * PlateTransfer.FrictionTurbulent(speedMs * runM / weather.KinematicViscosityM2S);

    /// <summary>Time from one thickness to another under shear thinning a h2 and a receding surface E.</summary>
    internal static double Seconds(double fromM, double toM, double thinning, double recedingMs)
    {
        if (recedingMs <= 0)
        {
            return ((1 / toM) - (1 / fromM)) / thinning;
        }

        double scale = Math.Sqrt(thinning / recedingMs);
        return (Math.Atan(fromM * scale) - Math.Atan(toM * scale)) / Math.Sqrt(thinning * recedingMs);
    }
}

/// <summary>What sets the temperature of a film.</summary>
public enum FilmHeat
{
    /// <summary>The panel: thin films on steel.</summary>
    FromPanel,

    /// <summary>The wind alone: thick films, plastic panels; the slow bound for quick carriers.</summary>
    FromAirOnly,
}
