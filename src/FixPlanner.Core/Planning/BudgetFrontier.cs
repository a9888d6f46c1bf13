using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Core.Planning;

/// <summary>Benefit against budget, exact: the best set at the largest budget, then at its cost less a cent, down to nothing.</summary>
internal static class BudgetFrontier
{
    private const int MostCents = 60_000;
    private const long MostNodes = 60_000;

    public static IReadOnlyList<FrontierStep> Of(CarProblem problem, BestSetSolver solver, Fix[] fixes, double before, CancellationToken stop)
    {
        SetProblem p = problem.Problem;
        int limit = p.MoneyCents;
        List<FrontierStep> steps = [];
        int cents = Math.Max(MostCents, limit < int.MaxValue / 4 ? limit : 0);
        while (cents >= 0 && !stop.IsCancellationRequested)
        {
            p.MoneyCents = cents;
            SetAnswer answer = solver.Solve(p, new(MostNodes, stop));
            if (!answer.Feasible)
            {
                break;
            }

            // A dearer set of the same points is no step.
            if (steps.Count > 0 && steps[^1].Points - answer.Points < 1e-9)
            {
                steps.RemoveAt(steps.Count - 1);
            }

            steps.Add(new((answer.Cents / 100.0) + before, answer.Points, [.. fixes.Where((_, i) => answer.Chosen[i]).Select(f => f.Id)]));
            cents = answer.Cents - 1;
        }

        p.MoneyCents = limit;
        steps.Reverse();
        return steps;
    }
}
