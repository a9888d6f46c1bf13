using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning.Draws;

/// <summary>Computed ranges of what a set costs and how long it takes, and the chance that it goes over the budget.</summary>
/// <param name="CostEur">Cost in EUR.</param>
/// <param name="Hours">Hours.</param>
/// <param name="Overrun">Share of the draws in which the cost is above the budget; 0 without a budget.</param>
internal sealed record MoneyDraws(Spread CostEur, Spread Hours, double Overrun)
{
    /// <summary>Adds up the set in every draw.</summary>
    /// <param name="draws">The common draws.</param>
    /// <param name="set">The set, safety items included.</param>
    /// <param name="costEur">Cost of each fix in EUR.</param>
    /// <param name="hours">The owner's hours for each fix.</param>
    /// <param name="budgetEur">The whole budget in EUR, or null.</param>
    public static MoneyDraws Of(CommonDraws draws, IReadOnlyList<int> set, Triangle[] costEur, Triangle[] hours, double? budgetEur)
    {
        double[] cost = new double[CommonDraws.Count];
        double[] time = new double[CommonDraws.Count];
        int over = 0;
        for (int draw = 0; draw < CommonDraws.Count; draw++)
        {
            foreach (int fix in set)
            {
                cost[draw] += costEur[fix].Quantile(draws.Cost(draw)[fix]);
                time[draw] += hours[fix].Quantile(draws.Hours(draw)[fix]);
            }

            over += cost[draw] > budgetEur ? 1 : 0;
        }

        return new(Spread.OfDraws(cost), Spread.OfDraws(time), (double)over / CommonDraws.Count);
    }
}
