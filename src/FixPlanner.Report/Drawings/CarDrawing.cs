using FixPlanner.Core.Pictures;

namespace FixPlanner.Report.Drawings;

/// <summary>The car from the side and from behind, its zones marked by number and pattern. The numbers stand in rows above and below, joined to their zones by a line.</summary>
internal static class CarDrawing
{
    private const double Strip = 26;
    private const double Gap = 16;
    private const double NumberRoom = 19;

    /// <summary>Draws it.</summary>
    /// <param name="id">Id of the drawing within the page.</param>
    /// <param name="title">Title.</param>
    /// <param name="words">What it shows, in words.</param>
    /// <param name="picture">The car.</param>
    /// <param name="marks">The zones that are marked.</param>
    /// <param name="key">What each pattern means: pattern and words.</param>
    /// <returns>The SVG.</returns>
    public static string Of(string id, string title, string words, CarPicture picture, IReadOnlyList<ZoneMark> marks, IReadOnlyList<(string Pattern, string Means)> key)
    {
        double width = picture.Side.Width + Gap + picture.Rear.Width;
        double height = picture.Side.Height + (2 * Strip) + (key.Count > 0 ? 22 : 0);
        Svg svg = new(id, width, height, title, words);
        View(svg, picture.Side, 0, marks);
        View(svg, picture.Rear, picture.Side.Width + Gap, [.. marks.Where(m => picture.Rear.Zones.ContainsKey(m.Zone))]);
        double x = 8;
        foreach ((string pattern, string means) in key)
        {
            svg.Box(x, height - 18, 18, 12, $"{svg.Fill(pattern)} stroke=\"#000\"");
            svg.Text(x + 23, height - 8, means);
            x += 40 + (5.6 * means.Length);
        }

        return svg.ToString();
    }

    private static void View(Svg svg, LineDrawing view, double left, IReadOnlyList<ZoneMark> marks)
    {
        foreach (PictureLine line in view.Lines)
        {
            svg.Path(line.Points.Select(p => (left + p.X, Strip + p.Y)), line.Closed, "fill=\"none\" stroke=\"#000\" stroke-width=\"1.4\" stroke-linejoin=\"round\"");
        }

        foreach (PictureCircle wheel in view.Circles)
        {
            svg.Circle(left + wheel.Centre.X, Strip + wheel.Centre.Y, wheel.Radius, "fill=\"none\" stroke=\"#000\" stroke-width=\"1.2\"");
        }

        foreach (ZoneMark mark in marks.Where(m => view.Zones.ContainsKey(m.Zone)))
        {
            foreach (IReadOnlyList<PicturePoint> shape in view.Zones[mark.Zone])
            {
                (double X, double Y)[] corners = [.. shape.Select(p => (left + p.X, Strip + p.Y))];
                svg.Path(corners, true, $"{(mark.Pattern.Length > 0 ? svg.Fill(mark.Pattern) : "fill=\"none\"")} stroke=\"#000\" stroke-width=\"0.8\" stroke-dasharray=\"3 2\"");
                if (mark.Second.Length > 0)
                {
                    svg.Path(corners, true, svg.Fill(mark.Second));
                }
            }
        }

        foreach (ZoneMark mark in marks.Where(m => m.Tufts > 0 && view.Zones.ContainsKey(m.Zone)))
        {
            Tufts(svg, view.Zones[mark.Zone], left, mark.Tufts);
        }

        Numbers(svg, view, left, marks);
    }

    // Tufts on a grid over the shape, at most thirty: short strokes that lie with the flow, thicker at the taped end.
    private static void Tufts(Svg svg, IReadOnlyList<IReadOnlyList<PicturePoint>> shapes, double left, int count)
    {
        int each = Math.Max(2, Math.Min(count, 30) / shapes.Count);
        foreach (IReadOnlyList<PicturePoint> shape in shapes)
        {
            (double low, double high) = (shape.Min(p => p.X), shape.Max(p => p.X));
            (double top, double bottom) = (shape.Min(p => p.Y), shape.Max(p => p.Y));
            double step = Math.Max(4, Math.Sqrt((high - low) * (bottom - top) / each));
            for (double y = top + Math.Min(step, bottom - top) / 2; y < bottom; y += step)
            {
                for (double x = low + Math.Min(step, high - low) / 2; x < high; x += step)
                {
                    if (Inside(shape, x, y))
                    {
                        svg.Circle(left + x, Strip + y, 1.2, "fill=\"#000\"");
                        svg.Line(left + x, Strip + y, left + x + 4, Strip + y + 0.8, "stroke=\"#000\" stroke-width=\"0.9\"");
                    }
                }
            }
        }
    }

    private static bool Inside(IReadOnlyList<PicturePoint> shape, double x, double y)
    {
        bool inside = false;
        for (int i = 0, j = shape.Count - 1; i < shape.Count; j = i++)
        {
            if ((shape[i].Y > y) != (shape[j].Y > y) && x < ((shape[j].X - shape[i].X) * (y - shape[i].Y) / (shape[j].Y - shape[i].Y)) + shape[i].X)
            {
                inside = !inside;
            }
        }

        return inside;
    }

    private static void Numbers(Svg svg, LineDrawing view, double left, IReadOnlyList<ZoneMark> marks)
    {
        double middle = (view.Zones.Values.SelectMany(z => z).SelectMany(z => z).Min(p => p.Y) + view.Height) / 2;
        foreach (bool above in (bool[])[true, false])
        {
            (ZoneMark Mark, PicturePoint At)[] row = [.. marks.Where(m => view.Zones.ContainsKey(m.Zone)).Select(m => (Mark: m, At: Centre(view.Zones[m.Zone][0]))).Where(m => m.At.Y < middle == above).OrderBy(m => m.At.X)];
            double[] places = Spaced([.. row.Select(m => m.At.X)], view.Width);
            double y = above ? 10 : Strip + view.Height + 14;
            for (int i = 0; i < row.Length; i++)
            {
                svg.Line(left + places[i], above ? y + 8 : y - 8, left + row[i].At.X, Strip + row[i].At.Y, "stroke=\"#000\" stroke-width=\"0.7\"");
                svg.Circle(left + row[i].At.X, Strip + row[i].At.Y, 1.8, "fill=\"#000\"");
                svg.Circle(left + places[i], y, 8, "fill=\"#fff\" stroke=\"#000\"");
                svg.Text(left + places[i], y + 4, $"{row[i].Mark.Number}", "text-anchor=\"middle\" font-weight=\"bold\"");
            }
        }
    }

    private static PicturePoint Centre(IReadOnlyList<PicturePoint> shape) => new(shape.Average(p => p.X), shape.Average(p => p.Y));

    // Numbers stand as near to their zones as their neighbours let them: pushed right from the left, then back from the right edge.
    private static double[] Spaced(double[] wanted, double width)
    {
        double[] at = [.. wanted];
        for (int i = 0; i < at.Length; i++)
        {
            at[i] = Math.Max(at[i], i == 0 ? 9 : at[i - 1] + NumberRoom);
        }

        for (int i = at.Length - 1; i >= 0; i--)
        {
            at[i] = Math.Min(at[i], i == at.Length - 1 ? width - 9 : at[i + 1] - NumberRoom);
        }

        return at;
    }
}
