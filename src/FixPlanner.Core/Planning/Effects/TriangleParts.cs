using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning.Effects;

/// <summary>
/// The two parts of a range that is written so that plus is good: what it brings on average when it helps, counted over all cases,
/// and what it costs when it backfires. They add up to the mean.
/// </summary>
/// <param name="Good">Mean of max(x, 0): zero or more.</param>
/// <param name="Bad">Mean of min(x, 0): zero or less.</param>
internal readonly record struct TriangleParts(double Good, double Bad)
{
    /// <summary>Splits the mean of a triangle at zero, in closed form.</summary>
    public static TriangleParts Of(Triangle range)
    {
        if (range.Low >= 0)
        {
            return new(range.Mean, 0);
        }

        if (range.High <= 0)
        {
            return new(0, range.Mean);
        }

        double width = range.High - range.Low;
        if (range.Likely >= 0)
        {
            double bad = -Cubed(range.Low) / (3 * width * (range.Likely - range.Low));
            return new(range.Mean + bad, -bad);
        }

        double good = Cubed(range.High) / (3 * width * (range.High - range.Likely));
        return new(good, range.Mean - good);
    }

    /// <summary>The parts of one drawn value: it either helps or backfires.</summary>
    public static TriangleParts OfValue(double value) => new(Math.Max(value, 0), Math.Min(value, 0));

    private static double Cubed(double value) => value * value * value;
}
