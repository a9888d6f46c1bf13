namespace FixPlanner.Core.Planning.BestSet;

/// <summary>Which limit keeps what the owner insists on from being done.</summary>
public enum BrokenLimit
{
    /// <summary>None.</summary>
    None,

    /// <summary>Costs more than the money.</summary>
    Money,

    /// <summary>Takes more than the hours.</summary>
    Time,

    /// <summary>Both money and hours.</summary>
    MoneyAndTime,

    /// <summary>Two of them exclude each other.</summary>
    Conflict,

    /// <summary>One of them, or something that it needs, is ruled out.</summary>
    RuledOut,
}

/// <summary>The best set, or the best found by a stop, with what is proven about it.</summary>
/// <param name="Chosen">One flag per item.</param>
/// <param name="Points">Its points.</param>
/// <param name="UpperPoints">No set has more points than this.</param>
/// <param name="Cents">Its likely cost.</param>
/// <param name="Minutes">Its likely time.</param>
/// <param name="Nodes">Nodes searched.</param>
/// <param name="Broken">Which limit forbids what must be in; the set is then empty.</param>
/// <param name="NeedsCents">Cost of what must be in, with what it needs.</param>
/// <param name="NeedsMinutes">Time of what must be in, with what it needs.</param>
internal sealed record SetAnswer(bool[] Chosen, double Points, double UpperPoints, int Cents, int Minutes, long Nodes, BrokenLimit Broken, int NeedsCents, int NeedsMinutes)
{
    /// <summary>True when no better set exists.</summary>
    public bool Proven => UpperPoints <= Points;

    /// <summary>What must be in can be done within the limits.</summary>
    public bool Feasible => Broken == BrokenLimit.None;

    /// <summary>The most that a better set could bring, as a share of this one's points; 0 when proven.</summary>
    public double LargestGap => Proven ? 0 : Points > 0 ? (UpperPoints - Points) / Points : double.PositiveInfinity;
}

/// <summary>When to stop a search, and what breaks ties.</summary>
/// <param name="MostNodes">Nodes after which to stop.</param>
/// <param name="Stop">Asked at every node.</param>
internal readonly record struct SearchLimits(long MostNodes, CancellationToken Stop = default)
{
    /// <summary>Search to the end.</summary>
    public static SearchLimits None => new(long.MaxValue);

    /// <summary>
    /// Points that a cent counts for, so that of two sets of equal points the cheaper is taken: sets whose points differ by less than this times
    /// the difference of their costs (a billionth of a point per EUR) count as equal.
    /// </summary>
    public double PointsPerCent { get; init; } = 1e-11;

    /// <summary>A search that is stopped works out a closer limit before it says what could be better.</summary>
    public bool Quote { get; init; }

    /// <summary>The same for a minute; used instead where time is the scarce thing.</summary>
    public double PointsPerMinute { get; init; }
}
