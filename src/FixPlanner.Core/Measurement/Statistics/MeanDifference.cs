namespace FixPlanner.Core.Measurement.Statistics;

/// <summary>A difference of means, after less before, with the error that its scatter gives it.</summary>
/// <param name="Estimate">The difference.</param>
/// <param name="StandardError">Its standard error; zero or more.</param>
/// <param name="DegreesOfFreedom">Of the standard error.</param>
public sealed record MeanDifference(double Estimate, double StandardError, double DegreesOfFreedom)
{
    /// <summary>Estimate over standard error.</summary>
    public double T => Estimate == 0 && StandardError == 0 ? 0 : Estimate / StandardError;

    /// <summary>Two-sided p value of 'no difference'.</summary>
    public double PValue => StudentT.TwoSidedShare(T, DegreesOfFreedom);

    /// <summary>Interval that holds the truth with the given confidence.</summary>
    /// <param name="confidence">For example 0.95.</param>
    /// <returns>The interval.</returns>
    public ConfidenceInterval Interval(double confidence)
    {
        double half = StudentT.Quantile((1 + confidence) / 2, DegreesOfFreedom) * StandardError;
        return new(Estimate, Estimate - half, Estimate + half);
    }

    /// <summary>Smallest true change that such a test sees in 80 of 100 days (two-sided, 5 %).</summary>
    /// <returns>In the unit of the values.</returns>
    public double SmallestShown() => StudentT.NoncentralityFor(0.80, DegreesOfFreedom, 0.05) * StandardError;

    /// <summary>Two independent groups with scatters of their own.</summary>
    /// <param name="before">At least two values.</param>
    /// <param name="after">At least two values.</param>
    /// <returns>After less before.</returns>
    /// <exception cref="ArgumentException">A group has fewer than two values.</exception>
    /// <source key="40 CFR 1065.602" place="(f)(1)">t and degrees of freedom of unpaired groups</source>
    public static MeanDifference Welch(ReadOnlySpan<double> before, ReadOnlySpan<double> after)
    {
        if (before.Length < 2 || after.Length < 2)
        {
            throw new ArgumentException("each group needs at least two values");
        }

        return Welch(SampleSummary.Of(before), SampleSummary.Of(after));
    }

    /// <summary>Two independent groups, known by their summaries.</summary>
    /// <param name="before">Of at least two values.</param>
    /// <param name="after">Of at least two values.</param>
    /// <returns>After less before.</returns>
    public static MeanDifference Welch(SampleSummary before, SampleSummary after)
    {
        double partBefore = before.Variance / before.Count;
        double partAfter = after.Variance / after.Count;
        double sum = partBefore + partAfter;
        double freedom = sum == 0
            ? before.Count + after.Count - 2
            : sum * sum / ((partBefore * partBefore / (before.Count - 1)) + (partAfter * partAfter / (after.Count - 1)));
        return new(after.Mean - before.Mean, Math.Sqrt(sum), freedom);
    }

    /// <summary>Mean of differences, each taken within one pair or block.</summary>
    /// <param name="differences">At least two values.</param>
    /// <returns>The mean difference.</returns>
    /// <exception cref="ArgumentException">Fewer than two values.</exception>
    /// <source key="40 CFR 1065.602" place="(f)(2)">paired t</source>
    public static MeanDifference Paired(ReadOnlySpan<double> differences)
    {
        if (differences.Length < 2)
        {
            throw new ArgumentException("at least two differences are needed", nameof(differences));
        }

        SampleSummary summary = SampleSummary.Of(differences);
        return new(summary.Mean, summary.StandardDeviation / Math.Sqrt(summary.Count), summary.Count - 1);
    }
}
