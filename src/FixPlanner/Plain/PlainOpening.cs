using FixPlanner.Core.Interview;
using FixPlanner.Core.Planning;

namespace FixPlanner.Plain;

/// <summary>The gates, then the plan, as numbered lines: a number opens one and asks what about it; Enter goes on.</summary>
internal sealed class PlainOpening(PlainBench bench, PlainQuestions questions)
{
    /// <summary>Shows the lines until the person goes on. Where the input ends the plan is still given.</summary>
    public (InterviewState State, Ending? Ending) Run(InterviewState state)
    {
        Section section = state.Place.Section;
        bool all = false;
        string sought = "";
        while (true)
        {
            IReadOnlyList<PlainRow> rows = section == Section.Gates ? PlainLists.Gates(bench.Assess(PlanDepth.Quick), all)
                : sought.Length > 0 ? PlainLists.Sought(bench.Interviewer.Find(state, sought), bench.Pack) : PlainLists.Plan(bench.Assess(PlanDepth.Quick));
            for (int i = 0; i < rows.Count; i++)
            {
                bench.Say($"  {i + 1} {rows[i].Line}");
            }

            bench.Say(section == Section.Gates
                ? "Open one: its number. Answer what is open of it: a and its number. Enter: on to the plan.   all = all gates   u undo   q quit"
                : "Open one: its number. Any fix or zone: a part of its name. Enter: the whole plan.   u undo   q quit");
            switch (bench.Lines.Read())
            {
                case null or "" or ">":
                    return (state, null);
                case "q":
                    return (state, Ending.Quit);
                case "u":
                    state = bench.Undo(state);
                    break;
                case "<":
                    sought = "";
                    break;
                case "all" when section == Section.Gates:
                    all = true;
                    break;
                case var line when int.TryParse(line, out int n) && n >= 1 && n <= rows.Count:
                    (state, Ending? ending) = Open(state, rows[n - 1]);
                    if (ending is { } end)
                    {
                        return (state, end);
                    }

                    break;
                case ['a', .. var number] when section == Section.Gates && int.TryParse(number, out int n) && n >= 1 && n <= rows.Count:
                    (state, Ending? asked) = Answer(state, rows[n - 1]);
                    if (asked is { } over)
                    {
                        return (state, over);
                    }

                    break;
                case var line when section == Section.Plan && !int.TryParse(line, out _):
                    sought = line;
                    break;
                default:
                    bench.Say($"Not taken: type a number from 1 to {rows.Count}, or Enter");
                    break;
            }
        }
    }

    private (InterviewState State, Ending? Ending) Answer(InterviewState state, PlainRow row)
    {
        Step step = bench.Interviewer.Do(state, row.Subject, "ask");
        if (step.Says.Length > 0)
        {
            bench.Say(step.Says);
        }

        return Ask(step.State, state.Place.Section);
    }

    private (InterviewState State, Ending? Ending) Open(InterviewState state, PlainRow row)
    {
        bench.Say("");
        foreach (string line in row.Detail())
        {
            bench.Say($"  {line}");
        }

        Section section = state.Place.Section;
        InterviewState at = Interviewer.Move(state, new(section, row.Subject.Key));
        return Ask(at, section);
    }

    private (InterviewState State, Ending? Ending) Ask(InterviewState at, Section section)
    {
        (at, Ending ending) = questions.Ask(at, section);
        return (at with { Place = new(section) }, ending == Ending.Done ? null : ending);
    }
}
