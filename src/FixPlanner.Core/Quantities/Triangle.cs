namespace FixPlanner.Core.Quantities;

/// <summary>
/// A range somebody stated: lowest, most likely, highest, read as a triangular distribution with those ends and that mode.
/// The unit belongs to the holder. The three may be equal: then the value is certain.
/// </summary>
/// <param name="Low">Lowest value.</param>
/// <param name="Likely">Most likely value (the mode).</param>
/// <param name="High">Highest value.</param>
public readonly record struct Triangle(double Low, double Likely, double High)
{
    /// <summary>A value that is certain.</summary>
    /// <param name="value">The value.</param>
    /// <returns>A triangle without width.</returns>
    public static Triangle Certain(double value) => new(value, value, value);

    /// <summary>Builds a triangle from three values in any direction (worst, likely, best).</summary>
    /// <param name="oneEnd">One end.</param>
    /// <param name="likely">The mode.</param>
    /// <param name="otherEnd">The other end.</param>
    /// <returns>The triangle, ends in numerical order.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is not finite, or the mode is outside the ends.</exception>
    public static Triangle Between(double oneEnd, double likely, double otherEnd)
    {
        double low = Math.Min(Valid.Finite(oneEnd, "units"), Valid.Finite(otherEnd, "units"));
        double high = Math.Max(oneEnd, otherEnd);
        return new(low, Valid.Within(likely, low, high, "units"), high);
    }

    /// <summary>True when low, likely and high are finite and in order.</summary>
    public bool IsInOrder => double.IsFinite(Low) && double.IsFinite(High) && Low <= Likely && Likely <= High;

    /// <summary>Mean of the distribution.</summary>
    public double Mean => (Low + Likely + High) / 3;

    /// <summary>Variance of the distribution.</summary>
    /// <source key="from-memory" place="textbook property of the triangular distribution">(a2 + b2 + c2 - ab - ac - bc) / 18</source>
    public double Variance => ((Low * Low) + (Likely * Likely) + (High * High) - (Low * Likely) - (Low * High) - (Likely * High)) / 18;

    /// <summary>The value below which the given share of the distribution lies.</summary>
    /// <param name="share">From 0 to 1.</param>
    /// <returns>The quantile.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Share outside 0 to 1.</exception>
    public double Quantile(double share)
    {
        Valid.Within(share, 0, 1, "(a share)");
        double width = High - Low;
        if (width == 0)
        {
            return Likely;
        }

        double turn = (Likely - Low) / width;
        return share <= turn
            ? Low + Math.Sqrt(share * width * (Likely - Low))
            : High - Math.Sqrt((1 - share) * width * (High - Likely));
    }

    /// <summary>The same range the other way round: every value with its sign turned.</summary>
    /// <returns>The turned triangle.</returns>
    public Triangle Negated() => new(-High, -Likely, -Low);

    /// <summary>Every value times a factor.</summary>
    /// <param name="factor">Zero or more.</param>
    /// <returns>The scaled triangle.</returns>
    public Triangle Scaled(double factor) => factor >= 0 ? new(Low * factor, Likely * factor, High * factor) : new(High * factor, Likely * factor, Low * factor);
}
