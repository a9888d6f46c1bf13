using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Cooling;

/// <summary>
/// How much of the heat that could pass in a heat exchanger does pass (0 to 1), from its size (transfer units: UA over the smaller
/// heat flow of the two streams) and the ratio of the streams (smaller over larger, 0 to 1).
/// </summary>
public static class ExchangerEffectiveness
{
    /// <summary>Effectiveness of an exchanger.</summary>
    /// <param name="arrangement">How the streams pass.</param>
    /// <param name="transferUnits">N: zero or more.</param>
    /// <param name="streamRatio">C_r: 0 to 1.</param>
    /// <returns>eps, 0 to 1.</returns>
    /// <validity>Steady, no boiling, no heat through the casing.</validity>
    /// <uncertainty>The unmixed form is a fit good to 1 or 2 %; the others are exact for their arrangement.</uncertainty>
    /// <source key="incropera" place="table 11.3 and Holman ex. 10-9, read in an open library">closed forms</source>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public static double Of(StreamArrangement arrangement, double transferUnits, double streamRatio)
    {
        double n = Valid.NotNegative(transferUnits, "(a number)");
        double r = Valid.Within(streamRatio, 0, 1, "(a ratio)");
        if (r < 1e-9)
        {
            return 1 - Math.Exp(-n);
        }

        return arrangement switch
        {
            StreamArrangement.CrossBothUnmixed => 1 - Math.Exp((Math.Exp(-r * Math.Pow(n, 0.78)) - 1) * Math.Pow(n, 0.22) / r),
            StreamArrangement.CrossLargerMixed => (1 - Math.Exp(-r * (1 - Math.Exp(-n)))) / r,
            StreamArrangement.CrossSmallerMixed => 1 - Math.Exp(-(1 - Math.Exp(-r * n)) / r),
            StreamArrangement.Counter => Counter(n, r),
            _ => throw new ArgumentOutOfRangeException(nameof(arrangement), arrangement, "not an arrangement"),
        };
    }

    private static double Counter(double n, double r)
    {
        // Equal streams make the closed form 0/0.
        if (1 - r < 1e-9)
        {
            return n / (1 + n);
        }

        double left = Math.Exp(-n * (1 - r));
        return (1 - left) / (1 - (r * left));
    }
}

/// <summary>How the two streams of a heat exchanger pass each other.</summary>
public enum StreamArrangement
{
    /// <summary>Across, both in separate channels: the usual finned core.</summary>
    CrossBothUnmixed,

    /// <summary>Across, the larger stream free to mix.</summary>
    CrossLargerMixed,

    /// <summary>Across, the smaller stream free to mix.</summary>
    CrossSmallerMixed,

    /// <summary>Against each other.</summary>
    Counter,
}
