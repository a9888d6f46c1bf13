using FixPlanner.Files.Texts;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Writing;

/// <summary>What the journal has and the logbook lacks.</summary>
/// <param name="Recovery">The finding in words.</param>
/// <param name="Entries">The entries to put in, or to choose about.</param>
/// <param name="Text">The text with the entries put in, where that is beyond doubt.</param>
internal sealed record JournalFindings(Recovery Recovery, IReadOnlyList<JournalEntry> Entries, string? Text)
{
    private static JournalFindings Nothing { get; } = new(Recovery.None, [], null);

    public static JournalFindings Compare(Journal journal, YamlDocument document, string onDisk)
    {
        IReadOnlyList<JournalEntry> entries = journal.Entries;
        if (entries.Count == 0 || entries[^1].After == onDisk)
        {
            return Nothing;
        }

        if (onDisk == Fingerprint.OfNothing)
        {
            return Choose(RecoveryKind.OlderFile, entries, document, Messages.LogbookIsGone(document.File, entries.Count));
        }

        IReadOnlyList<JournalEntry> lacking = ChainFrom(entries, onDisk);
        IReadOnlyList<JournalEntry> pending = journal.Pending;
        if (lacking.Count > 0 && lacking.Count <= pending.Count)
        {
            return Replayed(document.Text, lacking) is string text
                ? new(new(RecoveryKind.PutIn, Messages.PutIn(lacking), []), lacking, text)
                : Choose(RecoveryKind.BothMovedOn, lacking, document, Messages.BothMovedOn(document.File, lacking.Count));
        }

        if (lacking.Count > 0)
        {
            return Choose(RecoveryKind.OlderFile, lacking, document, Messages.OlderFile(document.File, lacking.Count));
        }

        YamlValue whole = YamlValue.From(document.Root);
        JournalEntry[] missing = [.. pending.Where(entry => !entry.IsIn(whole))];
        return missing.Length > 0
            ? Choose(RecoveryKind.BothMovedOn, missing, document, Messages.BothMovedOn(document.File, missing.Length))
            : new(new(RecoveryKind.ChangedOutside, Messages.EditedSince(document.File), []), [], null);
    }

    /// <summary>The entries that lead on, one from the other, from a state of the file to the last; none when there is no such way.</summary>
    private static IReadOnlyList<JournalEntry> ChainFrom(IReadOnlyList<JournalEntry> entries, string state)
    {
        int first = entries.Count;
        while (first > 0 && (first == entries.Count || entries[first - 1].After == entries[first].Before))
        {
            first--;
            if (entries[first].Before == state)
            {
                return [.. entries.Skip(first)];
            }
        }

        return [];
    }

    private static string? Replayed(string text, IReadOnlyList<JournalEntry> entries)
    {
        foreach (JournalEntry entry in entries)
        {
            if (!entry.Splice.Fits(text))
            {
                return null;
            }

            text = entry.Splice.ApplyTo(text);
        }

        return Fingerprint.Of(TextFile.Encode(text)) == entries[^1].After ? text : null;
    }

    private static JournalFindings Choose(RecoveryKind kind, IReadOnlyList<JournalEntry> entries, YamlDocument document, string sentence)
    {
        YamlValue whole = YamlValue.From(document.Root);
        return new(new(kind, sentence, [.. entries.Select(entry => Messages.WaitingAnswer(entry, whole))]), entries, null);
    }
}
