using System.Text;

namespace FixPlanner.Core.Quantities;

/// <summary>Quantities inside prose are written {80 km/h}, so that they can be shown in the owner's units.</summary>
public static class Prose
{
    /// <summary>The text as read, each quantity in the unit it was written in.</summary>
    /// <param name="text">Prose of the pack.</param>
    /// <returns>The text without the marks.</returns>
    public static string Plain(string text)
    {
        if (!text.Contains('{'))
        {
            return text;
        }

        StringBuilder plain = new(text.Length);
        foreach (char c in text)
        {
            if (c is not '{' and not '}')
            {
                plain.Append(c);
            }
        }

        return plain.ToString();
    }
}
