using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Writing;

/// <summary>
/// A logbook held open by one program: its text, its journal and its lock. An answer goes to the journal first and then
/// into the file, so a kill at any moment loses none that was called kept; edits made elsewhere meanwhile are read in,
/// never written over. Nothing here is thread-safe.
/// </summary>
public sealed class LogbookFile : IDisposable
{
    private readonly IFileCalls calls;
    private readonly TimeProvider clock;
    private readonly LogbookLock held;
    private readonly Journal journal;

    // Entries that are in the journal but could not be written to the file yet.
    private readonly List<JournalEntry> unsaved = [];
    private UndoSteps steps;
    private string onDisk;

    internal LogbookFile(LogbookState state, IFileCalls calls, TimeProvider clock)
    {
        this.calls = calls;
        this.clock = clock;
        (File, held, journal, Document, onDisk) = (state.File, state.Lock, state.Journal, state.Document, state.OnDisk);
        steps = new UndoSteps(journal.Entries);
    }

    /// <summary>The file as it was named.</summary>
    public string File { get; }

    /// <summary>The text as it stands now, with everything that was kept.</summary>
    public string Text => Document.Text;

    /// <summary>What was found when it was opened; while it needs a choice, nothing is written.</summary>
    public Recovery Recovery { get; private set; } = Recovery.None;

    /// <summary>In words, what <see cref="Undo"/> would take back; null when there is nothing.</summary>
    public string? NextUndo => steps.NextUndo?.What;

    /// <summary>In words, what <see cref="Redo"/> would put in again; null when there is nothing.</summary>
    public string? NextRedo => steps.NextRedo?.What;

    internal YamlDocument Document { get; private set; }

    private IReadOnlyList<JournalEntry> Waiting { get; set; } = [];

    /// <summary>Opens a logbook, takes its lock, and puts in what its journal has and the file lacks.</summary>
    /// <param name="file">Its name. A file that is not there yet is made with the first answer.</param>
    /// <param name="startText">What a new file begins with, as YAML.</param>
    /// <param name="clock">For the times in the journal.</param>
    /// <param name="calls">The disk.</param>
    /// <param name="me">Who holds the lock.</param>
    /// <param name="runs">Whether another holder still runs.</param>
    /// <param name="problems">Takes what is wrong, and notes.</param>
    /// <returns>The open logbook, to be disposed; null when it cannot be opened.</returns>
    internal static LogbookFile? Open(
        string file,
        string startText,
        TimeProvider clock,
        IFileCalls calls,
        LockHolder me,
        Func<LockHolder, bool> runs,
        ProblemList problems)
    {
        if (LogbookState.Load(file, startText, calls, me, runs, problems) is not LogbookState state)
        {
            return null;
        }

        var logbook = new LogbookFile(state, calls, clock);
        logbook.Settle(problems);
        return logbook;
    }

    /// <summary>Keeps an answer. When this returns true it is on disk and outlives a kill or a power cut.</summary>
    /// <param name="what">The answer in words, for the journal and for undo.</param>
    /// <param name="edits">What it changes in the file; all of it or nothing is made.</param>
    /// <param name="problems">Takes what is wrong, and notes on edits made elsewhere that were read in.</param>
    /// <returns>Whether it was kept.</returns>
    public bool Apply(string what, IReadOnlyList<YamlEdit> edits, ProblemList problems)
    {
        ArgumentNullException.ThrowIfNull(edits);
        if (Recovery.NeedsChoice)
        {
            problems.Add(Messages.ChoiceIsOpen(File));
            return false;
        }

        return Refresh(problems) is IReadOnlyList<YamlEdit> again && Make(what, [.. again, .. edits], problems);
    }

    /// <summary>Takes the last answer back. To the byte while nothing else has changed since, by its value otherwise.</summary>
    /// <param name="problems">Takes what is wrong.</param>
    /// <returns>Whether it was taken back.</returns>
    public bool Undo(ProblemList problems) =>
        steps.NextUndo is JournalEntry entry
            ? Step(JournalKind.Undo, entry, entry.After, entry.Splice.Inverse, [.. entry.Changes.Reverse().Select(change => change.Inverse)], problems)
            : Refuse(Messages.NothingToUndo(File), problems);

    /// <summary>Puts in again what was taken back last.</summary>
    /// <param name="problems">Takes what is wrong.</param>
    /// <returns>Whether it was put in.</returns>
    public bool Redo(ProblemList problems) =>
        steps.NextRedo is JournalEntry entry
            ? Step(JournalKind.Redo, entry, entry.Before, entry.Splice, entry.Changes, problems)
            : Refuse(Messages.NothingToRedo(File), problems);

    /// <summary>Chooses to put the waiting answers into the file as it is now.</summary>
    /// <param name="problems">Takes what is wrong; the choice then stays open.</param>
    /// <returns>Whether they were put in.</returns>
    public bool TakeWaiting(ProblemList problems)
    {
        string what = Messages.AnswersFromJournal(Waiting.Count);
        IReadOnlyList<YamlEdit> edits = [.. Waiting.SelectMany(entry => entry.Changes).Select(change => change.Again)];
        return Refresh(problems) is not null && Make(what, edits, problems) && LeaveWaiting(problems);
    }

    /// <summary>Chooses to leave the file as it is; the waiting answers are not put in any more.</summary>
    /// <param name="problems">Takes what is wrong; the choice then stays open.</param>
    /// <returns>Whether this was noted.</returns>
    public bool LeaveWaiting(ProblemList problems)
    {
        if (Waiting.Count > 0 && journal.Leave([.. Waiting.Select(entry => entry.Number)]) is Problem problem)
        {
            return Refuse(problem, problems);
        }

        Waiting = [];
        Recovery = Recovery.None;
        steps = new UndoSteps(journal.Entries);
        return true;
    }

