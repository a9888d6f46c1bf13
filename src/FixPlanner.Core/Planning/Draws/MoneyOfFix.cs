using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning.Draws;

/// <summary>What one fix costs and how long it takes, draw by draw.</summary>
/// <param name="CostEur">Cost in EUR.</param>
/// <param name="Hours">The owner's hours.</param>
internal sealed record MoneyOfFix(double[] CostEur, double[] Hours)
{
    /// <summary>Works the draws of a fix out.</summary>
    /// <param name="draws">The common draws.</param>
    /// <param name="fix">Number of the fix.</param>
    /// <param name="costEur">Its cost in EUR.</param>
    /// <param name="hours">The owner's hours for it.</param>
    public static MoneyOfFix Of(CommonDraws draws, int fix, Triangle costEur, Triangle hours)
    {
        double[] cost = new double[CommonDraws.Count];
        double[] time = new double[CommonDraws.Count];
        for (int draw = 0; draw < CommonDraws.Count; draw++)
        {
            cost[draw] = costEur.Quantile(draws.Cost(draw)[fix]);
            time[draw] = hours.Quantile(draws.Hours(draw)[fix]);
        }

        return new(cost, time);
    }
}
