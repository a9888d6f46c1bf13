using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads the words that say where a figure comes from.</summary>
internal static class BasisText
{
    public static readonly Basis None = new("", [], false, false, false, false);

    public static Basis Read(YamlScalar scalar, string what, FileBinder binder)
    {
        string text = scalar.Text;
        List<string> cited = [];
        foreach (string word in WordsOf(text))
        {
            if (binder.Context.Sources.Contains(word))
            {
                cited.Add(word);
                binder.Bound.Mentions.Add(new(RuleKind.Source, word, scalar.Place));
            }
            else if (LooksLikeSource(word))
            {
                binder.Problems.Add(Messages.UnknownId(scalar.Place, RuleKind.Source, word, binder.Context.Sources));
            }
        }

        Basis basis = new(text, [.. cited.Distinct()], Says("from memory"), Says("common practice"), Says("computed"), Says("judgement"));
        if (!basis.IsStated)
        {
            binder.Problems.Add(Messages.NoBasis(scalar, what));
        }

        return basis;

        bool Says(string words) => text.Contains(words, StringComparison.Ordinal);
    }

    /// <summary>A capital S and digits, as the sources of the shipped pack are called.</summary>
    public static bool LooksLikeSource(string word) => word.Length is >= 2 and <= 4 && word[0] == 'S' && word.Skip(1).All(char.IsAsciiDigit);

    public static IEnumerable<string> WordsOf(string text)
    {
        int start = -1;
        for (int i = 0; i <= text.Length; i++)
        {
            bool inside = i < text.Length && (char.IsAsciiLetterOrDigit(text[i]) || (text[i] == '-' && start >= 0));
            if (inside && start < 0)
            {
                start = i;
            }
            else if (!inside && start >= 0)
            {
                yield return text[start..i].TrimEnd('-');
                start = -1;
            }
        }
    }
}
