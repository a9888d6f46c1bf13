namespace FixPlanner.Wizard.Shell;

/// <summary>What is said when the window is too small to work in.</summary>
internal static class SizeNotice
{
    public static IReadOnlyList<TextLine> Rows(int width, int height, int leastWidth, int leastHeight, string plainCommand)
    {
        List<TextLine> text =
        [
            $"This window is {width}x{height}; the screens need at least {leastWidth}x{leastHeight}.",
            $"Make it larger, or leave with Ctrl+Q and go on line by line: {plainCommand}",
            "Nothing you confirmed is lost.",
        ];
        return [.. Wrap.To(text, Math.Max(1, width)).Take(Math.Max(1, height))];
    }
}
