namespace FixPlanner.Core.Quantities;

/// <summary>A surface. Held in m2. The default value is zero.</summary>
public readonly record struct Area : IComparable<Area>
{
    private Area(double value) => SquareMetres = value;

    /// <summary>The value in m2.</summary>
    public double SquareMetres { get; }

    /// <summary>The value in cm2.</summary>
    public double SquareCentimetres => SquareMetres / (1e-4);

    /// <summary>The value in mm2.</summary>
    public double SquareMillimetres => SquareMetres / (1e-6);

    /// <summary>The value in ft2.</summary>
    public double SquareFeet => SquareMetres / (0.3048 * 0.3048);

    /// <summary>Takes a value in m2.</summary>
    /// <param name="value">In m2: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Area FromSquareMetres(double value) => new(Valid.Finite(value, "m2"));

    /// <summary>Takes a value in cm2.</summary>
    /// <param name="value">In cm2: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Area FromSquareCentimetres(double value) => new(Valid.Finite(value * (1e-4), "m2"));

    /// <summary>Takes a value in mm2.</summary>
    /// <param name="value">In mm2: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Area FromSquareMillimetres(double value) => new(Valid.Finite(value * (1e-6), "m2"));

    /// <summary>Takes a value in ft2.</summary>
    /// <param name="value">In ft2: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Area FromSquareFeet(double value) => new(Valid.Finite(value * (0.3048 * 0.3048), "m2"));

    /// <inheritdoc/>
    public int CompareTo(Area other) => SquareMetres.CompareTo(other.SquareMetres);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Area left, Area right) => left.SquareMetres < right.SquareMetres;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Area left, Area right) => left.SquareMetres > right.SquareMetres;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Area left, Area right) => left.SquareMetres <= right.SquareMetres;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Area left, Area right) => left.SquareMetres >= right.SquareMetres;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static Area operator +(Area left, Area right) => new(left.SquareMetres + right.SquareMetres);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static Area operator -(Area left, Area right) => new(left.SquareMetres - right.SquareMetres);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static Area operator -(Area value) => new(-value.SquareMetres);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static Area operator *(double factor, Area value) => FromSquareMetres(factor * value.SquareMetres);

    /// <inheritdoc/>
    public override string ToString() => $"{SquareMetres} m2";
}
