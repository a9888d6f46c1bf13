namespace FixPlanner.Files.Writing;

/// <summary>Which answers can be taken back, and which that were taken back can be given again.</summary>
internal sealed class UndoSteps
{
    private readonly List<JournalEntry> done = [];
    private readonly List<JournalEntry> undone = [];

    public UndoSteps(IEnumerable<JournalEntry> entries)
    {
        foreach (JournalEntry entry in entries)
        {
            Take(entry);
        }
    }

    /// <summary>The answer to take back next.</summary>
    public JournalEntry? NextUndo => done.LastOrDefault();

    /// <summary>The answer to give again next.</summary>
    public JournalEntry? NextRedo => undone.LastOrDefault();

    public void Take(JournalEntry entry)
    {
        switch (entry.Kind)
        {
            case JournalKind.Answer:
                done.Add(entry);
                undone.Clear();
                break;
            case JournalKind.Undo:
                Move(entry.Of, done, undone);
                break;
            default:
                Move(entry.Of, undone, done);
                break;
        }
    }

    private static void Move(int number, List<JournalEntry> from, List<JournalEntry> to)
    {
        int index = from.FindLastIndex(entry => entry.Number == number);
        if (index >= 0)
        {
            to.Add(from[index]);
            from.RemoveAt(index);
        }
    }
}
