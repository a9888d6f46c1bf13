using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Runs;

/// <summary>The result of <c>runs</c> for people: the verdict first, then what it rests on, run by run.</summary>
public static class RunsDocument
{
    /// <summary>Lays it out.</summary>
    /// <param name="reading">The analysis and what it was made of.</param>
    /// <returns>The document.</returns>
    public static Document Of(RunsReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        SessionAnalysis analysis = reading.Analysis;
        List<Block> blocks = [];
        foreach (DragComparison comparison in analysis.Comparisons)
        {
            AddComparison(blocks, comparison);
            blocks.Add(new Paragraph("To keep it, run this again with `--logbook`, `--fix` and `--keep`; or add this line to the readings of the logbook, with `fix:` in it: `" + RunsWords.LogbookLine(comparison, analysis.Runs.Select(run => run.Run.Source).Distinct()) + "`"));
        }

        if (analysis.Comparisons.Count == 0)
        {
            blocks.Add(new Paragraph(NoComparison(analysis)));
        }

        AddWarnings(blocks, analysis);
        AddConfigurations(blocks, analysis, reading.Choices);
        AddRuns(blocks, analysis);
        if (reading.Problems.Count > 0)
        {
            blocks.Add(new Heading(2, "Mistakes in the files"));
            blocks.Add(new Bullets([.. reading.Problems.Select(problem => $"{Place(problem)}: {problem.Severity} {problem.Code}: {problem.What}. {problem.Mend}.")]));
        }

        blocks.Add(new Heading(2, "Before the next runs"));
        blocks.AddRange(RunCautions.All.Select(caution => new Warning("CAUTION", caution)));
        return new("Coast-down runs", blocks);
    }

    private static void AddComparison(List<Block> blocks, DragComparison comparison)
    {
        ValueComparison values = comparison.Values;
        blocks.Add(new Heading(2, $"{comparison.After} against {comparison.Before}: {values.Verdict.Key()}"));
        blocks.Add(new Paragraph(VerdictWords.Sentence(values, "drag area", "m2")));
        List<string> sizes =
        [
            $"change of drag area: {RunsWords.Interval(comparison.SquareMetres, "0.0000", "m2")}",
            $"in per cent of the drag area before: {RunsWords.Interval(comparison.Percent, "0.0", "%")}",
            $"force at 100 km/h: {RunsWords.Interval(comparison.NewtonsAt100, "0.0", "N")}",
            $"power at 100 km/h: {RunsWords.Interval(comparison.KilowattsAt100, "0.00", "kW")}",
        ];
        if (comparison.Coefficient is { } coefficient)
        {
            sizes.Add($"drag coefficient: {RunsWords.Interval(coefficient, "0.0000", "on the frontal area given")}");
        }

        sizes.Add($"sought: {VerdictWords.Number(values.Rules.Planned)} m2; this test shows {VerdictWords.Number(values.SmallestShown)} m2 on four days of five");
        sizes.Add($"pairs: {values.Before.Count} before, {values.After.Count} after, order {values.Order}; p = {values.PValue:0.0000}; {RunsWords.Method(values.Method)}");
        blocks.Add(new Bullets(sizes));
        string more = VerdictWords.WhatItWouldTake(values, "m2", "pairs of runs");
        if (more.Length > 0)
        {
            blocks.Add(new Paragraph(more));
        }

        foreach (string warning in comparison.Warnings)
        {
            blocks.Add(new Warning("WEAKENS IT", warning));
        }

        blocks.Add(new Heading(3, "The same by other ways"));
        blocks.Add(OtherWays(comparison));
    }

    private static Table OtherWays(DragComparison comparison)
    {
        ValueComparison values = comparison.Values;
        List<IReadOnlyList<string>> rows = [["two groups (Welch)", RunsWords.Interval(values.Welch.Interval(0.95), "0.0000", "m2")]];
        if (values.DriftCorrected is { } drift)
        {
            rows.Add(["straight drift taken out", RunsWords.Interval(drift.Interval(0.95), "0.0000", "m2")]);
        }

        if (values.BlockPaired is { } blocks)
        {
            rows.Add(["blocks of A B B A", RunsWords.Interval(blocks.Interval(0.95), "0.0000", "m2")]);
        }

        rows.Add(["pairs redrawn 2,000 times (too narrow for few pairs)", RunsWords.Interval(values.Redrawn, "0.0000", "m2")]);
        if (comparison.TwoSpeed is { } two)
        {
            rows.Add(["two-speed method (can be checked by hand)", RunsWords.Interval(two.Decisive, "0.0000", "m2")]);
        }

        return new(["way", "change of drag area"], rows);
    }

