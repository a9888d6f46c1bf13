using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.Report.Runs;

/// <summary>Each configuration by itself: mean drag area with the interval that its own pairs give.</summary>
internal static class RunsSummary
{
    public sealed record Line(string Configuration, int Pairs, ConfidenceInterval DragArea, double? Rolling);

    public static IReadOnlyList<Line> Of(SessionAnalysis analysis) =>
        [.. analysis.Pairs.GroupBy(pair => pair.Configuration).Select(group => new Line(group.Key, group.Count(), group.First().WithGusts ?? Mean([.. group.Select(pair => pair.DragArea.SquareMetres)]), Rolling(analysis, [.. group])))];

    private static ConfidenceInterval Mean(double[] areas)
    {
        SampleSummary summary = SampleSummary.Of(areas);
        double half = areas.Length < 2 ? double.NaN : StudentT.Quantile(0.975, areas.Length - 1) * summary.StandardDeviation / Math.Sqrt(areas.Length);
        return new(summary.Mean, summary.Mean - half, summary.Mean + half);
    }

    private static double? Rolling(SessionAnalysis analysis, RunPair[] pairs) =>
        analysis.SharedRolling.TryGetValue(pairs[0].Day, out double shared) ? shared : pairs.Average(pair => pair.FreeRollingCoefficient);
}
