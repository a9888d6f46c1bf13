namespace FixPlanner.Report.Drawings;

/// <summary>A chart as SVG.</summary>
internal static class ChartSvg
{
    private const double Width = 660;
    private const double Left = 58;
    private const double Right = 14;
    private const double Top = 12;
    private const double PlotHeight = 200;
    private const double KeyRow = 16;

    public static string Of(Chart chart)
    {
        Axis x = Axis.Over(chart.Xs, 8, withZero: false);
        Axis y = Axis.Over(chart.Ys, 5, withZero: chart.FromZero);
        (string Name, Action<Svg, double, double> Sample)[] key = [.. Key(chart)];
        Svg svg = new(chart.Id, Width, Top + PlotHeight + 36 + (KeyRow * ((key.Length + 1) / 2)), chart.Title, chart.Words);
        double X(double value) => Left + ((value - x.Low) / (x.High - x.Low) * (Width - Left - Right));
        double Y(double value) => Top + ((y.High - value) / (y.High - y.Low) * PlotHeight);
        Frame(svg, chart, x, y, X, Y);
        for (int i = 0; i < chart.Spans.Count; i++)
        {
            Mark(svg, chart.Spans[i], i, X);
        }

        foreach (PlotBand band in chart.Bands)
        {
            svg.Path(band.Points.Select(p => (X(p.X), Y(p.High))).Concat(band.Points.Reverse().Select(p => (X(p.X), Y(p.Low)))), true, $"{svg.Fill(band.Pattern)} stroke=\"#000\" stroke-width=\"0.5\"");
        }

        foreach (PlotLine line in chart.Lines)
        {
            svg.Path(Corners(line).Select(p => (X(p.X), Y(p.Y))), false, $"fill=\"none\" stroke=\"#000\" stroke-width=\"2\"{Dash(line.Stroke)}");
        }

        for (int i = 0; i < key.Length; i++)
        {
            (double kx, double ky) = (Left + (i % 2 * 300), Top + PlotHeight + 42 + (KeyRow * (i / 2)));
            key[i].Sample(svg, kx, ky);
            svg.Text(kx + 30, ky + 4, key[i].Name);
        }

        return svg.ToString();
    }

    private static void Frame(Svg svg, Chart chart, Axis x, Axis y, Func<double, double> atX, Func<double, double> atY)
    {
        foreach (double value in y.Marks)
        {
            svg.Line(Left, atY(value), Width - Right, atY(value), value == 0 ? "stroke=\"#000\"" : "stroke=\"#bbb\" stroke-width=\"0.6\"");
            svg.Text(Left - 6, atY(value) + 4, y.Label(value), "text-anchor=\"end\"");
        }

        foreach (double value in x.Marks)
        {
            svg.Line(atX(value), Top + PlotHeight, atX(value), Top + PlotHeight + 4, "stroke=\"#000\"");
            svg.Text(atX(value), Top + PlotHeight + 15, x.Label(value), "text-anchor=\"middle\"");
        }

        svg.Box(Left, Top, Width - Left - Right, PlotHeight, "fill=\"none\" stroke=\"#000\"");
        svg.Text(Width - Right, Top + PlotHeight + 29, chart.XAxis, "text-anchor=\"end\"");
        svg.Text(13, Top + (PlotHeight / 2), chart.YAxis, $"text-anchor=\"middle\" transform=\"rotate(-90 13 {Top + (PlotHeight / 2):0.#})\"");
    }

    private static void Mark(Svg svg, PlotSpan span, int row, Func<double, double> atX)
    {
        if (span.From == span.To)
        {
            svg.Line(atX(span.From), Top, atX(span.From), Top + PlotHeight, "stroke=\"#000\" stroke-width=\"1.2\" stroke-dasharray=\"8 3 2 3\"");

            // The name stands at the line itself, on the side that has room.
            bool right = atX(span.From) > Width - 150;
            svg.Text(atX(span.From) + (right ? -4 : 4), Top + 13 + (13 * row), span.Name, "paint-order=\"stroke\" stroke=\"#fff\" stroke-width=\"3\"" + (right ? " text-anchor=\"end\"" : ""));
        }
        else
        {
            svg.Box(atX(span.From), Top, atX(span.To) - atX(span.From), PlotHeight, $"{svg.Fill(span.Pattern)} stroke=\"#000\" stroke-width=\"0.5\"");
        }
    }

    // A line that holds until the next point turns two corners at each.
    private static IEnumerable<(double X, double Y)> Corners(PlotLine line) =>
        line.Points.SelectMany((p, i) => line.Stairs && i > 0 ? [(p.X, line.Points[i - 1].Y), p] : new[] { p });

    private static IEnumerable<(string Name, Action<Svg, double, double> Sample)> Key(Chart chart)
    {
        foreach (PlotLine line in chart.Lines)
        {
            yield return (line.Name, (svg, x, y) => svg.Line(x, y, x + 24, y, $"stroke=\"#000\" stroke-width=\"2\"{Dash(line.Stroke)}"));
        }

        foreach (PlotBand band in chart.Bands)
        {
            yield return (band.Name, (svg, x, y) => svg.Box(x, y - 5, 24, 10, $"{svg.Fill(band.Pattern)} stroke=\"#000\" stroke-width=\"0.5\""));
        }

        foreach (PlotSpan span in chart.Spans.Where(s => s.From != s.To))
        {
            yield return (span.Name, (svg, x, y) => svg.Box(x, y - 5, 24, 10, $"{svg.Fill(span.Pattern)} stroke=\"#000\" stroke-width=\"0.5\""));
        }
    }

    private static string Dash(Stroke stroke) => stroke switch
    {
        Stroke.Dashed => " stroke-dasharray=\"7 4\"",
        Stroke.Dotted => " stroke-dasharray=\"2 4\"",
        Stroke.DashDot => " stroke-dasharray=\"10 3 2 3\"",
        Stroke.LongDash => " stroke-dasharray=\"16 5\"",
        _ => "",
    };
}
