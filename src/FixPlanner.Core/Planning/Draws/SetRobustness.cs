using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Effects;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning.Draws;

/// <summary>
/// How well the best set stands when beliefs, effects, costs and hours are not what they seem: each draw is solved exactly against the real limits.
/// Runs in fixed order and can be stopped and continued, so that a screen may show what is finished so far with its count and error.
/// </summary>
internal sealed class SetRobustness
{
    /// <summary>Standard deviation of the log-odds of each cause: how far the beliefs themselves may be off.</summary>
    private const double LogOddsDeviation = 0.5;

    private readonly CarProblem car;
    private readonly EffectFigures buffer;
    private readonly CommonDraws draws;
    private readonly BestSetSolver solver;
    private readonly Worthwhile worth;
    private readonly double[] belief;
    private readonly double[] drawnBelief;
    private readonly Triangle[] costEur;
    private readonly Triangle[] hours;
    private readonly bool[] chosen;
    private readonly int[] inBest;
    private double regretSum;

    /// <param name="layout">Who acts on what.</param>
    /// <param name="draws">The common draws.</param>
    /// <param name="car">A problem of its own for this purpose: costs, times and figures are overwritten; limits, must and never are kept.</param>
    /// <param name="belief">Chance of each cause.</param>
    /// <param name="worth">What a change is worth.</param>
    /// <param name="costEur">Cost of each fix in EUR.</param>
    /// <param name="hours">The owner's hours for each fix; certain zero for professional work.</param>
    /// <param name="chosen">The plan's set.</param>
    public SetRobustness(EffectLayout layout, CommonDraws draws, CarProblem car, double[] belief, Worthwhile worth, Triangle[] costEur, Triangle[] hours, bool[] chosen)
    {
        (this.draws, this.car, this.belief, this.worth, this.costEur, this.hours, this.chosen) = (draws, car, belief, worth, costEur, hours, chosen);
        buffer = new(layout);
        solver = new(car.Problem.Structure);
        drawnBelief = new double[belief.Length];
        inBest = new int[chosen.Length];
    }

    /// <summary>Draws finished.</summary>
    public int Done { get; private set; }

    /// <summary>Mean of what the best set of a draw would bring more than the plan's, in points; draws in which the plan itself overruns count as no regret.</summary>
    public double Regret => Done == 0 ? 0 : regretSum / Done;

    /// <summary>Share of the finished draws in which the fix is in the best set.</summary>
    public double Share(int fix) => Done == 0 ? 0 : (double)inBest[fix] / Done;

    /// <summary>Standard error of that share.</summary>
    public double ShareError(int fix) => Done == 0 ? 1 : Math.Sqrt(Share(fix) * (1 - Share(fix)) / Done);

    /// <summary>Goes on until so many draws are finished or a stop is asked for.</summary>
    public void RunTo(int count, CancellationToken stop = default)
    {
        while (Done < Math.Min(count, CommonDraws.BestSetCount) && !stop.IsCancellationRequested)
        {
            Fill(Done);
            SetAnswer best = solver.Solve(car.Problem, SearchLimits.None with { Stop = stop });
            if (!best.Proven)
            {
                return;
            }

            Count(best);
            Done++;
        }
    }

    private void Fill(int draw)
    {
        ReadOnlySpan<double> shift = draws.LogOdds(draw);
        for (int i = 0; i < belief.Length; i++)
        {
            double factor = Math.Exp(LogOddsDeviation * shift[i]);
            drawnBelief[i] = belief[i] * factor / (1 - belief[i] + (belief[i] * factor));
        }

        car.Fill(draws.Figures(draw, buffer), drawnBelief, worth);
        ReadOnlySpan<double> cost = draws.Cost(draw);
        ReadOnlySpan<double> time = draws.Hours(draw);
        for (int f = 0; f < costEur.Length; f++)
        {
            car.Problem.Cents[f] = Math.Max(0, (int)Math.Round(100 * costEur[f].Quantile(cost[f])));
            car.Problem.Minutes[f] = Math.Max(0, (int)Math.Round(60 * hours[f].Quantile(time[f])));
        }
    }

    /// <summary>What must be in is in even where a draw makes it too dear.</summary>
    private void Count(SetAnswer best)
    {
        if (!best.Feasible)
        {
            for (int f = 0; f < inBest.Length; f++)
            {
                inBest[f] += car.Problem.Must[f] ? 1 : 0;
            }

            return;
        }

        for (int f = 0; f < inBest.Length; f++)
        {
            inBest[f] += best.Chosen[f] ? 1 : 0;
        }

        regretSum += Math.Max(0, best.Points - car.Problem.Points(chosen));
    }
}
