using FixPlanner.Core.Pictures.Charts;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Drawings;

/// <summary>Bands along one axis, a row for each with its name, marks across all rows.</summary>
internal static class RowsPicture
{
    private const double Width = 660;
    private const double Left = 14;
    private const double RowHeight = 34;
    private const int Columns = 66;

    public static Picture Of(ChartSeries s)
    {
        Axis x = Drawings.Axis.Over(s.Bands.SelectMany(b => (double[])[b.Low, b.High]).Concat(s.Marks.Select(m => m.X)), 8, withZero: false);
        return new(Drawn(s, x), s.Reason) { Characters = [.. Characters(s, x)] };
    }

    private static string Drawn(ChartSeries s, Axis x)
    {
        double foot = 8 + (RowHeight * s.Bands.Count);
        Svg svg = new(s.Id, Width, foot + 34 + (14 * s.Marks.Count), s.Title, s.Reason);
        double X(double value) => Left + ((value - x.Low) / (x.High - x.Low) * (Width - (2 * Left)));
        for (int i = 0; i < s.Bands.Count; i++)
        {
            ChartBand band = s.Bands[i];
            double y = 8 + (RowHeight * i);
            svg.Text(Left, y + 10, $"{band.Name}: {band.Likely:0} ({band.Low:0} to {band.High:0}) {s.X.Unit}");
            svg.Box(X(band.Low), y + 14, X(band.High) - X(band.Low), 13, $"{svg.Fill("lines")} stroke=\"#000\"");
            svg.Line(X(band.Likely), y + 12, X(band.Likely), y + 29, "stroke=\"#000\" stroke-width=\"2.5\"");
        }

        svg.Line(Left, foot, Width - Left, foot, "stroke=\"#000\"");
        foreach (double value in x.Marks)
        {
            svg.Line(X(value), foot, X(value), foot + 4, "stroke=\"#000\"");
            svg.Text(X(value), foot + 16, x.Label(value), "text-anchor=\"middle\"");
        }

        svg.Text(Width - Left, foot + 29, SeriesPicture.Axis(s.X), "text-anchor=\"end\"");
        for (int i = 0; i < s.Marks.Count; i++)
        {
            svg.Line(X(s.Marks[i].X), 8, X(s.Marks[i].X), foot, "stroke=\"#000\" stroke-width=\"1.2\" stroke-dasharray=\"8 3 2 3\"");
            svg.Text(Left, foot + 40 + (14 * i), $"broken line at {s.Marks[i].X:0} {s.X.Unit}: {s.Marks[i].Name}");
        }

        return svg.ToString();
    }

    private static IEnumerable<string> Characters(ChartSeries s, Axis x)
    {
        int Column(double value) => Math.Clamp((int)Math.Round((value - x.Low) / (x.High - x.Low) * (Columns - 1)), 0, Columns - 1);
        yield return s.Title;
        foreach (ChartBand band in s.Bands)
        {
            yield return $"  {band.Name}: {band.Likely:0} ({band.Low:0} to {band.High:0}) {s.X.Unit}";
            char[] row = [.. Enumerable.Range(0, Columns).Select(c => c < Column(band.Low) || c > Column(band.High) ? ' ' : c == Column(band.Likely) ? '#' : '=')];
            yield return "  |" + new string(row).TrimEnd();
        }

        yield return $"  {x.Label(x.Low)}{x.Label(x.High).PadLeft(Columns - x.Label(x.Low).Length)}  {s.X.Unit}";
        foreach (ChartMark mark in s.Marks)
        {
            yield return $"  {new string(' ', Column(mark.X))}^ {mark.X:0} {s.X.Unit}";
            string name = mark.Name;
            while (name.Length > Columns)
            {
                int at = name.LastIndexOf(' ', Columns);
                yield return "  " + name[..at];
                name = name[(at + 1)..];
            }

            yield return "  " + name;
        }
    }
}
