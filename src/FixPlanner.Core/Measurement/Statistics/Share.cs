namespace FixPlanner.Core.Measurement.Statistics;

/// <summary>A counted share with its interval, and the difference of two such shares.</summary>
public static class Share
{
    /// <summary>Interval of Wilson: keeps its promise for small counts and never leaves 0 to 1.</summary>
    /// <param name="hits">Looks that showed it; 0 to all.</param>
    /// <param name="looks">All independent looks; above zero.</param>
    /// <param name="confidence">For example 0.95.</param>
    /// <returns>The share, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">No looks, or more hits than looks.</exception>
    public static ConfidenceInterval Wilson(double hits, double looks, double confidence = 0.95)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(looks);
        ArgumentOutOfRangeException.ThrowIfNegative(hits);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(hits, looks);
        double z = MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, (1 + confidence) / 2);
        double share = hits / looks;
        double centre = (share + (z * z / (2 * looks))) / (1 + (z * z / looks));
        double half = z / (1 + (z * z / looks)) * Math.Sqrt((share * (1 - share) / looks) + (z * z / (4 * looks * looks)));
        return new(share, Math.Max(0, Math.Min(share, centre - half)), Math.Min(1, Math.Max(share, centre + half)));
    }

    /// <summary>Difference after less before from the two Wilson intervals (Newcombe's square-and-add rule).</summary>
    /// <param name="before">Share before.</param>
    /// <param name="after">Share after.</param>
    /// <returns>The difference, -1 to 1.</returns>
    public static ConfidenceInterval Difference(ConfidenceInterval before, ConfidenceInterval after)
    {
        double estimate = after.Estimate - before.Estimate;
        double down = Hypotenuse(after.Estimate - after.Low, before.High - before.Estimate);
        double up = Hypotenuse(after.High - after.Estimate, before.Estimate - before.Low);
        return new(estimate, estimate - down, estimate + up);
    }

    private static double Hypotenuse(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
