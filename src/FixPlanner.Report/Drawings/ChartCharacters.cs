namespace FixPlanner.Report.Drawings;

/// <summary>A chart in plain characters, 78 columns wide: each line by its own sign, bands by their ends, stretches by a row of their own below.</summary>
internal static class ChartCharacters
{
    private const int Rows = 12;
    private const int Columns = 64;
    private const int LabelWidth = 9;
    private const string Signs = "*o+x#";

    public static IReadOnlyList<string> Of(Chart chart)
    {
        Axis x = Axis.Over(chart.Xs, 8, withZero: false);
        Axis y = Axis.Over(chart.Ys, 4, withZero: chart.FromZero);
        char[][] grid = [.. Enumerable.Range(0, Rows).Select(_ => Enumerable.Repeat(' ', Columns).ToArray())];
        int Column(double value) => Math.Clamp((int)Math.Round((value - x.Low) / (x.High - x.Low) * (Columns - 1)), 0, Columns - 1);
        int Row(double value) => Math.Clamp((int)Math.Round((y.High - value) / (y.High - y.Low) * (Rows - 1)), 0, Rows - 1);
        foreach (PlotBand band in chart.Bands)
        {
            for (int c = 0; c < Columns; c++)
            {
                if (Between([.. band.Points.Select(p => (p.X, p.Low))], At(c), false) is { } low && Between([.. band.Points.Select(p => (p.X, p.High))], At(c), false) is { } high)
                {
                    for (int r = Row(high); r <= Row(low); r++)
                    {
                        grid[r][c] = ':';
                    }
                }
            }
        }

        foreach ((int index, PlotLine line) in chart.Lines.Index())
        {
            for (int c = 0; c < Columns; c++)
            {
                if (Between(line.Points, At(c), line.Stairs) is { } value && double.IsFinite(value))
                {
                    grid[Row(value)][c] = Signs[index % Signs.Length];
                }
            }
        }

        string title = chart.Title.Length > 0 ? $"{chart.Title}: {chart.YAxis}" : chart.YAxis;
        List<string> lines = [title.Length <= Columns + LabelWidth + 2 ? title : chart.YAxis];
        lines.AddRange(grid.Select((row, i) => $"{Label(i, y),LabelWidth} |{new string(row)}".TrimEnd()));
        lines.Add($"{new string(' ', LabelWidth)} +{new string('-', Columns)}");
        lines.Add($"{new string(' ', LabelWidth + 2)}{x.Label(x.Low)}{x.Label(x.High).PadLeft(Columns - x.Label(x.Low).Length)}");
        foreach (PlotSpan span in chart.Spans)
        {
            string mark = new string(' ', Column(span.From)) + (span.From == span.To ? "^" : "<" + new string('=', Math.Max(0, Column(span.To) - Column(span.From) - 1)) + ">");
            bool fits = mark.Length + 1 + span.Name.Length <= Columns;
            lines.Add($"{new string(' ', LabelWidth + 2)}{(fits ? $"{mark} {span.Name}" : $"{span.Name.PadLeft(Math.Max(span.Name.Length, mark.Length - 2))} ^")}");
        }

        lines.Add($"{new string(' ', LabelWidth + 2)}{chart.XAxis}");
        lines.AddRange(chart.Lines.Count + chart.Bands.Count > 1 ? chart.Lines.Select((l, i) => $"{new string(' ', LabelWidth + 2)}{Signs[i % Signs.Length]} {l.Name}").Concat(chart.Bands.Select(b => $"{new string(' ', LabelWidth + 2)}: {b.Name}")) : []);
        return lines;

        double At(int column) => x.Low + (column * (x.High - x.Low) / (Columns - 1));
    }

    private static string Label(int row, Axis y) => row is 0 or Rows - 1 ? y.Label(row == 0 ? y.High : y.Low) : "";

    // The value of the line there; nothing outside its ends.
    private static double? Between(IReadOnlyList<(double X, double Y)> points, double x, bool stairs)
    {
        for (int i = points.Count - 1; i >= 0; i--)
        {
            if (points[i].X <= x)
            {
                return i == points.Count - 1 ? (stairs || points[i].X == x ? points[i].Y : null)
                    : stairs ? points[i].Y
                    : points[i].Y + ((x - points[i].X) / (points[i + 1].X - points[i].X) * (points[i + 1].Y - points[i].Y));
            }
        }

        return null;
    }
}
