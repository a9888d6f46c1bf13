using System.Text;

namespace FixPlanner.Files.Problems;

/// <summary>
/// One mistake in what an owner or author wrote: where it is, what it is, why it matters, how to mend it.
/// A mistake of ours is an exception instead.
/// </summary>
/// <param name="Code">Four digits behind FP, such as FP2107; it never changes its meaning.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="What">What was found, in plain words.</param>
/// <param name="Why">Why it matters.</param>
/// <param name="Mend">What to do about it, with an example where one helps.</param>
public sealed record Problem(string Code, Severity Severity, Place Place, string What, string Why, string Mend)
{
    /// <summary>The three lines that are shown to people: place and what, why, mend.</summary>
    /// <returns>Three lines parted by a line feed, without one at the end.</returns>
    public override string ToString() =>
        $"{Printable(Place.ToString())}: {Word(Severity)} {Code}: {Printable(What)}\n  why:  {Printable(Why)}\n  mend: {Printable(Mend)}";

    private static string Word(Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Warning => "warning",
        _ => "note",
    };

    // What was written in a file must not steer the terminal that shows the message.
    private static string Printable(string text)
    {
        if (!text.Any(char.IsControl))
        {
            return text;
        }

        var shown = new StringBuilder(text.Length + 8);
        foreach (char c in text)
        {
            shown.Append(c switch
            {
                '\n' => "\\n",
                '\r' => "\\r",
                '\t' => "\\t",
                _ when char.IsControl(c) => $"\\x{(int)c:x2}",
                _ => c.ToString(),
            });
        }

        return shown.ToString();
    }
}
