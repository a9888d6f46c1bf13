using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Planning.Frontier;
using FixPlanner.Core.Safety;
using FixPlanner.Core.Safety.Figures;

namespace FixPlanner.Core.Planning;

/// <summary>How much of a plan is worked out.</summary>
public enum PlanDepth
{
    /// <summary>Gates, best set and stages: at once after an answer, without draws and without the evidence behind each cause.</summary>
    Quick,

    /// <summary>Also what each open question is worth.</summary>
    WithQuestions,

    /// <summary>Also all draws: ranges, shares, regret, overrun, trials, frontier, runner-up.</summary>
    Full,
}

/// <summary>A question by its kind and id.</summary>
/// <param name="IsFact">A fact rather than an observation.</param>
/// <param name="Id">Its id.</param>
public readonly record struct AskedFor(bool IsFact, string Id);

/// <summary>Makes the plan: safety first, then the exact best set within the limits, in stages. Made once per pack.</summary>
public sealed class Planner
{
    private const int FrontierCents = 60_000;
    private const int FrontierMinutes = 40 * 60;
    private const double MoreEur = 50;
    private const int DrawsInAStep = 100;
    private readonly PlanModel model;

    /// <summary>Prepares planning with a pack.</summary>
    /// <param name="pack">The pack.</param>
    public Planner(KnowledgePack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        model = new(pack);
    }

    /// <summary>
    /// What physics says of a whole set instead of the pack's sums, where a model of the car can say it, and which sets break a margin.
    /// Null leaves the pack's figures alone; then sealing fixes count their glass load once, the largest.
    /// </summary>
    public ISetPhysics? Physics { get => model.Physics; init => model.Physics = value; }

    /// <summary>Makes the plan.</summary>
    /// <param name="s">What is known.</param>
    /// <param name="beliefs">What is believed.</param>
    /// <param name="depth">How much is worked out.</param>
    /// <param name="stop">Asked now and then; the best found by then is returned, with what is proven.</param>
    /// <returns>The plan, and for each open question what its answer is worth in points; its proven bound where that was enough.</returns>
    public (Plan Plan, IReadOnlyDictionary<AskedFor, double> Gains) Make(Situation s, Beliefs beliefs, PlanDepth depth, CancellationToken stop = default) =>
        Making(s, beliefs, depth, CommonDraws.BestSetCount, stop, stop).Last();

    /// <summary>
    /// Makes the whole plan in steps, so that a screen may show what is finished: first what each question is worth, then the draws, hundred by hundred.
    /// The last step is the plan that <see cref="Make"/> gives in full.
    /// </summary>
    /// <param name="s">What is known.</param>
    /// <param name="beliefs">What is believed.</param>
    /// <param name="hurry">Asked now and then: when it is set before the questions are finished, the best found by then is a step of its own.</param>
    /// <param name="stop">Asked now and then; no step follows once it is set.</param>
    /// <returns>The steps, each worked out when it is asked for.</returns>
    public IEnumerable<(Plan Plan, IReadOnlyDictionary<AskedFor, double> Gains)> InSteps(Situation s, Beliefs beliefs, CancellationToken hurry, CancellationToken stop) =>
        Making(s, beliefs, PlanDepth.Full, DrawsInAStep, hurry, stop).TakeWhile(_ => !stop.IsCancellationRequested);

    private IEnumerable<(Plan Plan, IReadOnlyDictionary<AskedFor, double> Gains)> Making(Situation s, Beliefs beliefs, PlanDepth depth, int draws, CancellationToken hurry, CancellationToken stop)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(beliefs);
        Choice choice = new(model, s, beliefs, stop, work: depth == PlanDepth.Quick ? Choice.QuickWork : Choice.MostWork);
        QuestionGains gains = depth >= PlanDepth.WithQuestions ? QuestionGains.Of(model, choice, beliefs, hurry) : QuestionGains.None;
        if (depth < PlanDepth.Full || draws < CommonDraws.BestSetCount)
        {
            yield return (Written(choice, beliefs, depth, gains, null), gains.Points);
        }

        if (depth < PlanDepth.Full)
        {
            yield break;
        }

        if (!gains.Complete && !stop.IsCancellationRequested)
        {
            gains = QuestionGains.Of(model, choice, beliefs, stop);
        }

        PlanDrawing drawing = PlanDrawing.Begin(model, choice, beliefs);
        while (drawing.Robustness.Done + draws < CommonDraws.BestSetCount && !stop.IsCancellationRequested)
        {
            drawing.Robustness.RunTo(drawing.Robustness.Done + draws, stop);
            yield return (Written(choice, beliefs, depth, gains, drawing), gains.Points);
        }

        drawing.Finish(model, choice, stop);
        if (draws < CommonDraws.BestSetCount && stop.IsCancellationRequested)
        {
            yield break;
        }

