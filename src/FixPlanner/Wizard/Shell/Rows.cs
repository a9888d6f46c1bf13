namespace FixPlanner.Wizard.Shell;

/// <summary>Putting rows of text together.</summary>
internal static class Rows
{
    public static readonly IReadOnlyList<TextLine> None = [];

    /// <summary>Text at the left, a picture at the right edge.</summary>
    public static IReadOnlyList<TextLine> Beside(IReadOnlyList<TextLine> left, IReadOnlyList<TextLine> right, int rightStart)
    {
        List<TextLine> rows = [];
        for (int y = 0; y < Math.Max(left.Count, right.Count); y++)
        {
            TextLine row = y < left.Count ? left[y] : TextLine.Empty;
            int gap = rightStart - row.Width;
            rows.Add(y < right.Count && gap >= 0 ? row.Then(new string(' ', gap)).Then(right[y]) : row);
        }
        return rows;
    }

    /// <summary>The rows in view, and a mark that there is more.</summary>
    public static IReadOnlyList<TextLine> Window(IReadOnlyList<TextLine> rows, Scroller scroller, int room)
    {
        if (rows.Count <= room)
        {
            scroller.Fit(room, rows.Count);
            return rows;
        }
        int shown = Math.Max(1, room - 1);
        scroller.Fit(shown, rows.Count);
        string mark = $"-- {scroller.Position}: PgUp, PgDn --";
        return [.. rows.Skip(scroller.Top).Take(shown), TextLine.Of(mark, Emphasis.Faint)];
    }

    /// <summary>Exactly so many rows.</summary>
    public static IReadOnlyList<TextLine> Exactly(IReadOnlyList<TextLine> rows, int count) =>
        [.. rows.Take(count), .. Enumerable.Repeat(TextLine.Empty, Math.Max(0, count - rows.Count))];
}
