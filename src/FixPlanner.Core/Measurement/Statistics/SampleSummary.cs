namespace FixPlanner.Core.Measurement.Statistics;

/// <summary>Count, mean and spread of plain values. The unit is that of the values.</summary>
/// <param name="Count">How many values.</param>
/// <param name="Mean">Their mean; not a number when there are none.</param>
/// <param name="StandardDeviation">Divided by n - 1; not a number below two values.</param>
public readonly record struct SampleSummary(int Count, double Mean, double StandardDeviation)
{
    /// <summary>Square of the standard deviation.</summary>
    public double Variance => StandardDeviation * StandardDeviation;

    /// <summary>Sums up values in two passes: one pass loses all digits on data such as NumAcc4 of NIST.</summary>
    /// <param name="values">Finite values.</param>
    /// <returns>The summary.</returns>
    /// <source key="40 CFR 1065.602" place="(b), (c)">mean and standard deviation</source>
    public static SampleSummary Of(ReadOnlySpan<double> values)
    {
        double mean = MeanOf(values);
        double squares = 0;
        double rest = 0;
        foreach (double value in values)
        {
            squares += (value - mean) * (value - mean);
            rest += value - mean;
        }

        // The second term takes out what rounding left in the mean.
        double variance = (squares - (rest * rest / values.Length)) / (values.Length - 1);
        return new(values.Length, mean, values.Length > 1 ? Math.Sqrt(variance) : double.NaN);
    }

    /// <summary>Correlation of each value with the next one.</summary>
    /// <param name="values">At least two finite values.</param>
    /// <returns>From -1 to 1; not a number when all values are equal.</returns>
    /// <source key="NIST StRD" place="univariate summary statistics, r(1)">lag-1 autocorrelation</source>
    public static double Lag1Autocorrelation(ReadOnlySpan<double> values)
    {
        double mean = MeanOf(values);
        double products = 0;
        double squares = 0;
        for (int i = 0; i < values.Length; i++)
        {
            double here = values[i] - mean;
            squares += here * here;
            if (i + 1 < values.Length)
            {
                products += here * (values[i + 1] - mean);
            }
        }

        return products / squares;
    }

    /// <summary>The middle value.</summary>
    /// <param name="values">Values; left as they are.</param>
    /// <returns>The median; not a number when there are none.</returns>
    internal static double Median(ReadOnlySpan<double> values)
    {
        if (values.IsEmpty)
        {
            return double.NaN;
        }

        double[] sorted = values.ToArray();
        Array.Sort(sorted);
        int half = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[half] : (sorted[half - 1] + sorted[half]) / 2;
    }

    private static double MeanOf(ReadOnlySpan<double> values)
    {
        double sum = 0;
        foreach (double value in values)
        {
            sum += value;
        }

        double first = sum / values.Length;
        double rest = 0;
        foreach (double value in values)
        {
            rest += value - first;
        }

        return first + (rest / values.Length);
    }
}
