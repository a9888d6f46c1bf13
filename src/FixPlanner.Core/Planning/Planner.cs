using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Effects;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Planning;

/// <summary>How much of a plan is worked out.</summary>
public enum PlanDepth
{
    /// <summary>Gates, best set and stages: at once after an answer. Ranges are those of the pack's mean, without draws.</summary>
    Quick,

    /// <summary>Also what each open question is worth.</summary>
    WithQuestions,

    /// <summary>Also all draws: ranges, shares, regret, overrun, frontier.</summary>
    Full,
}

/// <summary>Makes the plan: safety first, then the exact best set within the limits, in stages.</summary>
public sealed class Planner
{
    private const double CheapEur = 25;
    private const long MostNodes = 400_000;
    private readonly KnowledgePack pack;
    private readonly EffectModel model;
    private readonly Fix[] fixes;
    private readonly int[] beliefPlace;
    private readonly (int One, int Other)[] excludes;

    /// <summary>Prepares planning with a pack. Made once per pack.</summary>
    /// <param name="pack">The pack.</param>
    public Planner(KnowledgePack pack)
    {
        this.pack = pack;
        model = EffectModel.Compile(pack);
        fixes = [.. model.FixIds.Select(id => pack.Fix(id)!)];
        Dictionary<string, int> places = pack.Mechanisms.Index().ToDictionary(m => m.Item.Id, m => m.Index);
        beliefPlace = [.. model.CauseIds.Select(id => places[id])];
        excludes = [.. fixes.SelectMany((f, i) => f.Conflicts.Where(c => c.Kind == ConflictKind.Excludes).Select(c => (One: i, Other: model.FixNumber(pack.Fix(c.Fix)?.Id ?? c.Fix))))
            .Where(x => x.Other >= 0)];
    }

    /// <summary>Makes the plan.</summary>
    /// <param name="s">What is known.</param>
    /// <param name="beliefs">What is believed.</param>
    /// <param name="depth">How much is worked out.</param>
    /// <param name="stop">Asked now and then; the best found by then is returned, with what is proven.</param>
    /// <returns>The plan, and for each open observation what its answer is worth in points.</returns>
    public (Plan Plan, IReadOnlyDictionary<string, double> Gains) Make(Situation s, Beliefs beliefs, PlanDepth depth, CancellationToken stop = default)
    {
        Choice choice = Choose(s, beliefs, stop);
        IReadOnlyDictionary<string, double> gains = depth >= PlanDepth.WithQuestions
            ? new QuestionWorth(choice.Problem, choice.Solver, choice.Answer, (probabilities, refill) => Fill(refill, choice, probabilities)).Of(s, beliefs, stop)
            : new Dictionary<string, double>();
        PlanRanges? ranges = depth >= PlanDepth.Full ? new(model, pack, beliefs, choice.Car) : null;
        return (Assemble(s, beliefs, choice, ranges, gains, stop), gains);
    }

    private Choice Choose(Situation s, Beliefs beliefs, CancellationToken stop)
    {
        IReadOnlyList<GateStatus> gates = GateCheck.All(s, PlannedUse.Of(s));
        IReadOnlyList<(Fix Fix, GateStatus Gate)> safety = SafetyWork.Of(s, gates);
        CarEstimate car = CarEstimate.Of(s);
        bool[] fitted = [.. fixes.Select(f => s.OnTheCar.Contains(f.Id) || safety.Any(w => w.Fix.Id == f.Id))];
        LeftOut?[] out_ = [.. fixes.Select((f, i) => fitted[i] ? null : Candidates.RuledOut(f, s, gates))];
        (int Item, int Needs)[] requires = [.. fixes.SelectMany((f, i) => Candidates.Needs(f, s).Select(n => (Item: i, Needs: model.FixNumber(pack.Fix(n)?.Id ?? n)))).Where(x => x.Needs >= 0)];
        CarProblem problem = new(model.Layout, requires, excludes, fitted);
        double spent = s.Logbook.Work.Sum(w => w.SpentEur ?? 0);
        double safetyEur = safety.Sum(w => w.Fix.Cost.Likely);
        double safetyHours = safety.Where(w => w.Fix.Skill != Skill.Professional).Sum(w => w.Fix.Hours.Likely);
        double hoursSpent = s.Logbook.Work.Sum(w => w.Hours ?? 0);
        SetProblem p = problem.Problem;
        p.MoneyCents = Whole(s.Logbook.Limits.BudgetEur is { } budget ? Math.Max(0, budget - spent - safetyEur) : null, 100);
        p.TimeMinutes = Whole(s.Logbook.Limits.Hours is { } hours ? Math.Max(0, hours - hoursSpent - safetyHours) : null, 60);
        for (int i = 0; i < fixes.Length; i++)
        {
            p.Cents[i] = (int)Math.Round(fixes[i].Cost.Likely * 100);
            p.Minutes[i] = fixes[i].Skill == Skill.Professional ? 0 : (int)Math.Round(fixes[i].Hours.Likely * 60);
            p.Never[i] = fitted[i] || out_[i] is not null;
            p.Must[i] = !p.Never[i] && s.Logbook.Limits.Must.Contains(fixes[i].Id);
        }

        Worthwhile worth = Worthwhile.Of(pack.Scales, Weights(s), DragArea.FromSquareMetres(car.DragAreaSquareMetres.Likely));
        Choice choice = new(gates, safety, car, fitted, out_, problem, new(p.Structure), worth, spent, safetyEur, safetyHours);
        Fill(problem, choice, beliefs.Probabilities);
        choice.Answer = choice.Solver.Solve(p, new(MostNodes, stop));
        if (!choice.Answer.Feasible)
        {
            // What the owner insists on does not fit: the rest of the plan is made without it, and the plan says so.
            Array.Clear(p.Must);
            choice.Broken = choice.Answer.Broken;
            choice.Answer = choice.Solver.Solve(p, new(MostNodes, stop));
        }

        return choice;
    }

