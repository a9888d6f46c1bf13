namespace FixPlanner.Core.Quantities;

/// <summary>A distance or a size. Held in m. The default value is zero.</summary>
public readonly record struct Length : IComparable<Length>
{
    private Length(double value) => Metres = value;

    /// <summary>The value in m.</summary>
    public double Metres { get; }

    /// <summary>The value in mm.</summary>
    public double Millimetres => Metres / (1e-3);

    /// <summary>The value in cm.</summary>
    public double Centimetres => Metres / (1e-2);

    /// <summary>The value in km.</summary>
    public double Kilometres => Metres / (1e3);

    /// <summary>The value in in.</summary>
    public double Inches => Metres / (0.0254);

    /// <summary>The value in ft.</summary>
    public double Feet => Metres / (0.3048);

    /// <summary>Takes a value in m.</summary>
    /// <param name="value">In m: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Length FromMetres(double value) => new(Valid.Finite(value, "m"));

    /// <summary>Takes a value in mm.</summary>
    /// <param name="value">In mm: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Length FromMillimetres(double value) => new(Valid.Finite(value * (1e-3), "m"));

    /// <summary>Takes a value in cm.</summary>
    /// <param name="value">In cm: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Length FromCentimetres(double value) => new(Valid.Finite(value * (1e-2), "m"));

    /// <summary>Takes a value in km.</summary>
    /// <param name="value">In km: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Length FromKilometres(double value) => new(Valid.Finite(value * (1e3), "m"));

    /// <summary>Takes a value in in.</summary>
    /// <param name="value">In in: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Length FromInches(double value) => new(Valid.Finite(value * (0.0254), "m"));

    /// <summary>Takes a value in ft.</summary>
    /// <param name="value">In ft: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Length FromFeet(double value) => new(Valid.Finite(value * (0.3048), "m"));

    /// <inheritdoc/>
    public int CompareTo(Length other) => Metres.CompareTo(other.Metres);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Length left, Length right) => left.Metres < right.Metres;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Length left, Length right) => left.Metres > right.Metres;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Length left, Length right) => left.Metres <= right.Metres;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Length left, Length right) => left.Metres >= right.Metres;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static Length operator +(Length left, Length right) => new(left.Metres + right.Metres);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static Length operator -(Length left, Length right) => new(left.Metres - right.Metres);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static Length operator -(Length value) => new(-value.Metres);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static Length operator *(double factor, Length value) => FromMetres(factor * value.Metres);

    /// <inheritdoc/>
    public override string ToString() => $"{Metres} m";
}
