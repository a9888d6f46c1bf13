using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Planning;

/// <summary>The lines of the plan: how each chosen fix stands, in which stage, in which order, and why.</summary>
internal sealed class PlanLines(PlanModel model, Choice choice, Beliefs beliefs, IReadOnlyList<GateStatus> gates, PlanDrawing? drawing, bool withEvidence, bool withPhysics)
{
    private const double CheapEur = 25;
    private const double LookFirstBelow = 0.2;
    private const double TryFirstBelow = 0.5;

    /// <summary>A trial pays when it is worth this share of the plan's points.</summary>
    private const double TrialPays = 0.005;

    private readonly KnowledgePack pack = model.Pack;

    /// <summary>The lines in the order of doing.</summary>
    public IReadOnlyList<PlanItem> Items()
    {
        IEnumerable<Line> rest = choice.Chosen.Select(i => (Index: i, Shown: Shown(i)))
            .Select(x => new Line(x.Index, x.Shown, StageOf(model.Fixes[x.Index], x.Shown), choice.Marginal(x.Index)))
            .OrderBy(x => x.Stage).ThenBy(x => x.Shown == ShownAs.LookFirst).ThenByDescending(x => x.Points).ThenBy(x => x.Index);
        PlanItem[] items =
        [
            .. choice.Safety.Select(w => Item(model.Number(w.Fix.Id), Stage.Safety, ShownAs.Do, null, w.Gate)),
            .. InOrder([.. rest]).Select(x => Item(x.Index, x.Stage, x.Shown, x.Points, null)),
        ];
        return [.. items.Select((item, i) => item with { Rank = i + 1 })];
    }

    private PlanItem Item(int number, Stage stage, ShownAs shown, double? points, GateStatus? forGate)
    {
        Fix fix = model.Fixes[number];
        FixHold hold = FixHold.Of(fix, gates, pack);
        double? share = drawing is null ? null : forGate is null ? drawing.Robustness.Share(number) : 1;
        return new(0, stage, fix, shown, drawing is null ? [] : PlanSums.OfLine(model, choice, drawing.Of(number), fix, withPhysics), share, hold.HeldBy, hold.WithTheWork, hold.BeforeFastUse, Reasons(fix), forGate)
        {
            InBestSetShareError = drawing is null || forGate is not null ? null : drawing.Robustness.ShareError(number),
            Points = points,
            Trial = drawing?.Trial(number),
        };
    }

    private PlanReason[] Reasons(Fix fix) =>
    [
        .. fix.ActsOn
            .Select(a => (Cause: a.Key, Action: a.Value, P: beliefs.Probability(a.Key)))
            .OrderByDescending(x => x.P).ThenBy(x => x.Cause, StringComparer.Ordinal)
            .Select(x => withEvidence && beliefs.Reasons(x.Cause) is [var top, ..]
                ? new PlanReason(x.Cause, x.P, x.Action, top.Observation, top.Answer, top.LogOdds)
                : new PlanReason(x.Cause, x.P, x.Action, null, null, 0)),
    ];

    /// <summary>Beliefs decide below one half; above, a trial comes first only where it is worth its money and time.</summary>
    private ShownAs Shown(int number)
    {
        Fix fix = model.Fixes[number];
        double most = fix.ActsOn.Keys.Select(beliefs.Probability).DefaultIfEmpty(0).Max();
        bool pays = drawing?.Trial(number) is { } trial && trial.Points > TrialPays * choice.Answer.Points;
        return choice.Situation.Logbook.Limits.Must.Contains(fix.Id) ? ShownAs.Do
            : most < LookFirstBelow || (most < TryFirstBelow && fix.Trial is null) ? ShownAs.LookFirst
            : fix.Trial is not null && (most < TryFirstBelow || pays) ? ShownAs.TrialFirst
            : ShownAs.Do;
    }

    private static Stage StageOf(Fix fix, ShownAs shown) =>
        shown != ShownAs.Do ? Stage.Trial : fix.Cost.Likely <= CheapEur ? Stage.Cheap : Stage.Rest;

    // What must come first stands first, in whatever stage.
    private List<Line> InOrder(List<Line> sorted)
    {
        Dictionary<int, Line> open = sorted.ToDictionary(x => x.Index);
        List<Line> done = [];
        void Take(int number)
        {
            if (open.Remove(number, out Line? line))
            {
                Fix fix = model.Fixes[number];
                foreach (string first in Candidates.Needs(fix, choice.Situation).Concat(fix.Conflicts.Where(c => c.Kind == ConflictKind.Order && Earlier(c, fix)).Select(c => c.Fix)))
                {
                    Take(model.Number(first));
                }

                done.Add(line);
            }
        }

        foreach (Line line in sorted)
        {
            Take(line.Index);
        }

        return done;
    }

    // 'order' says only that one comes before the other; the cheaper that does not need the other goes first.
    private bool Earlier(Conflict conflict, Fix fix) => pack.Fix(conflict.Fix) is { } other && other.Requires.All(r => r.Fix != fix.Id) && other.Cost.Likely < fix.Cost.Likely;

    private sealed record Line(int Index, ShownAs Shown, Stage Stage, double Points);
}