    private void Fill(CarProblem problem, Choice choice, IReadOnlyList<double> probabilities)
    {
        Span<double> belief = stackalloc double[beliefPlace.Length];
        for (int c = 0; c < belief.Length; c++)
        {
            belief[c] = probabilities[beliefPlace[c]];
        }

        problem.Fill(model.Nominal, belief, choice.Worth);
    }

    private Plan Assemble(Situation s, Beliefs beliefs, Choice choice, PlanRanges? ranges, IReadOnlyDictionary<string, double> gains, CancellationToken stop)
    {
        int[] chosen = [.. Enumerable.Range(0, fixes.Length).Where(i => choice.Answer.Chosen[i])];
        int[] safety = [.. choice.Safety.Select(w => model.FixNumber(w.Fix.Id))];
        HashSet<string> planned = [.. chosen.Select(i => fixes[i].Id), .. choice.Safety.Select(w => w.Fix.Id)];
        IReadOnlyList<GateStatus> gates = GateCheck.All(s, PlannedUse.Of(s, planned));
        Robustness? robust = ranges is null ? null : Robustness.Of(choice.Problem, choice.Solver, model, beliefs, beliefPlace, choice.Worth, fixes, choice.Answer.Chosen, stop);
        List<PlanItem> items = [];
        foreach ((Fix fix, GateStatus gate) in choice.Safety)
        {
            items.Add(Item(s, beliefs, gates, fix, Stage.Safety, ShownAs.Do, ranges, 1, gate));
        }

        IEnumerable<Line> rest = chosen.Select(i => (Index: i, Shown: Shown(s, beliefs, fixes[i])))
            .Select(x => new Line(x.Index, x.Shown, StageOf(fixes[x.Index], x.Shown), Marginal(choice, x.Index)))
            .OrderBy(x => x.Stage).ThenByDescending(x => x.Points).ThenBy(x => fixes[x.Index].Id, StringComparer.Ordinal);
        foreach (Line x in InOrder(s, [.. rest]))
        {
            items.Add(Item(s, beliefs, gates, fixes[x.Index], x.Stage, x.Shown, ranges, robust?.Shares[x.Index], null));
        }

        items = [.. items.Select((item, i) => item with { Rank = i + 1 })];
        LeftOut[] left = [.. LeftOutOf(choice, chosen)];
        PlanTotals totals = Totals(s, choice, [.. safety, .. chosen], ranges);
        IReadOnlyList<FrontierStep> frontier = ranges is null ? [] : BudgetFrontier.Of(choice.Problem, choice.Solver, fixes, choice.SafetyEur + choice.Spent, stop);
        NextQuestion? next = NextLook.Of(s, gates, gains, totals.Points);
        return new(gates, items, left, totals, frontier, robust?.Regret, 100 * Math.Min(10, choice.Answer.LargestGap), next, Headlines.Of(gates, items, next, choice.Broken));
    }

