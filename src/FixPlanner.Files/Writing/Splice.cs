namespace FixPlanner.Files.Writing;

/// <summary>The one span of a text that a change touches; everything outside of it stays byte for byte.</summary>
/// <param name="At">Offset in the text.</param>
/// <param name="Removed">What stood there.</param>
/// <param name="Inserted">What stands there now.</param>
internal sealed record Splice(int At, string Removed, string Inserted)
{
    public static Splice Of(string text, int start, int end, string inserted) => new(start, text[start..end], inserted);

    /// <summary>The smallest single span in which two texts differ.</summary>
    public static Splice Between(string before, string after)
    {
        int most = Math.Min(before.Length, after.Length);
        int head = before.AsSpan().CommonPrefixLength(after);
        int tail = 0;
        while (tail < most - head && before[^(tail + 1)] == after[^(tail + 1)])
        {
            tail++;
        }

        // A span never cuts a character pair in half: it is written to the journal, where halves cannot stand.
        head -= head > 0 && char.IsHighSurrogate(before[head - 1]) ? 1 : 0;
        tail -= tail > 0 && char.IsLowSurrogate(before[^tail]) ? 1 : 0;
        return new Splice(head, before[head..^tail], after[head..^tail]);
    }

    public Splice Inverse => new(At, Inserted, Removed);

    /// <summary>Whether the text has at this place what is to be taken out.</summary>
    public bool Fits(string text) => At >= 0 && At <= text.Length && text.AsSpan(At).StartsWith(Removed);

    public string ApplyTo(string text) => string.Concat(text.AsSpan(0, At), Inserted, text.AsSpan(At + Removed.Length));
}
