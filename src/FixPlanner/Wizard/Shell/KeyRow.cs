using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Shell;

/// <summary>One line of the key table, which feeds the key handler, the footer and the help.</summary>
/// <param name="Key">The key.</param>
/// <param name="Label">The key as people call it: Esc, F1, u.</param>
/// <param name="Words">What it does, in a word or three.</param>
/// <param name="Does">What it sends.</param>
/// <param name="WhileTyping">True when it works while text is being typed as well; never for a letter, digit or sign.</param>
/// <param name="InFooter">True when the footer shows it, room permitting; the help shows all.</param>
internal sealed record KeyRow(Key Key, string Label, string Words, Message Does, bool WhileTyping = false, bool InFooter = true);

/// <summary>Checks on key tables.</summary>
internal static class KeyTable
{
    /// <summary>Rows that cannot be told apart, and rows that would swallow what a person types. Empty when all is well.</summary>
    public static IReadOnlyList<string> Clashes(IEnumerable<KeyRow> rows)
    {
        List<KeyRow> all = [.. rows];
        IEnumerable<string> twice = all.GroupBy(row => row.Key).Where(group => group.Count() > 1)
            .Select(group => $"{group.Key}: {string.Join(", ", group.Select(row => row.Words))}");
        IEnumerable<string> swallowed = all.Where(row => row.WhileTyping && IsText(row.Key))
            .Select(row => $"{row.Key}: would swallow what is typed ({row.Words})");
        return [.. twice, .. swallowed];
    }

    /// <summary>True for a key that puts a character into a text.</summary>
    public static bool IsText(Key key) => !key.IsCtrl && !key.IsAlt && key.AsRune.Value >= ' ' && key.AsRune.Value != 0x7f;
}
