using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard.Screens;

/// <summary>The walk-round: what is worth looking at next, then every zone in walking order.</summary>
internal static class WalkView
{
    public const string Next = "next";
    public const string Everything = "everything";
    public const string ZoneMark = "zone:";
    public const string MomentMark = "moment:";

    public static ListModel Of(Interviewer interviewer, InterviewState state, Assessment a)
    {
        KnowledgePack pack = a.Situation.Pack;
        List<RowModel> rows = [];
        if (a.Plan.Depth < PlanDepth.WithQuestions)
        {
            rows.Add(new(Next, ["Look next: being worked out ...", ""], Opens: true));
        }
        else if (interviewer.Proposed(state, a) is { } key)
        {
            (string ask, string why) = pack.Observation(key.Id) is { } look ? (look.Question, look.Why) : (pack.Fact(key.Id)?.Ask ?? key.Id, pack.Fact(key.Id)?.Why ?? "");
            rows.Add(new(Next, [$"Look next ({Core.Interview.Words.Of(state.When)}): {Prose.Plain(ask)}", ""], () => [Lines.Of(ask), Lines.Named("Why", why)], Opens: true));
        }
        else
        {
            rows.Add(RowModel.Heading($"Nothing more is worth looking at {Core.Interview.Words.Of(state.When)}."));
        }

        foreach (LookWhen when in Moments(interviewer, state, a).Where(w => w != state.When))
        {
            rows.Add(new(MomentMark + when, [$"Answer what can be looked at {Core.Interview.Words.Of(when)}", ""], Opens: true));
        }

        rows.Add(new(Everything, [state.AskEverything ? "Ask only what can change the plan" : "Ask everything, also what will not change the plan", ""], Opens: true));
        rows.Add(RowModel.Heading("All zones, in walking order"));
        foreach (Zone zone in pack.Zones.OrderBy(z => z.Order))
        {
            IReadOnlyList<Question> questions = interviewer.OfZone(state, zone.Id);
            rows.Add(new(ZoneMark + zone.Id, [Prose.Plain(zone.Title), $"{questions.Count(q => q.Current is not null)} of {questions.Count}"], () => About(zone), Opens: true));
        }

        return new()
        {
            Id = "walk",
            Title = "Walk-round: look, feel, listen; what was not looked at stays unknown",
            Columns = [new("Zone", 0), new("Answered", 12)],
            Rows = rows,
            WhenEmpty = "No zones.",
        };
    }

    private static IEnumerable<LookWhen> Moments(Interviewer interviewer, InterviewState state, Assessment a) =>
        a.Plan.Depth < PlanDepth.WithQuestions ? [] : interviewer.OpenMoments(state, a);

    public static ListModel OfZone(Zone zone, IReadOnlyList<Question> questions) =>
        WithTufts(OverviewView.Of(ZoneMark + zone.Id, Prose.Plain(zone.Title), questions, About(zone)) with { Keys = [] }, zone);

    private static ListModel WithTufts(ListModel list, Zone zone) => zone.TuftPattern is null
        ? list
        : list with { Rows = [.. list.Rows, new(new QuestionKey(QuestionKind.TuftStart, zone.Id).ToString(), ["Read a grid of tufts here", ""], Opens: true)] };

    private static List<TextLine> About(Zone zone) =>
    [
        Lines.Named("Good flow", zone.GoodFlow),
        Lines.Named("Tufts when bad", zone.TuftsWhenBad),
        Lines.Named("Where tufts go", zone.TuftPlacing),
    ];
}
