using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;
using FixPlanner.Files.Schemas;
using FixPlanner.Files.Writing;

namespace FixPlanner.Files.Logbooks;

/// <summary>A logbook that is open: its values, and its file held under journal and lock. Every kept answer is on disk before this returns.</summary>
public sealed class OpenLogbook : IDisposable
{
    private readonly LogbookFile file;
    private readonly KnowledgePack pack;
    private bool hasKept;

    private OpenLogbook(LogbookFile file, KnowledgePack pack, Logbook logbook) => (this.file, this.pack, Logbook) = (file, pack, logbook);

    /// <summary>The file as it was named.</summary>
    public string Path => file.File;

    /// <summary>The logbook as it stands on disk.</summary>
    public Logbook Logbook { get; private set; }

    /// <summary>What was recovered when it was opened, in a sentence; empty for nothing.</summary>
    public string Recovered => file.Recovery.Sentence;

    /// <summary>Answers about which the owner must choose before anything is written; empty when there is no choice.</summary>
    public IReadOnlyList<string> Waiting => file.Recovery.NeedsChoice ? file.Recovery.Waiting : [];

    /// <summary>In words, what would be taken back next; null when there is nothing.</summary>
    public string? NextUndo => file.NextUndo;

    /// <summary>Opens a logbook; a file that is not there yet is made with the first answer.</summary>
    /// <param name="path">The file.</param>
    /// <param name="pack">The pack.</param>
    /// <param name="problems">What is wrong, and notes.</param>
    /// <returns>The open logbook; null when it cannot be worked with: it is then left as it is.</returns>
    public static OpenLogbook? Open(string path, KnowledgePack pack, out IReadOnlyList<Problem> problems) => Open(path, pack, FileCalls.Real, out problems);

    /// <summary>The same on a disk whose calls are given.</summary>
    internal static OpenLogbook? Open(string path, KnowledgePack pack, IFileCalls calls, out IReadOnlyList<Problem> problems)
    {
        ProblemList found = new();
        string start = $"{LogbookSchema.FirstLine}\nlogbook: 1\npack: {{id: {pack.Id}, version: {pack.Version}}}\n";
        LogbookFile? file = LogbookFile.Open(path, start, TimeProvider.System, calls, LockHolder.Me, holder => holder.Runs(), found);
        if (file is null)
        {
            problems = found.InOrder();
            return null;
        }

        LogbookReading reading = LogbookReader.Read(file.Document, pack);
        found.AddRange(reading.Problems);
        problems = found.InOrder();
        if (reading.IsSound)
        {
            return new(file, pack, reading.Logbook!);
        }

        file.Dispose();
        return null;
    }

    /// <summary>Keeps edits as one step.</summary>
    /// <param name="edits">The edits, in order.</param>
    /// <returns>Whether they are on disk, and everything to be said: why not, or what was found while writing.</returns>
    public (bool Kept, IReadOnlyList<Problem> Said) Keep(IReadOnlyList<LogbookEdit> edits)
    {
        List<YamlEdit> text = [];
        Logbook after = Logbook;
        foreach (LogbookEdit edit in edits)
        {
            text.AddRange(EditText.Of(edit, after));
            after = after.With(edit);
        }

        ProblemList problems = new();
        bool kept = file.Apply(string.Join("; ", edits.Select(e => e.InWords).Where(w => w.Length > 0)), text, problems);
        if (kept)
        {
            problems.AddRange(Reload());
            hasKept = true;
        }

        return (kept, problems.InOrder());
    }

    /// <summary>Takes the last step back.</summary>
    /// <returns>What was taken back, in words, or null when nothing was; and everything to be said: why not, or what was found while writing.</returns>
    public (string? Words, IReadOnlyList<Problem> Said) Undo() => Step(file.NextUndo, file.Undo);

    /// <summary>Puts the last step that was taken back in again.</summary>
    /// <returns>What was put in, in words, or null when nothing was; and everything to be said.</returns>
    public (string? Words, IReadOnlyList<Problem> Said) Redo() => Step(file.NextRedo, file.Redo);

    /// <summary>Settles the choice about waiting answers.</summary>
    /// <param name="putIn">True puts them into the file as it is now; false leaves the file as it is.</param>
    /// <returns>Why it could not be done; empty when it was.</returns>
    public IReadOnlyList<Problem> Settle(bool putIn)
    {
        ProblemList problems = new();
        return (putIn ? file.TakeWaiting(problems) : file.LeaveWaiting(problems)) ? Reload() : problems.InOrder();
    }

    /// <summary>Lets go of the lock. Where answers were kept, the schema for editors is brought up to date; no answer waits for that.</summary>
    public void Dispose()
    {
        if (hasKept)
        {
            LogbookSchemaFile.Refresh(file.File, file.Text, pack);
        }

        file.Dispose();
    }

    private (string? Words, IReadOnlyList<Problem> Said) Step(string? words, Func<ProblemList, bool> step)
    {
        ProblemList problems = new();
        if (words is null || !step(problems))
        {
            return (null, words is null ? [] : problems.InOrder());
        }

        hasKept = true;
        problems.AddRange(Reload());
        return (words, problems.InOrder());
    }

    // The file is the truth: what an editor changed meanwhile comes in here as well. A broken edit elsewhere is said, and the last sound values stay.
    private IReadOnlyList<Problem> Reload()
    {
        LogbookReading reading = LogbookReader.Read(file.Document, pack);
        if (!reading.IsSound)
        {
            return reading.Problems;
        }

        Logbook = reading.Logbook!;
        return [];
    }
}
