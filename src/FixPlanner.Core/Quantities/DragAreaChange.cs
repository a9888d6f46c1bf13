namespace FixPlanner.Core.Quantities;

/// <summary>A change of CdA; minus is less drag. Held in m2. The default value is zero.</summary>
public readonly record struct DragAreaChange : IComparable<DragAreaChange>
{
    private DragAreaChange(double value) => SquareMetres = value;

    /// <summary>The value in m2.</summary>
    public double SquareMetres { get; }

    /// <summary>Takes a value in m2.</summary>
    /// <param name="value">In m2: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static DragAreaChange FromSquareMetres(double value) => new(Valid.Finite(value, "m2"));

    /// <inheritdoc/>
    public int CompareTo(DragAreaChange other) => SquareMetres.CompareTo(other.SquareMetres);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(DragAreaChange left, DragAreaChange right) => left.SquareMetres < right.SquareMetres;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(DragAreaChange left, DragAreaChange right) => left.SquareMetres > right.SquareMetres;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(DragAreaChange left, DragAreaChange right) => left.SquareMetres <= right.SquareMetres;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(DragAreaChange left, DragAreaChange right) => left.SquareMetres >= right.SquareMetres;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static DragAreaChange operator +(DragAreaChange left, DragAreaChange right) => new(left.SquareMetres + right.SquareMetres);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static DragAreaChange operator -(DragAreaChange left, DragAreaChange right) => new(left.SquareMetres - right.SquareMetres);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static DragAreaChange operator -(DragAreaChange value) => new(-value.SquareMetres);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static DragAreaChange operator *(double factor, DragAreaChange value) => FromSquareMetres(factor * value.SquareMetres);

    /// <inheritdoc/>
    public override string ToString() => $"{SquareMetres} m2";
}