    private static string NoComparison(SessionAnalysis analysis) => analysis.Pairs.Count == 0
        ? "No pair of runs could be used, so nothing can be said about drag. The reasons stand beside each run below."
        : analysis.Pairs.Select(pair => pair.Configuration).Distinct().Count() == 1
            ? "There is one configuration only, so nothing is compared. The drag area below is a rough figure: even a perfect day reads 3 to 9 % too high, so it does not compare with figures from elsewhere."
            : "Before and after cannot be compared: each side needs at least two pairs that can be used.";

    private static void AddWarnings(List<Block> blocks, SessionAnalysis analysis)
    {
        if (analysis.Warnings.Count > 0)
        {
            blocks.Add(new Heading(2, "What weakens the session"));
            blocks.AddRange(analysis.Warnings.Select(warning => new Warning("NOTE", warning)));
        }
    }

    private static void AddConfigurations(List<Block> blocks, SessionAnalysis analysis, AnalysisChoices choices)
    {
        if (analysis.Pairs.Count == 0)
        {
            return;
        }

        blocks.Add(new Heading(2, "Drag area by configuration"));
        blocks.Add(new Paragraph($"Between {analysis.UpperSpeed.KilometresPerHour:0} and {analysis.LowerSpeed.KilometresPerHour:0} km/h, mass {choices.Mass.Kilograms:0} kg and {100 * choices.RotatingShare:0.#} % for what turns. Absolute figures are 3 to 9 % too high even on a good day; only the difference within one day is to be trusted."));
        blocks.Add(new Table(
            ["configuration", "pairs", "drag area, 95 %", "rolling coefficient"],
            [.. RunsSummary.Of(analysis).Select(line => (IReadOnlyList<string>)[line.Configuration, $"{line.Pairs}", RunsWords.Plain(line.DragArea, "0.000", "m2") + (line.Pairs == 1 && double.IsFinite(line.DragArea.Low) ? " (one pair: from gusts alone, so too narrow)" : ""), line.Rolling is { } rolling ? rolling.ToString("0.0000") : ""])]));
        blocks.Add(RunsPicture.Of(analysis.Pairs));
        blocks.Add(new Table(
            ["pair", "configuration", "drag area m2", "two-speed m2", "own rolling", "grade %", "wind m/s", "rest m/s"],
            [.. analysis.Pairs.Select(pair => (IReadOnlyList<string>)
            [
                string.Join(" + ", pair.Runs), pair.Configuration, pair.DragArea.SquareMetres.ToString("0.000"), pair.TwoSpeedDragArea.SquareMetres.ToString("0.000"),
                pair.FreeRollingCoefficient.ToString("0.0000"), (100 * pair.Grade).ToString("0.00"), pair.Wind.MetresPerSecond.ToString("0.0"), pair.RootMeanSquare.MetresPerSecond.ToString("0.00"),
            ])]));
    }

    private static void AddRuns(List<Block> blocks, SessionAnalysis analysis)
    {
        if (analysis.Runs.Count == 0)
        {
            return;
        }

        blocks.Add(new Heading(2, $"Runs: {analysis.Runs.Count(run => run.Used)} of {analysis.Runs.Count} used"));
        blocks.Add(new Table(
            ["run", "way", "configuration", "used", "drag area m2", "reason, notes"],
            [.. analysis.Runs.Select(run => (IReadOnlyList<string>)
            [
                run.Run.Name, run.Run.Direction, run.Run.Configuration, run.Used ? "yes" : "no",
                run.DragArea is { } area ? area.SquareMetres.ToString("0.000") : "", string.Join("; ", run.Used ? run.Notes : [run.Reason, .. run.Notes]),
            ])]));
    }

    private static string Place(ShownProblem problem) => problem.Line == 0 ? problem.File : $"{problem.File}:{problem.Line}:{problem.Column}";
}