    private PlanItem Item(Situation s, Beliefs beliefs, IReadOnlyList<GateStatus> gates, Fix fix, Stage stage, ShownAs shown, PlanRanges? ranges, double? share, GateStatus? forGate)
    {
        FixHold hold = FixHold.Of(fix, gates, pack);
        int[] alone = [model.FixNumber(fix.Id)];
        IReadOnlyDictionary<EffectOn, Spread>? believed = ranges?.AsBelieved(alone);
        IReadOnlyDictionary<EffectOn, Spread>? ifCause = ranges?.IfCause(alone);
        PlannedEffect[] effects = believed is null ? [] : [.. believed.OrderBy(e => e.Key).Select(e => new PlannedEffect(EffectNames.Key(e.Key), EffectNames.Title(e.Key), EffectNames.Unit(e.Key), e.Value, ifCause![e.Key]))];
        return new(0, stage, fix, shown, effects, share, hold.HeldBy, hold.WithTheWork, hold.BeforeFastUse, Reasons(beliefs, fix), forGate);
    }

    private static PlanReason[] Reasons(Beliefs beliefs, Fix fix) =>
    [
        .. fix.ActsOn
            .Select(a => (Cause: a.Key, Action: a.Value, P: beliefs.Probability(a.Key)))
            .OrderByDescending(x => x.P).ThenBy(x => x.Cause, StringComparer.Ordinal)
            .Select(x => beliefs.Reasons(x.Cause) is [var top, ..]
                ? new PlanReason(x.Cause, x.P, x.Action, top.Observation, top.Answer, top.LogOdds)
                : new PlanReason(x.Cause, x.P, x.Action, null, null, 0)),
    ];

    private static ShownAs Shown(Situation s, Beliefs beliefs, Fix fix)
    {
        double most = fix.ActsOn.Keys.Select(beliefs.Probability).DefaultIfEmpty(0).Max();
        return s.Logbook.Limits.Must.Contains(fix.Id) ? ShownAs.Do
            : most < 0.2 ? ShownAs.LookFirst
            : most < 0.5 && fix.Trial is not null ? ShownAs.TrialFirst
            : ShownAs.Do;
    }

    private static Stage StageOf(Fix fix, ShownAs shown) =>
        shown != ShownAs.Do ? Stage.Trial : fix.Cost.Likely <= CheapEur ? Stage.Cheap : Stage.Rest;

    private static double Marginal(Choice choice, int item)
    {
        bool[] without = (bool[])choice.Answer.Chosen.Clone();
        without[item] = false;
        return choice.Answer.Points - choice.Problem.Problem.Points(without);
    }

    // What must come first stands first, in whatever stage.
    private List<Line> InOrder(Situation s, List<Line> sorted)
    {
        Dictionary<string, Line> open = sorted.ToDictionary(x => fixes[x.Index].Id);
        List<Line> done = [];
        void Take(string id)
        {
            if (open.Remove(id, out Line? line))
            {
                foreach (string need in Candidates.Needs(pack.Fix(id)!, s).Concat(pack.Fix(id)!.Conflicts.Where(c => c.Kind == ConflictKind.Order && Earlier(c, id)).Select(c => c.Fix)))
                {
                    Take(pack.Fix(need)?.Id ?? need);
                }

                done.Add(line);
            }
        }

        foreach (Line line in sorted)
        {
            Take(fixes[line.Index].Id);
        }

        return done;
    }

    // 'order' says only that one comes before the other; the pack names the one that heals first on both sides.
    private bool Earlier(Conflict conflict, string id) => pack.Fix(conflict.Fix) is { } other && other.Requires.All(r => r.Fix != id) && other.Cost.Likely < pack.Fix(id)!.Cost.Likely;

    private IEnumerable<LeftOut> LeftOutOf(Choice choice, int[] chosen)
    {
        SetProblem p = choice.Problem.Problem;
        for (int i = 0; i < fixes.Length; i++)
        {
            if (choice.Out[i] is { } out_)
            {
                yield return out_;
            }
            else if (choice.Fitted[i] && choice.Safety.All(w => w.Fix.Id != fixes[i].Id))
            {
                yield return new(fixes[i], LeftOutWhy.OnTheCar, "it is on the car already");
            }
            else if (!choice.Answer.Chosen[i] && !choice.Fitted[i])
            {
                yield return WhyNot(choice, p, chosen, i);
            }
        }
    }

