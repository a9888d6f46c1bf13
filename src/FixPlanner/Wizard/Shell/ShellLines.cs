namespace FixPlanner.Wizard.Shell;

/// <summary>The lines round the body.</summary>
internal static class ShellLines
{
    /// <summary>Car at the left, where in the job at the right.</summary>
    public static TextLine Header(Frame frame, int width)
    {
        TextLine steps = Steps(frame);
        int room = width - steps.Width - 1;
        if (room < 12 && frame.Steps.Count > 0)
        {
            steps = TextLine.Of($"{frame.Step + 1} of {frame.Steps.Count}: {frame.Steps[frame.Step]}", Emphasis.Bold);
            room = Math.Max(0, width - steps.Width - 1);
        }
        return TextLine.Of(Columns.Fit(frame.Car, room) + " ", Emphasis.Bold).Then(steps);
    }

    /// <summary>The most important keys first, as many as fit.</summary>
    public static TextLine Footer(IReadOnlyList<KeyRow> rows, int width, bool typing)
    {
        List<Words> parts = [];
        int used = 0;
        // Leaving, help and back are never pushed out by what a screen adds.
        foreach (KeyRow row in rows.Where(row => row.InFooter && (row.WhileTyping || !typing)).OrderBy(row => ShellKeys.Table.Contains(row) ? 0 : 1))
        {
            int needed = Columns.Of(row.Label) + Columns.Of(row.Words) + 3;
            if (used + needed <= width)
            {
                used += needed;
                parts.AddRange([new Words(row.Label, Emphasis.Reverse), new Words($" {row.Words}  ")]);
            }
        }
        return new TextLine(parts);
    }

    /// <summary>The help: about the screen, then every key.</summary>
    public static IReadOnlyList<TextLine> Help(IReadOnlyList<TextLine> about, IReadOnlyList<KeyRow> keys, Scroller scroller, int width, int height, bool beside)
    {
        string edge = beside ? "│ " : "";
        List<TextLine> text = [.. about, .. keys.GroupBy(row => row.Words).Select(KeyLine)];
        List<TextLine> rows = Wrap.To(text, width - edge.Length);
        IReadOnlyList<TextLine> shown = Rows.Window(rows, scroller, height - 1);
        TextLine title = TextLine.Of(Columns.Fit("Help (F1 closes it)", width - edge.Length), Emphasis.Bold | Emphasis.Underline);
        return [.. ((IEnumerable<TextLine>)[title, .. Rows.Exactly(shown, height - 1)]).Select(row => ((TextLine)edge).Then(row))];
    }

    private static TextLine KeyLine(IGrouping<string, KeyRow> group) =>
        TextLine.Of(string.Join(", ", group.Select(row => row.Label)) + ": " + group.Key, hanging: 2);

    private static TextLine Steps(Frame frame)
    {
        List<Words> parts = [];
        for (int i = 0; i < frame.Steps.Count; i++)
        {
            bool here = i == frame.Step;
            parts.Add(new Words(here ? $"[{frame.Steps[i]}]" : $" {frame.Steps[i]} ", here ? Emphasis.Bold | Emphasis.Reverse : Emphasis.None));
        }
        return new TextLine(parts);
    }
}
