using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.FlowPaint;

/// <summary>The answer 'paint works today' or 'use tufts', and what would have to change.</summary>
public static class PaintAdvice
{
    private const double LeastPull = 2;
    private const double LeastShareOfTimeToSpeed = 1.5;
    private const double TimeFactor = 2;
    private const double FlashMarginKelvins = 10;
    private const double FrostLimitCelsius = 2;

    /// <summary>Judges a planned paint run.</summary>
    /// <param name="run">The run as planned.</param>
    /// <returns>The answer with its reasons and the single changes that would turn it.</returns>
    /// <validity>Attached part of the panel; where the flow has left the skin paint pools and drips whatever the day.</validity>
    /// <uncertainty>Times are good to a factor of two either way: the verdict uses the likely time, the range stands beside it.</uncertainty>
    /// <source key="common practice" place="own rule">the pattern must stand later than 1.5 times the time to speed and before the run ends; wind at least twice gravity,
    /// so that a level stream is turned by less than 27 degrees; panel ten kelvins under the flash point</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static PaintAnswer Judge(PaintRun run)
    {
        if (!run.Carrier.HasFigures)
        {
            return new(PaintVerdict.NotKnown, [PaintObstacle.NoFigures], OtherCarriers(run), null);
        }

        PaintFigures figures = Figures(run);
        List<PaintObstacle> obstacles = Obstacles(run, figures);
        return obstacles.Count == 0
            ? new(PaintVerdict.PaintWorks, [], [], figures)
            : new(PaintVerdict.UseTufts, obstacles, [.. OtherSpeeds(run), .. OtherCarriers(run)], figures);
    }

    private static PaintFigures Figures(PaintRun run)
    {
        double seconds = FilmSetting.Time(run.Carrier, run.Weather, run.Speed, run.Run, run.Thickness).Seconds;
        Length halfFilm = Length.FromMetres(Math.Max(run.Thickness.Metres / 2, 10e-6));
        double pull = StreakOrDrip.Ratio(run.Carrier, run.Weather, run.Speed, run.Run, halfFilm, run.Slope);
        return new(Duration.FromSeconds(seconds / TimeFactor), Duration.FromSeconds(seconds), Duration.FromSeconds(seconds * TimeFactor), pull);
    }

    private static List<PaintObstacle> Obstacles(PaintRun run, PaintFigures figures)
    {
        List<PaintObstacle> found = [];
        if (run.Carrier.FlashPoint is { } flash && run.Weather.Panel.Kelvins > flash.Kelvins - FlashMarginKelvins)
        {
            found.Add(PaintObstacle.CanBeLit);
        }

        if (run.Carrier == Carrier.Water)
        {
            found.Add(PaintObstacle.Beads);
            if (FilmEvaporation.AdiabaticFilm(run.Carrier, run.Weather).DegreesCelsius < FrostLimitCelsius)
            {
                found.Add(PaintObstacle.Freezes);
            }
        }

        if (figures.Pull < LeastPull)
        {
            found.Add(PaintObstacle.Drips);
        }

        if (figures.SetLikely.Seconds < LeastShareOfTimeToSpeed * run.TimeToSpeed.Seconds)
        {
            found.Add(PaintObstacle.DriesTooSoon);
        }

        if (figures.SetLikely.Seconds > run.TimeToSpeed.Seconds + run.SteadyTime.Seconds)
        {
            found.Add(PaintObstacle.DriesTooLate);
        }

        return found;
    }

    private static bool Works(PaintRun run) => run.Carrier.HasFigures && Obstacles(run, Figures(run)).Count == 0;

    private static List<PaintChange> OtherCarriers(PaintRun run) =>
        [.. Carrier.All.Where(other => other != run.Carrier && Works(run with { Carrier = other })).Select(other => new PaintChange(other, null, null))];

    private static IEnumerable<PaintChange> OtherSpeeds(PaintRun run)
    {
        const int slowestKmh = 20;
        const int fastestKmh = 160;
        const int stepKmh = 5;
        List<int> working = [];
        for (int kmh = slowestKmh; kmh <= fastestKmh; kmh += stepKmh)
        {
            if (Works(run with { Speed = AirSpeed.FromKilometresPerHour(kmh) }))
            {
                working.Add(kmh);
            }
        }

        if (working.Count > 0)
        {
            yield return new(null, AirSpeed.FromKilometresPerHour(working[0]), AirSpeed.FromKilometresPerHour(working[^1]));
        }
    }
}
