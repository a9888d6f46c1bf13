namespace FixPlanner.Core.Measurement.Tufts;

/// <summary>Between which two readable rows something happens.</summary>
/// <param name="After">Last row before it; null when it happens before the first readable row.</param>
/// <param name="Before">First row behind it.</param>
public readonly record struct RowGap(int? After, int Before)
{
    /// <summary>Middle between the two rows, in rows from 0.</summary>
    public double Middle => After is { } after ? (after + Before) / 2.0 : Before - 0.5;
}

/// <summary>The flow along one column.</summary>
/// <param name="Column">From 0.</param>
/// <param name="Leaves">Where it first leaves the skin; null when it stays.</param>
/// <param name="Lands">Where it lies down again for good; null when it does not.</param>
public sealed record ColumnLine(int Column, RowGap? Leaves, RowGap? Lands);
