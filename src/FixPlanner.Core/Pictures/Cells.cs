namespace FixPlanner.Core.Pictures;

/// <summary>The cells of a drawing in characters that a shape covers.</summary>
internal static class Cells
{
    /// <summary>A block for each row whose middle the shape covers; rows of equal extent are joined.</summary>
    /// <param name="shape">Corners in order, in columns and rows.</param>
    /// <param name="width">Columns of the drawing.</param>
    /// <param name="height">Rows of the drawing.</param>
    public static IReadOnlyList<CellBox> Of(IReadOnlyList<PicturePoint> shape, int width, int height)
    {
        double top = shape.Min(corner => corner.Y);
        double bottom = shape.Max(corner => corner.Y);
        int first = Math.Clamp((int)Math.Ceiling(top - 0.5), 0, height - 1);
        int last = Math.Clamp((int)Math.Ceiling(bottom - 0.5) - 1, first, height - 1);
        List<CellBox> boxes = [];
        for (int row = first; row <= last; row++)
        {
            // A shape thinner than a row is met in its own middle.
            double level = Math.Clamp(row + 0.5, top + ((bottom - top) * 0.01), bottom - ((bottom - top) * 0.01));
            (double left, double right) = Cut(shape, level);
            int start = Math.Clamp((int)Math.Round(left), 0, width - 1);
            int end = Math.Clamp((int)Math.Round(right), start + 1, width);
            if (boxes.Count > 0 && boxes[^1].X == start && boxes[^1].Width == end - start)
            {
                boxes[^1] = boxes[^1] with { Height = boxes[^1].Height + 1 };
            }
            else
            {
                boxes.Add(new CellBox(start, row, end - start, 1));
            }
        }
        return boxes;
    }

    private static (double Left, double Right) Cut(IReadOnlyList<PicturePoint> shape, double level)
    {
        double left = double.PositiveInfinity;
        double right = double.NegativeInfinity;
        for (int i = 0; i < shape.Count; i++)
        {
            PicturePoint a = shape[i];
            PicturePoint b = shape[(i + 1) % shape.Count];
            if (a.Y == b.Y || level < Math.Min(a.Y, b.Y) || level > Math.Max(a.Y, b.Y))
            {
                continue;
            }
            double x = a.X + ((b.X - a.X) * (level - a.Y) / (b.Y - a.Y));
            left = Math.Min(left, x);
            right = Math.Max(right, x);
        }
        return (left, right);
    }
}
