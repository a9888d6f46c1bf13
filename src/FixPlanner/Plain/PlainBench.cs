using FixPlanner.Commands;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.TestDay;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Problems;

namespace FixPlanner.Plain;

/// <summary>What every part of the plain face works with: the open logbook and what follows from it, and the lines in and out.</summary>
internal sealed class PlainBench(PlainLines lines, OpenLogbook book, KnowledgePack pack, DateOnly today)
{
    private Assessment? known;
    private PlanDepth knownDepth;

    public PlainLines Lines { get; } = lines;

    public OpenLogbook Book { get; } = book;

    public KnowledgePack Pack { get; } = pack;

    public DateOnly Today { get; } = today;

    public Interviewer Interviewer { get; } = new(pack, today);

    public Assessor Assessor { get; } = new(pack);

    public void Say(string line) => Lines.Say(line);

    /// <summary>What follows from the logbook as it stands.</summary>
    public Assessment Assess(PlanDepth depth)
    {
        if (known is null || !ReferenceEquals(known.Situation.Logbook, Book.Logbook) || knownDepth < depth)
        {
            (known, knownDepth) = (Assessor.Assess(Book.Logbook, Today, depth), depth);
        }

        return known;
    }

    /// <summary>The sheet of the day.</summary>
    public TestDaySheet Day() => Assess(PlanDepth.Full).Sheet(new(DayWeather.Of(Book.Logbook)));

    /// <summary>Keeps a change on disk.</summary>
    /// <returns>False when it could not be kept; that was said.</returns>
    public bool Keep(IReadOnlyList<LogbookEdit> edits)
    {
        (bool kept, IReadOnlyList<Problem> said) = Book.Keep(edits);
        Desk.Say(said);
        return kept;
    }

    /// <summary>Takes the last kept step back.</summary>
    public InterviewState Undo(InterviewState state)
    {
        (string? words, IReadOnlyList<Problem> said) = Book.Undo();
        Say(words is not null ? $"Taken back: {Prose.Plain(words)}" : said.Count == 0 ? "There is nothing to take back." : "Not taken back.");
        foreach (Problem problem in said)
        {
            Say($"  {problem.What}. {problem.Mend}");
        }

        return state with { Logbook = Book.Logbook };
    }
}
