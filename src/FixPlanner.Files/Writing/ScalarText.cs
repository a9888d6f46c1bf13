using System.Buffers;
using System.Text;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Writing;

/// <summary>Writes a single value so that it reads back as the same text: plain where that is safe, else in quotes.</summary>
internal static class ScalarText
{
    private const string SafeFirst = "+./(_°";

    private static readonly SearchValues<char> PartsFlow = SearchValues.Create(",[]{}:");

    /// <summary>Whether a text can stand in a file at all: half of a character pair cannot be written as UTF-8.</summary>
    public static bool CanBeWritten(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (!char.IsSurrogate(text[i]))
            {
                continue;
            }

            if (i + 1 == text.Length || !char.IsSurrogatePair(text[i], text[i + 1]))
            {
                return false;
            }

            i++;
        }

        return true;
    }

    /// <summary>Writes a text.</summary>
    /// <param name="text">Any text that can be written.</param>
    /// <param name="inFlow">Whether it stands in brackets or braces, where commas and colons part things.</param>
    /// <param name="like">The style that stands there now and is kept where it can be.</param>
    public static string Write(string text, bool inFlow, YamlStyle like = YamlStyle.Plain)
    {
        if (like != YamlStyle.DoubleQuoted && like != YamlStyle.SingleQuoted && IsSafePlain(text, inFlow))
        {
            return text;
        }

        return like != YamlStyle.DoubleQuoted && text.All(IsPrintable) ? $"'{text.Replace("'", "''")}'" : DoubleQuoted(text);
    }

    /// <summary>Writes a key: a plain word where it is one, else in quotes.</summary>
    public static string Key(string key) => Write(key, inFlow: true, key.All(c => char.IsLetterOrDigit(c) || "_-. ".Contains(c)) ? YamlStyle.Plain : YamlStyle.SingleQuoted);

    private static bool IsSafePlain(string text, bool inFlow)
    {
        if (YamlScalar.IsUnsetWord(text) || !text.All(IsPrintable) || text[^1] is ' ' or ':')
        {
            return false;
        }

        bool begins = char.IsLetterOrDigit(text[0]) || SafeFirst.Contains(text[0]) || (text[0] == '-' && text.Length > 1 && char.IsLetterOrDigit(text[1]));
        return begins
            && !text.StartsWith("...", StringComparison.Ordinal)
            && !text.Contains(": ", StringComparison.Ordinal)
            && !text.Contains(" #", StringComparison.Ordinal)
            && !(inFlow && text.AsSpan().ContainsAny(PartsFlow));
    }

    // Spaces other than the plain one would not be seen as what they are; the rest are line ends or marks to some readers.
    private static bool IsPrintable(char c) => !char.IsControl(c) && c is not ('\u2028' or '\u2029' or '\uFEFF' or '\uFFFE' or '\uFFFF');

    private static string DoubleQuoted(string text)
    {
        var quoted = new StringBuilder(text.Length + 8).Append('"');
        foreach (char c in text)
        {
            quoted.Append(c switch
            {
                '"' => "\\\"",
                '\\' => "\\\\",
                '\n' => "\\n",
                '\r' => "\\r",
                '\t' => "\\t",
                _ when IsPrintable(c) => c.ToString(),
                _ => $"\\u{(int)c:X4}",
            });
        }

        return quoted.Append('"').ToString();
    }
}
