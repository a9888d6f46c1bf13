using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Uncertainty;

/// <summary>Sums up the draws of an output: its range, and the inputs that matter.</summary>
internal static class DrawnOutput
{
    // Correlations of ranks that chance alone makes in 2,000 draws lie under about 2/sqrt(2000); below that an input is not named.
    private const double ChanceCorrelation = 0.045;

    /// <summary>Range, and share of each input.</summary>
    /// <param name="inputs">The inputs with the same draws.</param>
    /// <param name="result">One value for each draw; not a number where there was no answer.</param>
    public static PropagatedOutput Summed(IReadOnlyList<DrawnInput> inputs, double[] result)
    {
        int missing = result.Count(value => !double.IsFinite(value));
        if (missing == result.Length)
        {
            return new(null, [], missing);
        }

        int[]? answered = missing == 0 ? null : [.. Enumerable.Range(0, result.Length).Where(draw => double.IsFinite(result[draw]))];
        double[] finite = answered is null ? result : Picked(result, answered);
        Ranked ranked = Ranked.Of(finite);
        Ranked RanksOf(DrawnInput input) => answered is null ? input.Ranks : Ranked.Of(Picked(input.Values, answered));
        return new(Range(finite, ranked), ranked.Sorted[^1] > ranked.Sorted[0] ? Shares(inputs, RanksOf, ranked) : [], missing);
    }

    /// <summary>The range alone.</summary>
    public static Spread Range(double[] result) => Spread.OfDraws([.. result]);

    private static Spread Range(double[] finite, Ranked ranked)
    {
        double sum = 0;
        foreach (double value in finite)
        {
            sum += value;
        }

        return Spread.OfSorted(ranked.Sorted, sum / finite.Length);
    }

    private static double[] Picked(double[] values, int[] draws) => [.. draws.Select(draw => values[draw])];

    /// <summary>Squared rank correlation of each input with the output, scaled to add up to one: right for outputs that rise or fall steadily with each input.</summary>
    private static VarianceShare[] Shares(IReadOnlyList<DrawnInput> inputs, Func<DrawnInput, Ranked> ranksOf, Ranked output)
    {
        List<VarianceShare> squares = [];
        foreach (DrawnInput input in inputs.Where(input => !input.IsCertain))
        {
            double correlation = ranksOf(input).Correlation(output);
            if (Math.Abs(correlation) > ChanceCorrelation)
            {
                squares.Add(new(input.Name, correlation * correlation));
            }
        }

        double total = squares.Sum(share => share.Share);
        return [.. squares.Select(share => share with { Share = share.Share / total }).OrderByDescending(share => share.Share)];
    }
}
