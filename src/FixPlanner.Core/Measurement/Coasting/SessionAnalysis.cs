using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>All runs of a test read together: which count, what each pair says, and what before and after differ by.</summary>
/// <param name="Runs">Every run, used or not, in the order given.</param>
/// <param name="Pairs">Pairs that count.</param>
/// <param name="UpperSpeed">Top of the band in use.</param>
/// <param name="LowerSpeed">Bottom of the band in use.</param>
/// <param name="SharedRolling">Rolling coefficient held for all pairs of a day; by day. Empty when each pair keeps its own.</param>
/// <param name="Comparisons">Each later configuration against the first one; empty with a single configuration.</param>
/// <param name="Warnings">What weakens the result, in plain words.</param>
public sealed record SessionAnalysis(
    IReadOnlyList<JudgedRun> Runs,
    IReadOnlyList<RunPair> Pairs,
    RoadSpeed UpperSpeed,
    RoadSpeed LowerSpeed,
    IReadOnlyDictionary<string, double> SharedRolling,
    IReadOnlyList<DragComparison> Comparisons,
    IReadOnlyList<string> Warnings)
{
    /// <summary>Wind in m/s above which a session is flagged: between the limits of the rules (2.7 m/s in 40 CFR 1037.528, 5 m/s in the EU rule, from memory).</summary>
    public const double WindLimit = 3;

    private const double LargestGrade = 0.02;
    private const double LargestRest = 0.6;

    /// <summary>Reads a session.</summary>
    /// <param name="runs">In the order in which they were run; may be empty.</param>
    /// <param name="choices">What is known beside the files.</param>
    /// <returns>The analysis; the same input gives the same result.</returns>
    /// <validity>Car out of gear, same tyres, load and road for all runs of a day.</validity>
    /// <uncertainty>Taken from the scatter between pairs; the error of a single fit is four times too small because gusts last for seconds.</uncertainty>
    /// <source key="dossier" place="docs/theory/measurement.md">estimators compared by simulation</source>
    public static SessionAnalysis Of(IReadOnlyList<CoastDownRun> runs, AnalysisChoices choices)
    {
        PreparedRun[] prepared = [.. runs.Select((run, place) => new PreparedRun(run, place))];
        List<string> warnings = [];
        NoteConditions(prepared, choices, warnings);
        foreach (PreparedRun run in prepared)
        {
            run.Clean();
        }

        SpeedBand band = Band(prepared, choices);
        foreach (PreparedRun run in prepared)
        {
            run.CutTo(band);
        }

        bool bothWays = RunPairing.NumberWays(prepared);
        PreparedRun[][] groups = bothWays ? [.. RunPairing.Pair(prepared)] : [.. prepared.Where(run => run.Used).Select(run => new[] { run })];
        List<FittedGroup> fitted = FitGroups(groups.Select(group => new FittedGroup(group)), choices, bothWays);
        Dictionary<string, double> shared = ShareRolling(fitted, choices);
        RunPair[] pairs = [.. fitted.Select(group => group.Finish(shared, choices, bothWays, alone: fitted.Count(other => other.Configuration == group.Configuration) == 1))];
        if (pairs.Length > 0 && !bothWays)
        {
            warnings.Add(SessionWarnings.OneWay);
        }

        if (pairs.Length > 0 && band.IsTooNarrow)
        {
            warnings.Add(SessionWarnings.NarrowBand);
        }

        SessionChecks.Add(warnings, prepared, pairs, shared, choices);
        DragComparison[] comparisons = DragComparison.All(pairs, choices, fitted.Count == 0 ? PreparedRun.AssumedDensity : fitted.Average(group => group.Density), shared.Count > 0);
        return new(
            [.. prepared.Select(Judged)], pairs, RoadSpeed.FromMetresPerSecond(band.High), RoadSpeed.FromMetresPerSecond(band.Low), shared, comparisons, warnings);
    }

    private static void NoteConditions(PreparedRun[] runs, AnalysisChoices choices, List<string> warnings)
    {
        string first = runs.Length == 0 ? "" : runs[0].Run.Configuration;
        bool assumed = false;
        foreach (PreparedRun run in runs)
        {
            RunConditions noted = run.Run.Conditions;
            AirDensity? density = (noted with { AirTemperature = noted.AirTemperature ?? choices.AirTemperature, AirPressure = noted.AirPressure ?? choices.AirPressure }).Density;
            assumed |= density is null;
            run.Density = density?.KilogramsPerCubicMetre ?? PreparedRun.AssumedDensity;
            Mass mass = noted.Mass ?? (run.Run.Configuration == first ? choices.Mass : choices.MassAfter ?? choices.Mass);
            run.MassKg = mass.Kilograms;
        }

        if (assumed)
        {
            warnings.Add(SessionWarnings.DensityAssumed);
        }

        SessionDays.Name(runs, choices.SameDay, warnings);
        SessionDays.Clock(runs);
    }

    private static SpeedBand Band(PreparedRun[] runs, AnalysisChoices choices)
    {
        RunTrace[] parts = [.. runs.Where(run => run.Used).Select(run => run.Part!)];
        SpeedBand found = parts.Length == 0 ? default : SpeedBand.CoveredBy(parts);
        return new(choices.UpperSpeed?.MetresPerSecond ?? found.High, choices.LowerSpeed?.MetresPerSecond ?? found.Low);
    }

    private static List<FittedGroup> FitGroups(IEnumerable<FittedGroup> groups, AnalysisChoices choices, bool bothWays)
    {
        List<FittedGroup> kept = [];
        foreach (FittedGroup group in groups)
        {
            group.FitFree(choices, bothWays);
            string reason = group.Free switch
            {
                { Converged: false } => "no coast curve fits it",
                { RootMeanSquare: > LargestRest } fit => $"the log scatters by {fit.RootMeanSquare:0.0} m/s about any coast curve",
                { Grade: > LargestGrade or < -LargestGrade } fit => $"a grade of {100 * fit.Grade:0.0} % follows from it, over the limit of 2 %",
                _ => "",
            };
            if (reason.Length == 0)
            {
                kept.Add(group);
            }
            else
            {
                group.LeaveOut(reason);
            }
        }

        return kept;
    }

    // One rolling coefficient per day, and only for days on which before and after were both run: shared across days it
    // makes two false alarms in five.
    private static Dictionary<string, double> ShareRolling(List<FittedGroup> groups, AnalysisChoices choices)
    {
        Dictionary<string, double> shared = [];
        int configurations = groups.Select(group => group.Configuration).Distinct().Count();
        if (choices.ChangesRolling)
        {
            return shared;
        }

        foreach (IGrouping<string, FittedGroup> day in groups.GroupBy(group => group.Day))
        {
            if (configurations < 2 || day.Select(group => group.Configuration).Distinct().Count() > 1)
            {
                shared[day.Key] = PreparedRun.MedianRolling(day.Select(group => group.Free));
            }
        }

        return shared;
    }

    private static JudgedRun Judged(PreparedRun run) => new(
        run.Run, run.Used, run.Reason, run.Notes,
        run.Used && run.DragArea is { } area and >= 0 ? DragArea.FromSquareMetres(area) : null,
        run.Used ? run.Rolling : null,
        AirDensity.FromKilogramsPerCubicMetre(run.Density),
        run.Force is { } force ? Duration.FromSeconds(force.Time) : null);
}
