using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Effects;

namespace FixPlanner.Core.Planning.Worth;

/// <summary>
/// What each open question is worth to the plan, in the regret form: sum over the answers of their chance times what the best set after that answer
/// brings more than today's plan would then. Never below zero. The proven bound comes first; questions that cannot win are not solved.
/// </summary>
internal sealed class QuestionWorth
{
    /// <summary>
    /// Losses of today at which fixes are taken together in the bound, as shares of the plan's points. More steps make it closer, but then it too passes
    /// over questions that pay only together with others (docs/theory/diagnosis-quality.md).
    /// </summary>
    private static readonly double[] Steps = [0.004, 0.03];

    /// <summary>A loss that is not settled after so many nodes is taken at what is proven of it.</summary>
    private const long NodesForALoss = 300;

    private readonly CarProblem now;
    private readonly CarProblem then;
    private readonly EffectFigures figures;
    private readonly Worthwhile worth;
    private readonly SetAnswer plan;
    private readonly bool[] neverNow;
    private readonly BestSetSolver solver;

    /// <param name="now">Today's choice, filled.</param>
    /// <param name="then">A second choice of the same structure for working in; limits, costs, must and never are taken from the first.</param>
    /// <param name="figures">The mean effects.</param>
    /// <param name="worth">What a change is worth.</param>
    /// <param name="plan">Today's best set.</param>
    public QuestionWorth(CarProblem now, CarProblem then, EffectFigures figures, Worthwhile worth, SetAnswer plan)
    {
        (this.now, this.then, this.figures, this.worth, this.plan) = (now, then, figures, worth, plan);
        neverNow = [.. now.Problem.Never];
        solver = new(then.Problem.Structure);
        now.Problem.Cents.CopyTo(then.Problem.Cents, 0);
        now.Problem.Minutes.CopyTo(then.Problem.Minutes, 0);
        now.Problem.Must.CopyTo(then.Problem.Must, 0);
        then.Problem.MoneyCents = now.Problem.MoneyCents;
        then.Problem.TimeMinutes = now.Problem.TimeMinutes;
    }

    /// <summary>Ranks questions by gain per effort. The best is exact; so is every one whose bound per effort reaches the best.</summary>
    /// <param name="questions">The open questions.</param>
    /// <param name="limits">When to stop: what is not worked out by then keeps its bound.</param>
    /// <returns>One gain for each question, in their order.</returns>
    public QuestionGain[] Rank(IReadOnlyList<OpenQuestion> questions, SearchLimits limits)
    {
        double[] bounds = Bounds(questions, limits.Stop);
        QuestionGain[] gains = [.. bounds.Select(b => new QuestionGain(b, b, false))];
        double bestPerEffort = 0;
        foreach (int q in Enumerable.Range(0, questions.Count).OrderByDescending(q => bounds[q] / questions[q].Effort).ThenBy(q => q))
        {
            if (bounds[q] / questions[q].Effort <= bestPerEffort || limits.Stop.IsCancellationRequested)
            {
                break;
            }

            if (Exact(questions[q], limits) is { } points)
            {
                gains[q] = new(points, bounds[q], true);
                bestPerEffort = Math.Max(bestPerEffort, points / questions[q].Effort);
            }
        }

        return gains;
    }

    /// <summary>Proven bound of each question.</summary>
    public double[] Bounds(IReadOnlyList<OpenQuestion> questions, CancellationToken stop = default)
    {
        bool[] possible = [.. neverNow.Select(never => !never)];
        foreach (PossibleAnswer answer in questions.SelectMany(q => q.Answers))
        {
            for (int i = 0; answer.Never is { } never && i < never.Length; i++)
            {
                possible[i] |= !never[i];
            }
        }

        GainBound bound = new(now.Problem, plan.Chosen, Losses(stop), [.. Steps.Select(step => step * plan.Points)]);
        GainBound ifFreed = new(now.Problem, plan.Chosen, [.. possible.Select((may, i) => may || plan.Chosen[i] ? 0 : double.PositiveInfinity)], []);
        return [.. questions.Select(q => q.Answers.Sum(a => a.Chance * Bound(Frees(a) ? ifFreed : bound, a))).Select(points => points < TieBreak.Tolerance ? 0 : points)];
    }

    /// <summary>Expected gain of one question; null when a stop came first.</summary>
    public double? Exact(OpenQuestion question, SearchLimits limits)
    {
        double gain = 0;
        foreach (PossibleAnswer answer in question.Answers)
        {
            Fill(answer);
            SetAnswer best = solver.Solve(then.Problem, limits);
            if (!best.Proven)
            {
                return null;
            }

            gain += answer.Chance * (best.Feasible ? Math.Max(0, best.Points - then.Problem.Points(PlanWithout(answer.Never))) : 0);
        }

        return gain;
    }

    /// <summary>What today's best set loses at least with each item the other way round.</summary>
    private double[] Losses(CancellationToken stop)
    {
        double[] loss = new double[plan.Chosen.Length];
        for (int i = 0; i < loss.Length; i++)
        {
            bool[] forced = plan.Chosen[i] ? now.Problem.Never : now.Problem.Must;
            if (neverNow[i] || forced[i] || now.Problem.Must[i])
            {
                loss[i] = double.PositiveInfinity;
                continue;
            }

            forced[i] = true;
            SetAnswer other = solver.Solve(now.Problem, new(NodesForALoss, stop));
            forced[i] = false;
            loss[i] = other.Feasible ? Math.Max(0, plan.Points - other.UpperPoints) : double.PositiveInfinity;
        }

        return loss;
    }

    private bool Frees(PossibleAnswer answer) => answer.Never is { } never && never.Index().Any(n => !n.Item && neverNow[n.Index]);

    private double Bound(GainBound bound, PossibleAnswer answer)
    {
        Fill(answer);
        double most = bound.Of(then.Problem);
        if (answer.Never is not { } never)
        {
            return most;
        }

        // Items that a gate rules out lose their part of today's plan; items that it frees may have made today's plan better already.
        double lost = then.Problem.Points(plan.Chosen) - then.Problem.Points(PlanWithout(never));
        double freed = 0;
        if (Frees(answer))
        {
            never.CopyTo(now.Problem.Never, 0);
            freed = Math.Max(0, solver.Solve(now.Problem, SearchLimits.None).Points - plan.Points);
            neverNow.CopyTo(now.Problem.Never, 0);
        }

        return most + Math.Max(0, lost) + freed;
    }

    private void Fill(PossibleAnswer answer)
    {
        then.Fill(figures, answer.Belief, worth);
        (answer.Never ?? neverNow).CopyTo(then.Problem.Never, 0);
    }

    /// <summary>Today's plan without what is ruled out and what needs that.</summary>
    private bool[] PlanWithout(bool[]? never)
    {
        if (never is null)
        {
            return plan.Chosen;
        }

        bool[] left = [.. plan.Chosen];
        for (int i = 0; i < left.Length; i++)
        {
            left[i] &= !never[i] && !Array.Exists(now.Problem.Structure.Needs[i], need => never[need]);
        }

        return left;
    }
}