        yield return (WithMore(Written(choice, beliefs, depth, gains, drawing), choice, beliefs, drawing, stop), gains.Points);
    }

    private Plan Written(Choice choice, Beliefs beliefs, PlanDepth depth, QuestionGains gains, PlanDrawing? drawing)
    {
        Situation s = choice.Situation;
        HashSet<string> planned = [.. choice.Chosen.Select(i => model.Fixes[i].Id), .. choice.Safety.Select(w => w.Fix.Id)];
        IReadOnlyList<GateStatus> gates = GateCheck.All(s, PlannedUse.Of(s, planned));
        bool finished = drawing?.Robustness.Done >= CommonDraws.BestSetCount;
        if (finished)
        {
            gates = CarFigures.With(gates, s, [.. planned.Select(s.Pack.Fix).OfType<Fix>()]);
        }

        PlanLines lines = new(model, choice, beliefs, gates, drawing, withEvidence: depth > PlanDepth.Quick, withPhysics: finished);
        IReadOnlyList<PlanItem> items = lines.Items();
        PlanTotals totals = PlanSums.Of(model, choice, drawing, finished);
        NextQuestion? next = NextLook.Of(s, gates, gains, totals.Points);
        return new(
            gates,
            items,
            WhyLeftOut.All(model, choice, beliefs, withLooking: depth > PlanDepth.Quick),
            totals,
            [],
            drawing?.Robustness.Regret,
            100 * Math.Min(10, choice.Answer.LargestGap),
            next,
            Headlines.Of(gates, items, next, choice.Broken))
        {
            DrawsFinished = drawing?.Robustness.Done ?? 0,
            SpeedRise = finished ? LoadsAtSpeeds.Of(s) : [],
            Vents = finished ? choice.Inputs.Vents.Answers(choice.Inputs.SpeedsKmh[^1]) : [],
            VentsUpToKmh = finished ? choice.Inputs.SpeedsKmh[^1] : null,
            QuestionsProven = gains.Complete,
            Depth = depth < PlanDepth.WithQuestions ? depth : PlanDepth.WithQuestions,
        };
    }

    /// <summary>What a set that the owner ticked brings, beside the proposed plan.</summary>
    /// <param name="s">What is known.</param>
    /// <param name="beliefs">What is believed.</param>
    /// <param name="ticked">Ids of the fixes ticked; unknown ids are ignored.</param>
    /// <param name="proposed">Ids of the set to compare with; null for the best set of this situation.</param>
    /// <param name="withModels">False leaves out what takes longer than a key may: then the pack's sums stand.</param>
    /// <returns>What it brings, and what stands against it.</returns>
    public WhatIf Try(Situation s, Beliefs beliefs, IReadOnlyCollection<string> ticked, IReadOnlyCollection<string>? proposed = null, bool withModels = true)
    {
        ArgumentNullException.ThrowIfNull(ticked);
        ArgumentNullException.ThrowIfNull(beliefs);
        Choice choice = new(model, s, beliefs, CancellationToken.None, work: Choice.QuickWork);
        int[] Numbers(IEnumerable<string> ids) => [.. ids.Select(model.Number).Where(n => n >= 0).Distinct()];
        return WhatIf.Of(model, choice, beliefs, Numbers(ticked), proposed is null ? choice.Chosen : Numbers(proposed), withModels);
    }

    private Plan WithMore(Plan plan, Choice choice, Beliefs beliefs, PlanDrawing drawing, CancellationToken stop)
    {
        MoreMoney more = MoreMoney.Of(choice.Problem.Problem, choice.Answer, (int)(MoreEur * 100));
        return plan with
        {
            Depth = PlanDepth.Full,
            Frontier = Steps(BenefitFrontier.AgainstMoney(choice.Problem.Problem, MostCents(choice), stop), choice),
            HoursFrontier = [.. BenefitFrontier.AgainstTime(choice.Problem.Problem, MostMinutes(choice), stop).Select(x => new HoursStep(x.Limit / 60.0, x.Points, Ids(x.Chosen)))],
            MoreMoney = choice.Situation.Logbook.Limits.BudgetEur is null ? null : new(MoreEur, more.MorePoints, more.NeedsMoreCents / 100.0, Ids(more.Comes), Ids(more.Goes)),
            RunnerUp = Stakes.RunnerUp(model, choice),
            Waiting = Stakes.Waiting(model, choice, beliefs, stop),
            Stake = Stakes.Leading(model, choice),
        };
    }

    private IReadOnlyList<FrontierStep> Steps(IReadOnlyList<LimitStep> steps, Choice choice) =>
        [.. steps.Select(x => new FrontierStep((x.Limit / 100.0) + choice.SafetyEur + choice.Spent, x.Points, Ids(x.Chosen)))];

    private static int MostCents(Choice choice) => choice.Situation.Logbook.Limits.BudgetEur is null ? FrontierCents : Math.Max(FrontierCents, choice.Problem.Problem.MoneyCents);

    private static int MostMinutes(Choice choice) => choice.Situation.Logbook.Limits.Hours is null ? FrontierMinutes : Math.Max(FrontierMinutes, choice.Problem.Problem.TimeMinutes);

    private string[] Ids(bool[] chosen) => [.. model.Fixes.Where((_, i) => chosen[i]).Select(f => f.Id)];

    private string[] Ids(IReadOnlyList<int> numbers) => [.. numbers.Select(i => model.Fixes[i].Id)];
}
