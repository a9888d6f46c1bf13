using FixPlanner.Core.Pictures.Charts;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Drawings;

/// <summary>A chart of the models as a picture: lines with their range while there are few, else the lines alone; bands by pattern; marks by name.</summary>
internal static class SeriesPicture
{
    private const int MostRanges = 2;
    private static readonly Stroke[] Strokes = [Stroke.Solid, Stroke.Dashed, Stroke.Dotted, Stroke.DashDot, Stroke.LongDash];
    private static readonly string[] Patterns = ["lines", "dots"];

    public static Picture Of(ChartSeries s)
    {
        if (s.Lines.Count == 0)
        {
            return RowsPicture.Of(s);
        }

        (double left, double right) = (s.Lines[0].Points[0].X, s.Lines[0].Points[^1].X);
        Chart chart = new(s.Id, s.Title, Axis(s.X), Axis(s.Y), [.. s.Lines.Select((l, i) => new PlotLine(l.Name, [.. l.Points.Select(p => (p.X, p.Likely))], Strokes[i % Strokes.Length]))])
        {
            Bands =
            [
                .. s.Bands.Where(b => b.Along == BandAlong.Y).Select(b => new PlotBand(b.Name, [(left, b.Low, b.High), (right, b.Low, b.High)], "cross")),
                .. s.Lines.Count > MostRanges ? [] : s.Lines.Select((l, i) => new PlotBand($"range, {l.Name}", [.. l.Points.Select(p => (p.X, p.Low, p.High))], Patterns[i])),
            ],
            Spans = [.. s.Marks.Where(m => m.X >= left && m.X <= right).Select(m => new PlotSpan(m.Name, m.X, m.X, ""))],
            Words = s.Reason,
        };
        return Charts.Picture(chart);
    }

    internal static string Axis(ChartAxis axis) => axis.Unit.Length > 0 ? $"{axis.Name}, {axis.Unit}" : axis.Name;
}
