using Terminal.Gui.Text;

namespace FixPlanner.Wizard.Shell;

/// <summary>How many columns a text takes on the screen, and cutting to columns.</summary>
internal static class Columns
{
    public static int Of(string text) => IsPlain(text) ? text.Length : text.GetColumns();

    /// <summary>Exactly so many columns: cut with a sign that something is missing, or filled with blanks.</summary>
    public static string Fit(string text, int width, bool toTheRight = false)
    {
        int missing = width - Of(text);
        if (missing >= 0)
        {
            return toTheRight ? new string(' ', missing) + text : text + new string(' ', missing);
        }
        return width <= 0 ? "" : Cut(text, width - 1) + "…";
    }

    /// <summary>The longest beginning that fits.</summary>
    public static string Cut(string text, int width)
    {
        if (IsPlain(text))
        {
            return text[..Math.Clamp(width, 0, text.Length)];
        }
        int end = 0;
        int used = 0;
        System.Globalization.TextElementEnumerator graphemes = System.Globalization.StringInfo.GetTextElementEnumerator(text);
        while (graphemes.MoveNext())
        {
            string grapheme = graphemes.GetTextElement();
            used += Of(grapheme);
            if (used > width)
            {
                break;
            }
            end = graphemes.ElementIndex + grapheme.Length;
        }
        return text[..end];
    }

    private static bool IsPlain(string text)
    {
        foreach (char c in text)
        {
            if (c is < ' ' or > '~')
            {
                return false;
            }
        }
        return true;
    }
}
