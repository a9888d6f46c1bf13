using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Physics.FlowPaint;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.TestDay;

/// <summary>What shows the flow today.</summary>
public enum FlowMethodKind
{
    /// <summary>Tufts everywhere.</summary>
    Tufts,

    /// <summary>Paint on bonnet and roof, tufts on upright panels.</summary>
    PaintOnLevelPanels,

    /// <summary>Paint works on level and on upright panels.</summary>
    Paint,
}

/// <summary>Tufts or paint, worked out from the weather and the speed.</summary>
/// <param name="Kind">The answer.</param>
/// <param name="Because">Why, in a sentence.</param>
/// <param name="Carrier">The liquid that works, or null.</param>
/// <param name="Figures">Its times on a level panel; null when no liquid works.</param>
public sealed record FlowMethod(FlowMethodKind Kind, string Because, Carrier? Carrier, PaintFigures? Figures)
{
    private const double LevelDegrees = 10;
    private const double UprightDegrees = 80;

    // Lamp oil first, as in the pack's recipe; then what flashes late; the quick spirits last.
    private static readonly Carrier[] Preferred = [Carrier.Kerosene, Carrier.LightLampOil, Carrier.LightDiesel, Carrier.Diesel, Carrier.WhiteSpirit, Carrier.Water, Carrier.Isopropanol];

    private const double UsualHumidity = 0.7;
    private const double UsualPressurePa = 101_325;

    /// <summary>Judges the day.</summary>
    /// <param name="weather">The weather.</param>
    /// <param name="speed">Steady speed that can be driven.</param>
    /// <param name="notes">The pack's limits of wind for paint.</param>
    /// <returns>The answer.</returns>
    /// <validity>Panels no warmer than the air; a panel in the sun dries sooner.</validity>
    /// <uncertainty>Times to a factor of two.</uncertainty>
    /// <source key="common practice" place="docs/theory/flow-paint.md">the models of flow paint, on a panel of 10 and of 80 degrees</source>
    public static FlowMethod Of(DayWeather weather, AirSpeed speed, TestDayNotes notes)
    {
        ArgumentNullException.ThrowIfNull(weather);
        ArgumentNullException.ThrowIfNull(notes);
        if (weather.Air is not { } air)
        {
            return new(FlowMethodKind.Tufts, "the temperature of the day is not known, and paint hangs on it; tufts do not", null, null);
        }

        if (air.DegreesCelsius is < -5 or > 45)
        {
            return new(FlowMethodKind.Tufts, $"at {air.DegreesCelsius:0} C no figure holds for paint", null, null);
        }

        if (weather.Dry == false)
        {
            return new(FlowMethodKind.Tufts, "the road is wet: spray washes paint off; wet tufts stick, so wait for a dry one", null, null);
        }

        if (notes.Windows.FirstOrDefault(w => w.Test == "flow paint") is { } limit && weather.Wind is { } wind && wind.MetresPerSecond > limit.WindMaxMetresPerSecond)
        {
            return new(FlowMethodKind.Tufts, $"the wind of {wind.MetresPerSecond:0.#} m/s is over the {limit.WindMaxMetresPerSecond:0.#} m/s that paint stands: it keeps the sum of a run, tufts can be read both ways", null, null);
        }

        return Judged(new(air, weather.Humidity ?? UsualHumidity, Pressure.FromPascals(UsualPressurePa)), speed);
    }

    private static FlowMethod Judged(PaintWeather day, AirSpeed speed)
    {
        Carrier[] level = [.. Preferred.Where(c => Works(c, day, speed, LevelDegrees))];
        Carrier[] both = [.. level.Where(c => Works(c, day, speed, UprightDegrees))];
        if ((both.FirstOrDefault() ?? level.FirstOrDefault()) is { } carrier)
        {
            PaintFigures figures = PaintAdvice.Judge(new(carrier, day, speed, Angle.FromDegrees(LevelDegrees))).Figures!;
            string stands = $"with {carrier.Name} at {day.Air.DegreesCelsius:0} C and {speed.KilometresPerHour:0} km/h the pattern stands after {figures.SetQuickest.Minutes:0.#} to {figures.SetSlowest.Minutes:0.#} min";
            string burns = carrier.FlashPoint is null ? "" : ". It burns: no flame, no hot engine, extinguisher at hand";
            return both.Length > 0
                ? new(FlowMethodKind.Paint, $"{stands}, on level and on upright panels{burns}", carrier, figures)
                : new(FlowMethodKind.PaintOnLevelPanels, $"{stands} on bonnet and roof; on upright panels it runs, use tufts there{burns}", carrier, figures);
        }

        PaintAnswer nearest = PaintAdvice.Judge(new(Carrier.Kerosene, day, speed, Angle.FromDegrees(LevelDegrees)));
        string why = string.Join(" and ", nearest.Obstacles.Select(Words));
        return new(FlowMethodKind.Tufts, $"no paint works at {day.Air.DegreesCelsius:0} C and {speed.KilometresPerHour:0} km/h: lamp oil, the usual one, {why}", null, nearest.Figures);
    }

    private static bool Works(Carrier carrier, PaintWeather day, AirSpeed speed, double slopeDegrees) =>
        carrier.HasFigures && PaintAdvice.Judge(new(carrier, day, speed, Angle.FromDegrees(slopeDegrees))).Verdict == PaintVerdict.PaintWorks;

    private static string Words(PaintObstacle obstacle) => obstacle switch
    {
        PaintObstacle.DriesTooSoon => "stands before the steady speed is reached",
        PaintObstacle.DriesTooLate => "is still wet when the run ends",
        PaintObstacle.Drips => "drips",
        PaintObstacle.CanBeLit => "is too near its flash point",
        PaintObstacle.Freezes => "freezes",
        PaintObstacle.Beads => "beads on the paintwork",
        _ => "has no figures",
    };
}
