using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;

namespace FixPlanner.Files.Writing;

/// <summary>
/// The journal beside a logbook: one line for each confirmed step, on disk before the step is called kept. It outlives
/// a kill, a full disk and a restart; undo reads from it.
/// </summary>
internal sealed class Journal
{
    private const int MostBytes = 64_000_000;
    private const int ShortenFrom = 1_000_000;
    private const int EntriesThatStay = 200;

    private readonly string file;
    private readonly IFileCalls calls;
    private readonly List<JournalEntry> entries = [];
    private readonly HashSet<int> left = [];
    private int keptUpTo;
    private int last;
    private bool nameIsSafe;
    private bool endsInLine = true;

    // Lines whose writing failed may have got to the disk after all; they were not confirmed, so they must not come back.
    private List<int> uncertain = [];

    private Journal(string file, IFileCalls calls)
    {
        this.file = file;
        this.calls = calls;
    }

    /// <summary>All entries that count, in order.</summary>
    public IReadOnlyList<JournalEntry> Entries => [.. entries.Where(entry => !left.Contains(entry.Number))];

    /// <summary>The entries of which it is not known that the logbook file holds them.</summary>
    public IReadOnlyList<JournalEntry> Pending => [.. Entries.Where(entry => entry.Number > keptUpTo)];

    public int NextNumber => last + 1;

    public static string NameFor(string logbook) => logbook + ".journal";

    /// <summary>Reads the journal of a logbook, or begins one; null when there is one that cannot be read.</summary>
    public static Journal? Open(string logbook, IFileCalls calls, ProblemList problems)
    {
        var journal = new Journal(NameFor(logbook), calls);
        try
        {
            if (!calls.IsFile(journal.file))
            {
                return journal;
            }
        }
        catch (Exception failure) when (FileFailure.IsOne(failure))
        {
            problems.Add(Messages.Unreadable(journal.file, failure));
            return null;
        }

        if (TextFile.ReadBytes(journal.file, calls, problems, MostBytes) is not byte[] content)
        {
            return null;
        }

        journal.Take(content, problems);
        journal.Shorten(content.Length, problems);
        return journal;
    }

    /// <summary>Adds an entry; when this returns no problem it is on disk.</summary>
    public Problem? Add(JournalEntry entry)
    {
        byte[] lead = uncertain.Count > 0 ? JournalLine.Leaving(uncertain).ToBytes() : [];
        last = entry.Number;
        if (Append([.. lead, .. JournalLine.Of(entry).ToBytes()], sync: true) is Problem problem)
        {
            uncertain.Add(entry.Number);
            return problem;
        }

        uncertain = [];
        entries.Add(entry);
        return null;
    }

    /// <summary>Notes that the logbook file holds everything so far. Losing this note costs a look at the next start, nothing more.</summary>
    public void MarkKept()
    {
        keptUpTo = last;
        _ = Append(JournalLine.Kept(last).ToBytes(), sync: false);
    }

    /// <summary>Notes that entries are not to be put in any more.</summary>
    public Problem? Leave(IReadOnlyList<int> numbers)
    {
        left.UnionWith(numbers);
        return Append(JournalLine.Leaving(numbers).ToBytes(), sync: true);
    }

    private void Take(byte[] content, ProblemList problems)
    {
        int number = 0;
        for (int start = 0; start < content.Length;)
        {
            number++;
            int end = Array.IndexOf(content, (byte)'\n', start);
            endsInLine = end >= 0;
            int stop = end < 0 ? content.Length : end;
            if (JournalLine.Parse(content.AsMemory(start, stop - start)) is JournalLine line)
            {
                Take(line);
            }
            else if (end >= 0 && stop > start)
            {
                // A last line that was cut off was never confirmed; one in the middle was spoiled later.
                problems.Add(Messages.SpoiledJournalLine(new Place(file, number, 1)));
            }

            start = stop + 1;
        }
    }

    private void Take(JournalLine line)
    {
        if (line.Entry is JournalEntry entry)
        {
            entries.Add(entry);
            last = Math.Max(last, entry.Number);
        }

        keptUpTo = Math.Max(keptUpTo, line.KeptUpTo);
        left.UnionWith(line.Left);
    }

    private Problem? Append(byte[] bytes, bool sync)
    {
        try
        {
            calls.Append(file, endsInLine ? bytes : [(byte)'\n', .. bytes], sync);
            endsInLine = true;
            if (!nameIsSafe && sync)
            {
                calls.SyncFolder(AtomicFile.FolderOf(file));
                nameIsSafe = true;
            }

            return null;
        }
        catch (Exception failure) when (FileFailure.IsOne(failure))
        {
            endsInLine = false;
            return Messages.Unwritable(file, failure);
        }
    }

    private void Shorten(int size, ProblemList problems)
    {
        if (size < ShortenFrom || Pending.Count > 0)
        {
            return;
        }

        JournalEntry[] stay = [.. Entries.TakeLast(EntriesThatStay)];
        byte[] content = [.. stay.SelectMany(entry => JournalLine.Of(entry).ToBytes()), .. JournalLine.Kept(last).ToBytes()];
        if (AtomicFile.Write(file, content, calls) is Problem problem)
        {
            problems.Add(problem with { Severity = Severity.Warning });
            return;
        }

        entries.Clear();
        entries.AddRange(stay);
        endsInLine = true;
    }
}
