namespace FixPlanner.Core.Quantities;

/// <summary>CdA: drag coefficient times frontal area. Held in m2. The default value is zero.</summary>
public readonly record struct DragArea : IComparable<DragArea>
{
    private DragArea(double value) => SquareMetres = value;

    /// <summary>The value in m2.</summary>
    public double SquareMetres { get; }

    /// <summary>Takes a value in m2.</summary>
    /// <param name="value">In m2: zero or more.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or below zero.</exception>
    public static DragArea FromSquareMetres(double value) => new(Valid.NotNegative(value, "m2"));

    /// <inheritdoc/>
    public int CompareTo(DragArea other) => SquareMetres.CompareTo(other.SquareMetres);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(DragArea left, DragArea right) => left.SquareMetres < right.SquareMetres;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(DragArea left, DragArea right) => left.SquareMetres > right.SquareMetres;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(DragArea left, DragArea right) => left.SquareMetres <= right.SquareMetres;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(DragArea left, DragArea right) => left.SquareMetres >= right.SquareMetres;

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static DragArea operator *(double factor, DragArea value) => FromSquareMetres(factor * value.SquareMetres);

    /// <inheritdoc/>
    public override string ToString() => $"{SquareMetres} m2";
}
