using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.FlowPaint;

/// <summary>Whether the wind or gravity draws the paint.</summary>
public static class StreakOrDrip
{
    /// <summary>Above this ratio streaks follow the flow.</summary>
    public const double Follows = 3;

    /// <summary>Below this ratio the paint just runs down.</summary>
    public const double Drips = 0.5;

    /// <summary>Skin friction where the flow has left the skin: low, likely, high. No unit.</summary>
    /// <source key="from-memory" place="separated zones">0.0005 to 0.001, either way</source>
    public static Triangle SeparatedFriction { get; } = new(0.0005, 0.00075, 0.001);

    /// <summary>Ratio of the wind's pull to gravity's pull on a film, attached flow.</summary>
    /// <param name="carrier">A carrier with figures.</param>
    /// <param name="weather">The day.</param>
    /// <param name="speed">Air along the panel, 0 to 60 m/s.</param>
    /// <param name="run">x: length of attached flow ahead of the place, 0.05 to 4 m.</param>
    /// <param name="thickness">h: film, 10 to 300 micrometres; it thins as it runs, so half the fresh film is a fair value.</param>
    /// <param name="slope">b: angle of the panel from level, 0 to 90 degrees.</param>
    /// <returns>Over 3: streaks follow the flow; 0.5 to 3: mixed; under 0.5: drips. Infinite on a level panel.</returns>
    /// <validity>Attached flow.</validity>
    /// <uncertainty>Film thickness: a factor of two either way.</uncertainty>
    /// <source key="schlichting" place="one-fifth-power law, from memory">R = tau / ((2/3) rho_l g h sin b), tau = q 0.0592 Re_x^-0.2</source>
    /// <exception cref="ArgumentException">The carrier has no figures.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static double Ratio(Carrier carrier, PaintWeather weather, AirSpeed speed, Length run, Length thickness, Angle slope)
    {
        double speedMs = Valid.Within(speed.MetresPerSecond, 0, 60, "m/s", nameof(speed));
        double runM = Valid.Within(run.Metres, 0.05, 4, "m", nameof(run));
        double shearPa = speedMs == 0 ? 0 : FilmSetting.ShearPa(weather, speedMs, runM);
        double gravityPa = GravityPa(carrier, weather, thickness, slope);
        return gravityPa == 0 ? double.PositiveInfinity : shearPa / gravityPa;
    }

    /// <summary>The same ratio where the flow has left the skin.</summary>
    /// <param name="carrier">A carrier with figures.</param>
    /// <param name="weather">The day.</param>
    /// <param name="speed">Air past the car, 0 to 60 m/s.</param>
    /// <param name="thickness">h: film, 10 to 300 micrometres.</param>
    /// <param name="slope">b: angle of the panel from level, above 0 to 90 degrees.</param>
    /// <returns>The ratio with its range.</returns>
    /// <validity>Dead and reversed zones.</validity>
    /// <uncertainty>Friction there is known to a factor of two.</uncertainty>
    /// <source key="from-memory" place="friction of separated zones">R = q c_f / ((2/3) rho_l g h sin b)</source>
    /// <exception cref="ArgumentException">The carrier has no figures.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static Triangle RatioWhereSeparated(Carrier carrier, PaintWeather weather, AirSpeed speed, Length thickness, Angle slope)
    {
        double speedMs = Valid.Within(speed.MetresPerSecond, 0, 60, "m/s", nameof(speed));
        double gravityPa = Valid.Positive(GravityPa(carrier, weather, thickness, slope), "Pa", nameof(slope));
        return SeparatedFriction.Scaled(0.5 * weather.DensityKgM3 * speedMs * speedMs / gravityPa);
    }

    /// <summary>How far the streak is turned from the flow, by the vector sum of wind and gravity.</summary>
    /// <param name="ratio">Wind over gravity, zero or more.</param>
    /// <param name="flowFromLevel">Angle of the flow on the panel, up from level: -90 to 90 degrees.</param>
    /// <returns>Angle of the streak, up from level.</returns>
    /// <validity>Ratio from 0.5 to 3; above it the turn is small, below it the streak tells nothing.</validity>
    /// <uncertainty>As the ratio.</uncertainty>
    /// <source key="own derivation" place="vector sum">tan = (R sin - 1) / (R cos)</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static Angle StreakAngle(double ratio, Angle flowFromLevel)
    {
        Valid.NotNegative(ratio, "(a ratio)");
        Valid.Within(flowFromLevel.Degrees, -90, 90, "degrees", nameof(flowFromLevel));
        return Angle.FromRadians(Math.Atan2((ratio * Math.Sin(flowFromLevel.Radians)) - 1, ratio * Math.Cos(flowFromLevel.Radians)));
    }

    private static double GravityPa(Carrier carrier, PaintWeather weather, Length thickness, Angle slope)
    {
        const double gravity = 9.80665;
        double filmM = Valid.Within(thickness.Metres, 10e-6, 300e-6, "m", nameof(thickness));
        Valid.Within(slope.Degrees, 0, 90, "degrees", nameof(slope));
        return 2.0 / 3 * FilmEvaporation.Known(carrier).DensityKgM3(weather.Panel.Kelvins) * gravity * filmM * Math.Sin(slope.Radians);
    }
}