    /// <summary>Lets go of the lock.</summary>
    public void Dispose() => held.Release();

    private static bool Refuse(Problem problem, ProblemList problems)
    {
        problems.Add(problem);
        return false;
    }

    private void Settle(ProblemList problems)
    {
        JournalFindings found = JournalFindings.Compare(journal, Document, onDisk);
        Recovery = found.Recovery;
        if (found.Recovery.NeedsChoice)
        {
            Waiting = found.Entries;
        }
        else if (found.Text is string text && YamlReader.Read(File, text, problems) is YamlDocument document)
        {
            Document = document;
            unsaved.AddRange(found.Entries);
            Save(problems);
        }
        else if (journal.Pending.Count > 0)
        {
            journal.MarkKept();
        }
    }

    /// <summary>Looks whether the file is still as we left it; reads in what was changed elsewhere.</summary>
    /// <returns>What must be made again on the new text; null when nothing may be written.</returns>
    private IReadOnlyList<YamlEdit>? Refresh(ProblemList problems)
    {
        if (!held.IsOurs())
        {
            problems.Add(Messages.LockIsLost(File));
            return null;
        }

        if (LogbookState.ReadContent(File, calls, problems) is not (true, var content))
        {
            return null;
        }

        if (content is null)
        {
            return Begin(problems) ? [] : null;
        }

        string now = Fingerprint.Of(content);
        if (now == onDisk || now == Fingerprint.Of(TextFile.Encode(Text)))
        {
            onDisk = now;
            return [];
        }

        if (TextFile.Decode(File, content, problems) is not string text || YamlReader.Read(File, text, problems) is not YamlDocument document)
        {
            problems.Add(Messages.BrokenOutside(File));
            return null;
        }

        problems.Add(Messages.ChangedOutside(File));
        (Document, onDisk) = (document, now);
        return [.. unsaved.SelectMany(entry => entry.Changes).Select(change => change.Again)];
    }

    // A logbook that is not there is written as it was last known, at first with its start text.
    private bool Begin(ProblemList problems)
    {
        if (onDisk != Fingerprint.OfNothing)
        {
            problems.Add(Messages.WasRemoved(File));
        }

        byte[] content = TextFile.Encode(Text);
        if (AtomicFile.Write(File, content, calls) is Problem problem)
        {
            return Refuse(problem, problems);
        }

        onDisk = Fingerprint.Of(content);
        return true;
    }

    private bool Make(string what, IReadOnlyList<YamlEdit> edits, ProblemList problems)
    {
        YamlDocument document = Document;
        var changes = new List<YamlChange>();
        foreach (YamlEdit edit in edits)
        {
            if (YamlSplicer.Apply(document, edit, problems) is not Spliced spliced)
            {
                return false;
            }

            document = spliced.Document;
            changes.Add(spliced.Change);
        }

        return Keep(JournalKind.Answer, 0, what, document, changes, problems);
    }

    private bool Step(JournalKind kind, JournalEntry entry, string from, Splice splice, IReadOnlyList<YamlChange> changes, ProblemList problems)
    {
        if (Recovery.NeedsChoice)
        {
            return Refuse(Messages.ChoiceIsOpen(File), problems);
        }

        if (Refresh(problems) is not IReadOnlyList<YamlEdit> again)
        {
            return false;
        }

        YamlDocument? document = again.Count == 0 && Fingerprint.Of(TextFile.Encode(Text)) == from
            ? YamlReader.Read(File, splice.ApplyTo(Text), problems)
            : ByValue(changes, problems);
        return document is not null && Keep(kind, entry.Number, entry.What, document, changes, problems);
    }

    private YamlDocument? ByValue(IReadOnlyList<YamlChange> changes, ProblemList problems)
    {
        YamlDocument? document = Document;
        foreach (YamlChange change in changes)
        {
            if (ValueTree.At(YamlValue.From(document.Root), change.Path) != change.Old)
            {
                problems.Add(Messages.ChangedSince(File, change.Path.ToString()));
                return null;
            }

            document = YamlSplicer.Apply(document, new YamlEdit(change.Path, change.New), problems)?.Document;
            if (document is null)
            {
                return null;
            }
        }

        return document;
    }

    private bool Keep(JournalKind kind, int of, string what, YamlDocument document, IReadOnlyList<YamlChange> changes, ProblemList problems)
    {
        if (document.Text == Text && unsaved.Count == 0)
        {
            return true;
        }

        var entry = new JournalEntry(
            journal.NextNumber,
            kind,
            of,
            clock.GetLocalNow().ToString("yyyy-MM-ddTHH:mm:sszzz"),
            what,
            Fingerprint.Of(TextFile.Encode(Text)),
            Fingerprint.Of(TextFile.Encode(document.Text)),
            Splice.Between(Text, document.Text),
            changes);
        if (journal.Add(entry) is Problem problem)
        {
            return Refuse(problem, problems);
        }

        steps.Take(entry);
        Document = document;
        unsaved.Add(entry);
        Save(problems);
        return true;
    }

    // The journal has it all by now; if the file cannot be written, the next answer or the next start puts it in.
    private void Save(ProblemList problems)
    {
        byte[] content = TextFile.Encode(Text);
        if (AtomicFile.Write(File, content, calls) is Problem problem)
        {
            problems.Add(Messages.KeptInJournal(File, problem));
            return;
        }

        onDisk = Fingerprint.Of(content);
        unsaved.Clear();
        journal.MarkKept();
    }
}
