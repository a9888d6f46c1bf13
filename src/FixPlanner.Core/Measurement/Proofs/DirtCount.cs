using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>Dirt on a pane counted in the squares of a grid laid over a photo.</summary>
/// <param name="Dirty">Squares that are covered.</param>
/// <param name="Squares">All squares; above zero.</param>
public readonly record struct DirtCount(int Dirty, int Squares)
{
    // Neighbouring squares get dirty together: a grid of a hundred carries about twenty independent looks (our own judgement).
    private const double SquaresPerLook = 5;

    /// <summary>Change sought when none is named: a fifth of the pane.</summary>
    public const double Worthwhile = 0.2;

    /// <summary>The share with its 95 % interval.</summary>
    public ConfidenceInterval Share => Statistics.Share.Wilson(Dirty / SquaresPerLook, Squares / SquaresPerLook);

    /// <summary>Compares two panes after the same route and wetness.</summary>
    /// <param name="before">Counts before, added up.</param>
    /// <param name="after">Counts after, added up.</param>
    /// <param name="planned">Change of share sought; above zero.</param>
    /// <returns>Change of share with its interval, the smallest change that such counts show, and the verdict.</returns>
    /// <validity>Same route, same wetness, glass clean at the start.</validity>
    /// <uncertainty>Weather: repeat it on two wet days before believing it.</uncertainty>
    /// <source key="newcombe-1998" place="square and add, from memory">difference of two shares</source>
    public static (ConfidenceInterval Change, double SmallestShown, Verdict Verdict) Compare(DirtCount before, DirtCount after, double planned = Worthwhile)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(planned);
        ConfidenceInterval change = Statistics.Share.Difference(before.Share, after.Share);
        ConfidenceInterval equivalence = Statistics.Share.Difference(before.ShareAt(0.90), after.ShareAt(0.90));
        double pooled = Math.Clamp((before.Dirty + after.Dirty) / (double)(before.Squares + after.Squares), 0.05, 0.95);
        double smallest = 2.8 * Math.Sqrt(pooled * (1 - pooled) * ((SquaresPerLook / before.Squares) + (SquaresPerLook / after.Squares)));
        return (change, smallest, Verdicts.Of(change, equivalence, smallest, planned, Better.Less));
    }

    private ConfidenceInterval ShareAt(double confidence) => Statistics.Share.Wilson(Dirty / SquaresPerLook, Squares / SquaresPerLook, confidence);
}
