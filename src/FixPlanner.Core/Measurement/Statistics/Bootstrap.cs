namespace FixPlanner.Core.Measurement.Statistics;

/// <summary>Difference of means with an interval from redrawn pairs. A second opinion only: below six values a side it is too narrow.</summary>
public static class Bootstrap
{
    /// <summary>Redraws within each group.</summary>
    /// <param name="before">At least one value.</param>
    /// <param name="after">At least one value.</param>
    /// <param name="seed">Same seed, same answer.</param>
    /// <param name="draws">Number of redraws; 2,000 unless told.</param>
    /// <returns>The difference with its 95 % percentile interval.</returns>
    public static ConfidenceInterval MeanDifference(ReadOnlySpan<double> before, ReadOnlySpan<double> after, ulong seed, int draws = 2000)
    {
        Chance chance = new(seed);
        double[] results = new double[draws];
        for (int i = 0; i < draws; i++)
        {
            results[i] = Redrawn(after, chance) - Redrawn(before, chance);
        }

        Array.Sort(results);
        double estimate = SampleSummary.Of(after).Mean - SampleSummary.Of(before).Mean;
        return new(estimate, Quantities.Spread.SortedQuantile(results, 0.025), Quantities.Spread.SortedQuantile(results, 0.975));
    }

    private static double Redrawn(ReadOnlySpan<double> values, Chance chance)
    {
        double sum = 0;
        for (int i = 0; i < values.Length; i++)
        {
            sum += values[chance.Below(values.Length)];
        }

        return sum / values.Length;
    }
}
