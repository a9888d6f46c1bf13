using System.Collections.Immutable;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Problems;
using FixPlanner.Wizard.Screens;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard;

/// <summary>What every screen of the wizard works with: the open logbook, what follows from it, where the person is, and what is said.</summary>
internal sealed class Workbench
{
    private const string OfRecord = "record ";

    private IReadOnlyDictionary<string, string> kept;

    public Workbench(OpenLogbook book, KnowledgePack pack, DateOnly today)
    {
        (Book, Pack, Today, Interviewer) = (book, pack, today, new(pack, today));
        Assessor assessor = new(pack);
        (Foresight, Supposing) = (new(assessor, today), new(assessor, today));
        kept = DraftFile.Load(book.Path);
        State = new(Interviewer.Start(book.Logbook) with { Entries = kept.Where(d => d.Key.StartsWith(OfRecord, StringComparison.Ordinal)).ToImmutableDictionary(d => d.Key[OfRecord.Length..], d => d.Value) })
        {
            Drafts = kept.Where(d => !d.Key.StartsWith(OfRecord, StringComparison.Ordinal)).ToDictionary(),
        };
    }

    public OpenLogbook Book { get; }

    public KnowledgePack Pack { get; }

    public DateOnly Today { get; }

    public Interviewer Interviewer { get; }

    public Foresight Foresight { get; }

    /// <summary>Answers what if.</summary>
    public Supposing Supposing { get; }

    /// <summary>Where the person is.</summary>
    public WizardState State { get; set; }

    /// <summary>What the last action did; one line.</summary>
    public TextLine Notice { get; set; } = "";

    public InterviewState Interview
    {
        get => State.Interview;
        set => State = State with { Interview = value };
    }

    /// <summary>What is finished of what follows from the logbook; what is wanted beyond that comes later.</summary>
    public Assessment Known(PlanDepth wanted = PlanDepth.Quick) => Foresight.Of(Book.Logbook, wanted);

    /// <summary>Keeps a change on disk, and says what it changed.</summary>
    /// <param name="edits">The change.</param>
    /// <param name="says">Said instead of what it changed; empty for nothing.</param>
    /// <returns>False when it could not be kept; that is said.</returns>
    public bool Keep(IReadOnlyList<LogbookEdit> edits, string says = "")
    {
        Assessment before = Known();
        (bool kept, IReadOnlyList<Problem> said) = Book.Keep(edits);
        if (!kept)
        {
            Notice = said.Count > 0 ? $"NOT KEPT: {said[0].What}. {said[0].Mend}" : "NOT KEPT.";
            return false;
        }

        Interview = Interview with { Logbook = Book.Logbook };
        if (said.Count > 0)
        {
            // Changed elsewhere, kept in the journal only: more pressing than what moved in the plan.
            Notice = $"Kept. MIND: {said[0].What}. {said[0].Mend}";
            return true;
        }

        IReadOnlyList<string> changes = ChangeSummary.Between(before, Known());
        Notice = says.Length > 0 ? $"Kept. {says}" : changes.Count == 0 ? "Kept." : $"Kept. {Prose.Plain(changes[0])}{(changes.Count > 1 ? $" (+{changes.Count - 1})" : "")}";
        return true;
    }

    /// <summary>Puts what was typed and not confirmed on disk, where it has changed.</summary>
    public void KeepDrafts()
    {
        Dictionary<string, string> now = new(State.Drafts);
        foreach ((string line, string text) in Interview.Entries)
        {
            now[OfRecord + line] = text;
        }

        bool same = now.Count == kept.Count && now.All(d => kept.GetValueOrDefault(d.Key) == d.Value);
        if (!same && DraftFile.Save(Book.Path, now))
        {
            kept = now;
        }
    }

    /// <summary>Takes the last kept step back, or puts it in again.</summary>
    public void Undo(bool again)
    {
        (string? words, IReadOnlyList<Problem> said) = again ? Book.Redo() : Book.Undo();
        string done = again ? "Put in again" : "Taken back";
        Notice = (words, said) switch
        {
            (null, []) => again ? "There is nothing to put in again." : "There is nothing to take back.",
            (null, [var first, ..]) => $"NOT KEPT: {first.What}. {first.Mend}",
            (_, [var first, ..]) => $"{done}. MIND: {first.What}. {first.Mend}",
            _ => $"{done}: {Prose.Plain(words ?? "")}",
        };
        Interview = Interview with { Logbook = Book.Logbook };
    }
}
