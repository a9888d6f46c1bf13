using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Core.Planning;

/// <summary>
/// What an answer is worth to the plan, in points: the mean over the answers of the best set's points after it, less what
/// today's set would bring then. Never below zero.
/// </summary>
internal sealed class QuestionWorth(CarProblem problem, BestSetSolver solver, SetAnswer today, Action<IReadOnlyList<double>, CarProblem> refill)
{
    private const long MostNodes = 20_000;

    // An answer that moves no cause by this much cannot change a plan worth speaking of.
    private const double LeastMove = 0.005;

    public IReadOnlyDictionary<string, double> Of(Situation s, Beliefs beliefs, CancellationToken stop)
    {
        Dictionary<string, double> gains = [];
        foreach (Observation o in s.Pack.Observations)
        {
            if (stop.IsCancellationRequested)
            {
                break;
            }

            if (s.Is(o.AppliesWhen) != Truth.No && beliefs.Ahead(o.Id) is { } ahead)
            {
                gains[o.Id] = ahead.Sum(a => a.Chance * Regret(a.Probabilities, beliefs, stop));
            }
        }

        refill(beliefs.Probabilities, problem);
        return gains;
    }

    private double Regret(double[] probabilities, Beliefs beliefs, CancellationToken stop)
    {
        if (!probabilities.Where((p, i) => Math.Abs(p - beliefs.Probabilities[i]) > LeastMove).Any())
        {
            return 0;
        }

        refill(probabilities, problem);
        double then = problem.Problem.Points(today.Chosen);
        SetAnswer best = solver.Solve(problem.Problem, new(MostNodes, stop));
        return Math.Max(0, best.Points - then);
    }
}
