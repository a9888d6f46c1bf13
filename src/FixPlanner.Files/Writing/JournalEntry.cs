namespace FixPlanner.Files.Writing;

/// <summary>What an entry of the journal stands for.</summary>
internal enum JournalKind
{
    Answer,
    Undo,
    Redo,
}

/// <summary>
/// One confirmed step, with all that is needed to put it in again or to take it back: to the byte while the logbook is
/// as it was then, by path and value when it has been edited since.
/// </summary>
/// <param name="Number">Counts up within a journal.</param>
/// <param name="Kind">Answer, undo or redo.</param>
/// <param name="Of">The entry that an undo or redo is about; 0 for an answer.</param>
/// <param name="Time">When it was confirmed, as text with its offset.</param>
/// <param name="What">In words.</param>
/// <param name="Before">Fingerprint of the logbook it was made on.</param>
/// <param name="After">Fingerprint of the logbook with it.</param>
/// <param name="Splice">The span of the text that changed.</param>
/// <param name="Changes">The same by path and value.</param>
internal sealed record JournalEntry(
    int Number,
    JournalKind Kind,
    int Of,
    string Time,
    string What,
    string Before,
    string After,
    Splice Splice,
    IReadOnlyList<YamlChange> Changes)
{
    /// <summary>Whether a text says everything that this entry put there.</summary>
    public bool IsIn(YamlValue whole) => Changes.All(change => ValueTree.At(whole, change.Path) == change.New);
}
