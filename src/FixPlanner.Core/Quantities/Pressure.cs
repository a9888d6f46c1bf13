namespace FixPlanner.Core.Quantities;

/// <summary>Absolute pressure. Held in Pa. The default value is zero.</summary>
public readonly record struct Pressure : IComparable<Pressure>
{
    private Pressure(double value) => Pascals = value;

    /// <summary>The value in Pa.</summary>
    public double Pascals { get; }

    /// <summary>The value in hPa.</summary>
    public double Hectopascals => Pascals / (100);

    /// <summary>The value in kPa.</summary>
    public double Kilopascals => Pascals / (1e3);

    /// <summary>The value in inHg.</summary>
    public double InchesOfMercury => Pascals / (3386.389);

    /// <summary>The value in mbar.</summary>
    public double Millibars => Pascals / (100);

    /// <summary>Takes a value in Pa.</summary>
    /// <param name="value">In Pa: zero or more.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or below zero.</exception>
    public static Pressure FromPascals(double value) => new(Valid.NotNegative(value, "Pa"));

    /// <summary>Takes a value in hPa.</summary>
    /// <param name="value">In hPa: zero or more.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or below zero.</exception>
    public static Pressure FromHectopascals(double value) => new(Valid.NotNegative(value * (100), "Pa"));

    /// <summary>Takes a value in kPa.</summary>
    /// <param name="value">In kPa: zero or more.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or below zero.</exception>
    public static Pressure FromKilopascals(double value) => new(Valid.NotNegative(value * (1e3), "Pa"));

    /// <summary>Takes a value in inHg.</summary>
    /// <param name="value">In inHg: zero or more.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or below zero.</exception>
    public static Pressure FromInchesOfMercury(double value) => new(Valid.NotNegative(value * (3386.389), "Pa"));

    /// <summary>Takes a value in mbar.</summary>
    /// <param name="value">In mbar: zero or more.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or below zero.</exception>
    public static Pressure FromMillibars(double value) => new(Valid.NotNegative(value * (100), "Pa"));

    /// <inheritdoc/>
    public int CompareTo(Pressure other) => Pascals.CompareTo(other.Pascals);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Pressure left, Pressure right) => left.Pascals < right.Pascals;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Pressure left, Pressure right) => left.Pascals > right.Pascals;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Pressure left, Pressure right) => left.Pascals <= right.Pascals;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Pressure left, Pressure right) => left.Pascals >= right.Pascals;

    /// <inheritdoc/>
    public override string ToString() => $"{Pascals} Pa";
}
