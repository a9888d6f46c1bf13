using FixPlanner.Core.Interview;
using FixPlanner.Core.Pictures.Charts;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Drawings;

namespace FixPlanner.Report.Plans;

/// <summary>The figures of this car as charts: drag and power, the pull on the rear glass against its hold, the vents, the speeds that boom; the ranges beside them in a table.</summary>
internal static class NumbersPart
{
    private const int SpeedsInTable = 3;

    public static IEnumerable<Block> Of(Assessment a)
    {
        IReadOnlyList<ChartSeries> charts = CarCharts.Of(a.Situation, a.Plan);
        if (charts.Count == 0)
        {
            yield break;
        }

        yield return new Heading(2, "Numbers");
        foreach (ChartSeries chart in charts)
        {
            yield return new Heading(3, chart.Title);
            yield return SeriesPicture.Of(chart);
            if (chart.Lines.Count > 0)
            {
                yield return Ranges(chart);
            }
        }
    }

    // Three speeds spread over the chart, each value with its range.
    private static Table Ranges(ChartSeries chart)
    {
        int last = chart.Lines[0].Points.Count - 1;
        int[] at = [.. Enumerable.Range(1, SpeedsInTable).Select(i => last * i / SpeedsInTable)];
        return new(
            [$"{chart.Y.Name}, {chart.Y.Unit}", .. at.Select(i => $"at {chart.Lines[0].Points[i].X:0} {chart.X.Unit}")],
            [.. chart.Lines.Select(l => (IReadOnlyList<string>)[l.Name, .. at.Select(i => Range(l.Points[i]))]),
             .. chart.Bands.Where(b => b.Along == BandAlong.Y).Select(b => (IReadOnlyList<string>)[b.Name, .. at.Select(_ => $"{Shown.Number(b.Likely)} ({Shown.Number(b.Low)} to {Shown.Number(b.High)})")])]);
    }

    private static string Range(ChartPoint p) => $"{Shown.Number(p.Likely)} ({Shown.Number(p.Low)} to {Shown.Number(p.High)})";
}
