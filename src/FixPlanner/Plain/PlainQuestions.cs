using FixPlanner.Commands;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Proofs;
using FixPlanner.Report.Documents;
using FixPlanner.Report.TestDays;

namespace FixPlanner.Plain;

/// <summary>The questions of a part of the job, one after another, as long as the interview has more.</summary>
internal sealed class PlainQuestions(PlainBench bench)
{
    private readonly Interviewer interviewer = bench.Interviewer;

    /// <summary>Asks until the part is over.</summary>
    public (InterviewState State, Ending Ending) Ask(InterviewState state, Section section)
    {
        while (true)
        {
            if (section == Section.WalkRound && state.Place == new Place(section))
            {
                (state, Ending? moment) = NextMoment(state);
                if (moment is { } over)
                {
                    return (state, over);
                }
            }

            if (state.Place.Section != section || interviewer.Current(state) is not { } question)
            {
                return (state, Ending.Done);
            }

            Show(question);
            (state, Ending? ending) = OneAnswer(state, question);
            if (ending is { } end)
            {
                return (state, end);
            }
        }
    }

    // The walk goes by when a thing can be looked at: all that is worth it while parked, then on a drive, and so on.
    private (InterviewState State, Ending? Ending) NextMoment(InterviewState state)
    {
        Assessment assessment = bench.Assess(PlanDepth.WithQuestions);
        if (interviewer.Proposed(state, assessment) is { } key)
        {
            Say($"-- {Words.Of(state.When)} --");
            return (Interviewer.Move(state, new(Section.WalkRound, key)), null);
        }

        IReadOnlyList<LookWhen> open = [.. interviewer.OpenMoments(state, assessment).Where(w => w > state.When)];
        if (open.Count == 0)
        {
            Say("More answers will not change the plan.");
            return (state, Ending.Done);
        }

        Say($"Nothing more is worth looking at {Words.Of(state.When)}. Next: {Words.Of(open[0])}.");
        Say("Answer those now?  1 yes   2 no, on to the plan");
        string? line = bench.Lines.Read();
        return line is null ? (state, Ending.InputEnded)
            : line is "1" or "yes" ? (state with { When = open[0] }, null)
            : (state, Ending.Done);
    }

    private void Show(Question q)
    {
        Say("");
        Say(q.Heading);
        Say(Prose.Plain(q.Ask));
        if (q.Standstill is { } standstill)
        {
            Say($"  STOP: {Prose.Plain(standstill)}");
        }

        foreach (string caution in q.Cautions)
        {
            Say($"  {Prose.Plain(caution)}");
        }

        for (int i = 0; i < q.Choices.Count; i++)
        {
            Say($"  {i + 1} {Prose.Plain(q.Choices[i].Text)}");
        }

        if (q.Choices.Count == 0)
        {
            Say($"  type a value, for example: {q.Example}");
        }

        if (q.Key.Kind == QuestionKind.Observation)
        {
            Say("  d photo or film, place, speed, note, how sure");
        }

        if (q.Current is { } current)
        {
            Say($"  stands: {Prose.Plain(current)}");
        }
    }

    private (InterviewState State, Ending? Ending) OneAnswer(InterviewState state, Question question)
    {
        while (true)
        {
            switch (bench.Lines.Read())
            {
                case null:
                    return (state, Ending.InputEnded);
                case "q":
                    return (state, Ending.Quit);
                case "<":
                    InterviewState back = Interviewer.Back(state);
                    return (back.Place.Section == state.Place.Section ? back : state, null);
                case ">":
                    return (state with { Place = new(state.Place.Section + 1) }, null);
                case "u":
                    return (bench.Undo(state), null);
                case "d" when question.Key.Kind == QuestionKind.Observation:
                    return (interviewer.Do(state, new(SubjectKind.Look, question.Key.Id), "details").State, null);
                case "t":
                    bench.Lines.SayText(TextWriting.Write(TestDayDocument.Of(bench.Day())));
                    break;
                case "w":
                    Say(TestDayCommand.WriteBeside(bench.Book.Path, bench.Day()));
                    break;
                case "?":
                    Explain(question);
                    break;
                case var line when PlainGiven.Of(line, question) is { } given:
                    if (Take(state, question, given) is { } taken)
                    {
                        return taken;
                    }

                    break;
                default:
                    Say(question.Choices.Count > 0 ? $"Not taken: type a number from 1 to {question.Choices.Count}, or one of < ? - ~ + > t w u q" : $"Not taken: type a value, for example: {question.Example}");
                    break;
            }
        }
    }

    private void Explain(Question question)
    {
        Say($"Why: {Prose.Plain(question.Why)}");
        Say($"How: {Prose.Plain(question.How)}");
        Say(question.Trap is { } trap ? $"What misleads: {Prose.Plain(trap)}" : "What misleads: nothing known.");
    }

    // Null: it was not taken, and is asked again.
    private (InterviewState State, Ending? Ending)? Take(InterviewState state, Question question, Given given)
    {
        (Given answer, Refusal? unread) = ProofFiles.Read(question.Key, given, bench.Book.Path, bench.Pack, bench.Book.Logbook, bench.Today);
        Step step = unread is not null ? new(state, [], unread) : interviewer.Answer(state, answer);
        if (step.Refusal is { } refusal)
        {
            Say($"Not taken: {refusal.What}. {refusal.Mend}");
            return null;
        }

        // The number may have been meant as a figure: what it was taken for is said, and u takes it back.
        if (question.NumberOnlyChooses && answer is GivenChoice chosen)
        {
            Say($"taken as: {Prose.Plain(question.Choices.First(c => c.Id == chosen.Id).Text)}");
        }

        if (ProofFiles.Said(answer) is { Length: > 0 } verdict)
        {
            Say(verdict.TrimEnd());
        }

        return Keep(step);
    }

    private (InterviewState State, Ending? Ending) Keep(Step step)
    {
        if (step.Edits.Count == 0)
        {
            if (step.Says.Length > 0)
            {
                Say(step.Says);
            }

            return (OnWalk(step.State), null);
        }

        Assessment before = bench.Assess(PlanDepth.Quick);
        if (!bench.Keep(step.Edits))
        {
            return (step.State, Ending.CannotKeep);
        }

        Say(step.Says.Length > 0 ? $"kept: {step.Says}" : "kept");
        foreach (string change in ChangeSummary.Between(before, bench.Assess(PlanDepth.Quick)))
        {
            Say($"  {Prose.Plain(change)}");
        }

        return (OnWalk(step.State with { Logbook = bench.Book.Logbook }), null);
    }

    private InterviewState OnWalk(InterviewState state) =>
        state.Place == new Place(Section.WalkRound) ? interviewer.NextOnWalk(state, bench.Assess(PlanDepth.WithQuestions)) : state;

    private void Say(string line) => bench.Say(line);
}
