namespace FixPlanner.Core.Quantities;

/// <summary>
/// A computed range: 5 % point, mean and 95 % point over draws. Low and high are widened to include the mean.
/// Numerically ordered; a negative effect is a lessening. The unit belongs to the holder.
/// </summary>
/// <param name="Low">5 % of the draws lie below (or the mean, if that is lower).</param>
/// <param name="Likely">Mean of the draws.</param>
/// <param name="High">95 % of the draws lie below (or the mean, if that is higher).</param>
public readonly record struct Spread(double Low, double Likely, double High)
{
    /// <summary>A value without spread.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The spread.</returns>
    public static Spread Certain(double value) => new(value, value, value);

    /// <summary>Sums up draws.</summary>
    /// <param name="draws">At least one finite value; sorted in place.</param>
    /// <returns>The computed range.</returns>
    /// <exception cref="ArgumentException">No draws.</exception>
    public static Spread OfDraws(Span<double> draws)
    {
        if (draws.IsEmpty)
        {
            throw new ArgumentException("a range needs at least one draw", nameof(draws));
        }

        double sum = 0;
        foreach (double draw in draws)
        {
            sum += draw;
        }

        double mean = sum / draws.Length;
        draws.Sort();
        return OfSorted(draws, mean);
    }

    /// <summary>The same from sorted draws and their mean.</summary>
    internal static Spread OfSorted(ReadOnlySpan<double> sorted, double mean) =>
        new(Math.Min(SortedQuantile(sorted, 0.05), mean), mean, Math.Max(SortedQuantile(sorted, 0.95), mean));

    /// <summary>Quantile of sorted draws by straight lines between order statistics (the usual definition 7).</summary>
    /// <param name="sorted">Ascending values, at least one.</param>
    /// <param name="share">From 0 to 1.</param>
    /// <returns>The quantile.</returns>
    public static double SortedQuantile(ReadOnlySpan<double> sorted, double share)
    {
        double place = share * (sorted.Length - 1);
        int below = (int)Math.Floor(place);
        int above = Math.Min(below + 1, sorted.Length - 1);
        return sorted[below] + ((place - below) * (sorted[above] - sorted[below]));
    }

    /// <summary>Every value times a factor.</summary>
    /// <param name="factor">Any finite number.</param>
    /// <returns>The scaled range, in numerical order.</returns>
    public Spread Scaled(double factor) => factor >= 0 ? new(Low * factor, Likely * factor, High * factor) : new(High * factor, Likely * factor, Low * factor);
}