    private LeftOut WhyNot(Choice choice, SetProblem p, int[] chosen, int i)
    {
        Fix fix = fixes[i];
        bool[] with = (bool[])choice.Answer.Chosen.Clone();
        with[i] = true;
        double gain = p.Points(with) - choice.Answer.Points;
        bool[] alone = new bool[fixes.Length];
        alone[i] = true;
        if (p.Points(alone) - p.Points(new bool[fixes.Length]) <= 1e-9)
        {
            return new(fix, LeftOutWhy.NoGain, "nothing that matters to you gains by it, as far as is known now");
        }

        if (p.Cents[i] > p.MoneyCents)
        {
            return new(fix, LeftOutWhy.TooDear, $"it alone costs {fix.Cost.Likely:0} EUR, and {p.MoneyCents / 100.0:0} EUR are left");
        }

        if (p.Minutes[i] > p.TimeMinutes)
        {
            return new(fix, LeftOutWhy.TooDear, $"it alone takes {fix.Hours.Likely:0.#} h, and {p.TimeMinutes / 60.0:0.#} h are left");
        }

        if (chosen.FirstOrDefault(c => p.Structure.Excludes[i].Contains(c), -1) is var rival and >= 0)
        {
            return new(fix, LeftOutWhy.Conflict, $"not together with: {fixes[rival].Title}");
        }

        if (p.Structure.Needs[i].FirstOrDefault(n => !choice.Answer.Chosen[n], -1) is var need and >= 0)
        {
            return new(fix, LeftOutWhy.Requires, $"it needs first: {fixes[need].Title}");
        }

        return gain <= 1e-9
            ? new(fix, LeftOutWhy.Dominated, "what is in the plan already does this")
            : new(fix, LeftOutWhy.BetterElsewhere, "the money and hours do more elsewhere");
    }

    private PlanTotals Totals(Situation s, Choice choice, int[] all, PlanRanges? ranges)
    {
        Triangle[] costs = [.. all.Select(i => fixes[i].Cost)];
        Triangle[] hours = [.. all.Where(i => fixes[i].Skill != Skill.Professional).Select(i => fixes[i].Hours)];
        (Spread cost, double[] sums) = PlanRanges.Sum(costs, 11);
        Spread time = PlanRanges.Sum(hours, 12).Range;
        double? budget = s.Logbook.Limits.BudgetEur;
        double? overrun = ranges is null ? null : budget is { } limit ? sums.Count(x => x + choice.Spent > limit) / (double)sums.Length : 0;
        IReadOnlyDictionary<EffectOn, Spread> believed = ranges?.AsBelieved(all) ?? new Dictionary<EffectOn, Spread>();
        IReadOnlyDictionary<EffectOn, Spread> ifCause = ranges?.IfCause(all) ?? new Dictionary<EffectOn, Spread>();
        return new(
            cost,
            costs.Sum(c => c.Likely),
            time,
            hours.Sum(h => h.Likely),
            choice.Spent,
            choice.SafetyEur,
            budget is { } money ? Math.Max(0, choice.SafetyEur + choice.Spent - money) : 0,
            budget,
            s.Logbook.Limits.Hours,
            choice.Answer.Points,
            overrun,
            [.. believed.OrderBy(e => e.Key).Select(e => new PlannedEffect(EffectNames.Key(e.Key), EffectNames.Title(e.Key), EffectNames.Unit(e.Key), e.Value, ifCause[e.Key]))]);
    }

    // Before the owner says what matters, everything matters a little.
    private Dictionary<string, double> Weights(Situation s) =>
        pack.Scales.Aims.ToDictionary(a => a.Id, a => s.Logbook.Aims.Count == 0 ? 1 : s.Logbook.Aims.GetValueOrDefault(a.Id));

    private static int Whole(double? amount, int per) => amount is { } a && a * per < int.MaxValue / 4 ? (int)Math.Round(a * per) : int.MaxValue / 4;

    private sealed record Line(int Index, ShownAs Shown, Stage Stage, double Points);

    private sealed class Choice(
        IReadOnlyList<GateStatus> gates,
        IReadOnlyList<(Fix Fix, GateStatus Gate)> safety,
        CarEstimate car,
        bool[] fitted,
        LeftOut?[] out_,
        CarProblem problem,
        BestSetSolver solver,
        Worthwhile worth,
        double spent,
        double safetyEur,
        double safetyHours)
    {
        public IReadOnlyList<GateStatus> Gates { get; } = gates;

        public IReadOnlyList<(Fix Fix, GateStatus Gate)> Safety { get; } = safety;

        public CarEstimate Car { get; } = car;

        public bool[] Fitted { get; } = fitted;

        public LeftOut?[] Out { get; } = out_;

        public CarProblem Problem { get; } = problem;

        public BestSetSolver Solver { get; } = solver;

        public Worthwhile Worth { get; } = worth;

        public double Spent { get; } = spent;

        public double SafetyEur { get; } = safetyEur;

        public double SafetyHours { get; } = safetyHours;

        public SetAnswer Answer { get; set; } = null!;

        public BrokenLimit Broken { get; set; }
    }
}
