namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>From where to where a value may lie, both ends included, in the unit of its input.</summary>
/// <param name="Low">Lowest.</param>
/// <param name="High">Highest; infinity where there is no end.</param>
public readonly record struct ValueRange(double Low, double High)
{
    /// <summary>No limit at all.</summary>
    public static ValueRange Any { get; } = new(double.NegativeInfinity, double.PositiveInfinity);

    /// <summary>True when the value lies inside.</summary>
    /// <param name="value">In the unit of the input.</param>
    /// <returns>The answer.</returns>
    public bool Holds(double value) => value >= Low && value <= High;
}
