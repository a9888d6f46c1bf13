using System.Text;

namespace FixPlanner.Terminal;

/// <summary>What goes to the terminal for one character on the screen.</summary>
internal static class PlainCharacters
{
    private static readonly string[] LocaleVariables = ["LC_ALL", "LC_CTYPE", "LANG"];

    // The runtime's own way of taking accents off needs tables of languages, which this program runs without.
    private const string Accented = "àáâãäåçèéêëìíîïñòóôõöøùúûüýÿÀÁÂÃÄÅÇÈÉÊËÌÍÎÏÑÒÓÔÕÖØÙÚÛÜÝąćčďęěłńňřśšťůźżžĄĆČĎĘĚŁŃŇŘŚŠŤŮŹŻŽőűŐŰ";
    private const string Bare = "aaaaaaceeeeiiiinoooooouuuuyyAAAAAACEEEEIIIINOOOOOOUUUUYaccdeelnnrsstuzzzACCDEELNNRSSTUZZZouOU";

    private static readonly Dictionary<string, string> Substitutes = new()
    {
        ["─"] = "-", ["━"] = "-", ["–"] = "-", ["—"] = "-", ["−"] = "-", ["│"] = "|", ["┃"] = "|", ["═"] = "=",
        ["‘"] = "'", ["’"] = "'", ["“"] = "\"", ["”"] = "\"", ["…"] = "~", ["·"] = "-", ["•"] = "*",
        ["×"] = "x", ["÷"] = "/", ["²"] = "2", ["³"] = "3", ["°"] = "o", ["±"] = "~", ["≤"] = "<", ["≥"] = ">",
        ["€"] = "E", ["£"] = "L", ["ρ"] = "r", ["Δ"] = "D", ["µ"] = "u", ["μ"] = "u", ["ß"] = "s",
        ["→"] = ">", ["←"] = "<", ["↑"] = "^", ["↓"] = "v", ["▼"] = "v", ["▲"] = "^", ["█"] = "#", ["░"] = ".",
    };

    /// <summary>True when the person's settings say that the terminal shows UTF-8: LC_ALL, else LC_CTYPE, else LANG.</summary>
    public static bool LocaleIsUtf8(Func<string, string?> environment)
    {
        string? locale = LocaleVariables.Select(environment).FirstOrDefault(value => !string.IsNullOrEmpty(value));
        string plain = (locale ?? "").Replace("-", "", StringComparison.Ordinal);
        return plain.Contains("utf8", StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>A character that cannot steer the terminal; an owner's note may hold anything.</summary>
    public static string Harmless(string grapheme)
    {
        foreach (Rune rune in grapheme.EnumerateRunes())
        {
            bool steers = Rune.IsControl(rune) || rune == Rune.ReplacementChar
                || rune.Value is 0x200E or 0x200F or (>= 0x202A and <= 0x202E) or (>= 0x2066 and <= 0x2069);
            if (steers)
            {
                return "?";
            }
        }
        return grapheme.Length == 0 ? " " : grapheme;
    }

    /// <summary>The nearest ASCII of the same width in columns.</summary>
    /// <param name="grapheme">One character as a person sees it.</param>
    /// <param name="columns">How many columns it takes: 1 or 2.</param>
    public static string Ascii(string grapheme, int columns)
    {
        string ascii = Nearest(grapheme);
        return columns > 1 ? ascii.PadRight(columns) : ascii;
    }

    private static string Nearest(string grapheme)
    {
        if (grapheme is [< '\x7f'])
        {
            return grapheme;
        }
        if (Substitutes.TryGetValue(grapheme, out string? substitute))
        {
            return substitute;
        }
        int accented = Accented.IndexOf(grapheme, StringComparison.Ordinal);
        return accented >= 0 ? Bare.Substring(accented, 1) : "?";
    }
}
