namespace FixPlanner.Core.Quantities;

/// <summary>A room or an amount of fluid. Held in m3. The default value is zero.</summary>
public readonly record struct Volume : IComparable<Volume>
{
    private Volume(double value) => CubicMetres = value;

    /// <summary>The value in m3.</summary>
    public double CubicMetres { get; }

    /// <summary>The value in l.</summary>
    public double Litres => CubicMetres / (1e-3);

    /// <summary>The value in cm3.</summary>
    public double CubicCentimetres => CubicMetres / (1e-6);

    /// <summary>Takes a value in m3.</summary>
    /// <param name="value">In m3: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Volume FromCubicMetres(double value) => new(Valid.Finite(value, "m3"));

    /// <summary>Takes a value in l.</summary>
    /// <param name="value">In l: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Volume FromLitres(double value) => new(Valid.Finite(value * (1e-3), "m3"));

    /// <summary>Takes a value in cm3.</summary>
    /// <param name="value">In cm3: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Volume FromCubicCentimetres(double value) => new(Valid.Finite(value * (1e-6), "m3"));

    /// <inheritdoc/>
    public int CompareTo(Volume other) => CubicMetres.CompareTo(other.CubicMetres);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Volume left, Volume right) => left.CubicMetres < right.CubicMetres;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Volume left, Volume right) => left.CubicMetres > right.CubicMetres;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Volume left, Volume right) => left.CubicMetres <= right.CubicMetres;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Volume left, Volume right) => left.CubicMetres >= right.CubicMetres;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static Volume operator +(Volume left, Volume right) => new(left.CubicMetres + right.CubicMetres);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static Volume operator -(Volume left, Volume right) => new(left.CubicMetres - right.CubicMetres);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static Volume operator -(Volume value) => new(-value.CubicMetres);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static Volume operator *(double factor, Volume value) => FromCubicMetres(factor * value.CubicMetres);

    /// <inheritdoc/>
    public override string ToString() => $"{CubicMetres} m3";
}
