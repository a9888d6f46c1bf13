using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;

namespace FixPlanner.Files.Yaml;

/// <summary>
/// Says in an owner's words what is wrong where the YAML library stopped. The library's own words
/// ("did not find expected key") only choose among ours.
/// </summary>
internal sealed class YamlSyntax(string file, string text, LineMap lines)
{
    private const string Reserved = "@`%&*!|>?,[]{}";

    /// <summary>Explains one failure.</summary>
    /// <param name="offset">Where the library stopped.</param>
    /// <param name="reason">What it said; empty when it broke down itself.</param>
    /// <param name="bracket">The innermost bracket or brace that was open then.</param>
    public Problem Explain(int offset, string reason, int? bracket)
    {
        offset = Math.Clamp(offset, 0, text.Length);
        Place place = lines.PlaceAt(file, offset);
        if (Says("tab"))
        {
            return Messages.TabIndents(lines.PlaceAt(file, FirstIndentingTab(offset)));
        }

        if (Says("quoted scalar"))
        {
            return Says("end of stream") || Says("document indicator") ? Messages.QuoteStaysOpen(place) : Messages.BadEscape(place);
        }

        if (bracket is int opened && (reason.Length == 0 || Says("flow") || Says("node content")))
        {
            return Messages.BracketStaysOpen(lines.PlaceAt(file, opened), text[opened]);
        }

        if (Says("sequence entries"))
        {
            return Messages.DashBehindKey(place);
        }

        if (Says("scalar value, found invalid mapping") || Says("mapping values are not allowed"))
        {
            return SecondColonBefore(offset) ? Messages.SecondColon(place) : Messages.Indentation(place);
        }

        if (offset < text.Length && Reserved.Contains(text[offset]) && !Says("expected key"))
        {
            return Messages.CannotStart(place, text[offset]);
        }

        return Says("expected") || Says("mapping") || Says("simple key") ? Messages.Unfitting(place) : Messages.Syntax(place);

        bool Says(string words) => reason.Contains(words, StringComparison.Ordinal);
    }

    private int LineStart(int offset) => offset == 0 ? 0 : text.LastIndexOfAny(['\n', '\r'], offset - 1) + 1;

    // The library stops at the beginning of the piece that the tab is in, which may be lines above it.
    private int FirstIndentingTab(int offset)
    {
        for (int start = LineStart(offset); start < text.Length;)
        {
            int i = start;
            while (i < text.Length && text[i] == ' ')
            {
                i++;
            }

            if (i < text.Length && text[i] == '\t')
            {
                return i;
            }

            int end = text.IndexOfAny(['\n', '\r'], i);
            start = end < 0 ? text.Length : end + 1;
        }

        return offset;
    }

    private bool SecondColonBefore(int offset) => text[LineStart(offset)..offset].Contains(": ", StringComparison.Ordinal);
}
