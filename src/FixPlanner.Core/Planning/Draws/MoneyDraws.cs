using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning.Draws;

/// <summary>Computed ranges of what a set costs and how long it takes, and the chance that it goes over the budget.</summary>
/// <param name="CostEur">Cost in EUR.</param>
/// <param name="Hours">Hours.</param>
/// <param name="Overrun">Share of the draws in which the cost is above the budget; 0 without a budget.</param>
internal sealed record MoneyDraws(Spread CostEur, Spread Hours, double Overrun)
{
    /// <summary>Adds up the set in every draw.</summary>
    /// <param name="set">The set, safety items included.</param>
    /// <param name="budgetEur">The whole budget in EUR, or null.</param>
    public static MoneyDraws Of(IReadOnlyList<MoneyOfFix> set, double? budgetEur)
    {
        double[] cost = new double[CommonDraws.Count];
        double[] time = new double[CommonDraws.Count];
        foreach (MoneyOfFix fix in set)
        {
            for (int draw = 0; draw < CommonDraws.Count; draw++)
            {
                cost[draw] += fix.CostEur[draw];
                time[draw] += fix.Hours[draw];
            }
        }

        int over = cost.Count(eur => eur > budgetEur);
        return new(Spread.OfDraws(cost), Spread.OfDraws(time), (double)over / CommonDraws.Count);
    }
}
