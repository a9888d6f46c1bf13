using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Core.Planning.Frontier;

/// <summary>One step of the frontier: from this limit on, this set is the best until the next step.</summary>
/// <param name="Limit">Money in cents, or time in minutes, that the set needs.</param>
/// <param name="Points">Its points.</param>
/// <param name="Chosen">The set.</param>
internal sealed record LimitStep(int Limit, double Points, bool[] Chosen);

/// <summary>
/// The exact benefit against one limit with the other kept: solve at the largest limit, take what the best set needs less one unit as the next limit,
/// and so on down. Every step is an exact optimum, and between two steps nothing changes.
/// </summary>
internal static class BenefitFrontier
{
    /// <summary>Benefit against money.</summary>
    /// <param name="problem">The choice; its money limit is put back afterwards.</param>
    /// <param name="mostCents">Largest money looked at.</param>
    /// <param name="stop">Asked between steps: the steps found so far, from the dear end, are given back.</param>
    /// <returns>Steps from the cheapest up.</returns>
    public static IReadOnlyList<LimitStep> AgainstMoney(SetProblem problem, int mostCents, CancellationToken stop = default)
    {
        int kept = problem.MoneyCents;
        try
        {
            return Down(problem, mostCents, SearchLimits.None, limit => problem.MoneyCents = limit, a => a.Cents, stop);
        }
        finally
        {
            problem.MoneyCents = kept;
        }
    }

    /// <summary>Benefit against time.</summary>
    /// <param name="problem">The choice; its time limit is put back afterwards.</param>
    /// <param name="mostMinutes">Largest time looked at.</param>
    /// <param name="stop">Asked between steps.</param>
    /// <returns>Steps from the shortest up.</returns>
    public static IReadOnlyList<LimitStep> AgainstTime(SetProblem problem, int mostMinutes, CancellationToken stop = default)
    {
        int kept = problem.TimeMinutes;
        try
        {
            SearchLimits shortest = SearchLimits.None with { PointsPerCent = 0, PointsPerMinute = 1e-11 };
            return Down(problem, mostMinutes, shortest, limit => problem.TimeMinutes = limit, a => a.Minutes, stop);
        }
        finally
        {
            problem.TimeMinutes = kept;
        }
    }

    private static List<LimitStep> Down(SetProblem problem, int limit, SearchLimits search, Action<int> setLimit, Func<SetAnswer, int> needs, CancellationToken stop)
    {
        BestSetSolver solver = new(problem.Structure);
        List<LimitStep> steps = [];
        while (limit >= 0 && !stop.IsCancellationRequested)
        {
            setLimit(limit);
            SetAnswer answer = solver.Solve(problem, search with { Stop = stop });
            if (!answer.Feasible || !answer.Proven)
            {
                break;
            }

            // A set that brings no more than a cheaper one is no step.
            if (steps.Count > 0 && steps[^1].Points - answer.Points <= TieBreak.Tolerance)
            {
                steps.RemoveAt(steps.Count - 1);
            }

            steps.Add(new(needs(answer), answer.Points, answer.Chosen));
            limit = needs(answer) - 1;
        }

        steps.Reverse();
        return steps;
    }
}
