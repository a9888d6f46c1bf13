using FixPlanner.Core.Planning.Effects;

namespace FixPlanner.Core.Planning.BestSet;

/// <summary>What hangs on one cause.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="LossIfAbsent">Points that the plan loses if the cause is not there after all.</param>
/// <param name="BestIfAbsent">Points that the best set would then bring.</param>
/// <param name="PlanIfAbsent">Points that the plan would then bring.</param>
internal sealed record CauseStake(int Cause, double LossIfAbsent, double BestIfAbsent, double PlanIfAbsent)
{
    /// <summary>Finds the cause on which most of the plan hangs.</summary>
    /// <param name="car">The choice; filled again with today's beliefs afterwards.</param>
    /// <param name="figures">The mean effects.</param>
    /// <param name="belief">Chance of each cause today.</param>
    /// <param name="worth">What a change is worth.</param>
    /// <param name="plan">Today's best set.</param>
    /// <returns>The stake, or null when the plan hangs on no cause.</returns>
    public static CauseStake? Leading(CarProblem car, EffectFigures figures, double[] belief, Worthwhile worth, SetAnswer plan)
    {
        double[] without = [.. belief];
        int leading = -1;
        double most = TieBreak.Tolerance;
        for (int cause = 0; cause < belief.Length; cause++)
        {
            without[cause] = 0;
            car.Fill(figures, without, worth);
            without[cause] = belief[cause];
            double loss = plan.Points - car.Problem.Points(plan.Chosen);
            if (loss > most)
            {
                (leading, most) = (cause, loss);
            }
        }

        CauseStake? stake = null;
        if (leading >= 0)
        {
            without[leading] = 0;
            car.Fill(figures, without, worth);
            SetAnswer best = new BestSetSolver(car.Problem.Structure).Solve(car.Problem, SearchLimits.None);
            stake = new(leading, most, best.Points, car.Problem.Points(plan.Chosen));
        }

        car.Fill(figures, belief, worth);
        return stake;
    }

    /// <summary>The belief in a cause at which two sets bring the same, between 0 and 1.</summary>
    /// <param name="car">The choice; filled again with today's beliefs afterwards.</param>
    /// <param name="figures">The mean effects.</param>
    /// <param name="belief">Chance of each cause today.</param>
    /// <param name="worth">What a change is worth.</param>
    /// <param name="cause">The cause.</param>
    /// <param name="one">One set.</param>
    /// <param name="other">The other set.</param>
    /// <returns>The belief, or null when they do not change places by this cause alone.</returns>
    public static double? TurnsAt(CarProblem car, EffectFigures figures, double[] belief, Worthwhile worth, int cause, bool[] one, bool[] other)
    {
        double[] changed = [.. belief];
        double? turn = null;
        double low = 0;
        double high = 1;
        double atLow = Difference(low);
        if (atLow * Difference(high) < 0)
        {
            for (int step = 0; step < 40; step++)
            {
                double middle = (low + high) / 2;
                (low, high) = Difference(middle) * atLow > 0 ? (middle, high) : (low, middle);
            }

            turn = (low + high) / 2;
        }

        car.Fill(figures, belief, worth);
        return turn;

        double Difference(double chance)
        {
            changed[cause] = chance;
            car.Fill(figures, changed, worth);
            return car.Problem.Points(one) - car.Problem.Points(other);
        }
    }
}
