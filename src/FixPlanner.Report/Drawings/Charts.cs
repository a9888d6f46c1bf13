using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Drawings;

/// <summary>A chart as a block of a document.</summary>
internal static class Charts
{
    public static Picture Picture(Chart chart) => new(ChartSvg.Of(chart), chart.Words) { Characters = ChartCharacters.Of(chart) };
}
