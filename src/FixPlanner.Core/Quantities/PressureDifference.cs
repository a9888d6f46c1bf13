namespace FixPlanner.Core.Quantities;

/// <summary>Pressure against another place, for instance inside against outside. Held in Pa. The default value is zero.</summary>
public readonly record struct PressureDifference : IComparable<PressureDifference>
{
    private PressureDifference(double value) => Pascals = value;

    /// <summary>The value in Pa.</summary>
    public double Pascals { get; }

    /// <summary>The value in kPa.</summary>
    public double Kilopascals => Pascals / (1e3);

    /// <summary>The value in MPa.</summary>
    public double Megapascals => Pascals / (1e6);

    /// <summary>The value in mmH2O.</summary>
    public double MillimetresOfWater => Pascals / (9.80665);

    /// <summary>The value in inH2O.</summary>
    public double InchesOfWater => Pascals / (249.08891);

    /// <summary>The value in bar.</summary>
    public double Bars => Pascals / (1e5);

    /// <summary>The value in psi.</summary>
    public double PoundsPerSquareInch => Pascals / (6894.757293168);

    /// <summary>Takes a value in Pa.</summary>
    /// <param name="value">In Pa: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static PressureDifference FromPascals(double value) => new(Valid.Finite(value, "Pa"));

    /// <summary>Takes a value in kPa.</summary>
    /// <param name="value">In kPa: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static PressureDifference FromKilopascals(double value) => new(Valid.Finite(value * (1e3), "Pa"));

    /// <summary>Takes a value in MPa.</summary>
    /// <param name="value">In MPa: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static PressureDifference FromMegapascals(double value) => new(Valid.Finite(value * (1e6), "Pa"));

    /// <summary>Takes a value in mmH2O.</summary>
    /// <param name="value">In mmH2O: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static PressureDifference FromMillimetresOfWater(double value) => new(Valid.Finite(value * (9.80665), "Pa"));

    /// <summary>Takes a value in inH2O.</summary>
    /// <param name="value">In inH2O: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static PressureDifference FromInchesOfWater(double value) => new(Valid.Finite(value * (249.08891), "Pa"));

    /// <summary>Takes a value in bar.</summary>
    /// <param name="value">In bar: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static PressureDifference FromBars(double value) => new(Valid.Finite(value * (1e5), "Pa"));

    /// <summary>Takes a value in psi.</summary>
    /// <param name="value">In psi: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static PressureDifference FromPoundsPerSquareInch(double value) => new(Valid.Finite(value * (6894.757293168), "Pa"));

    /// <inheritdoc/>
    public int CompareTo(PressureDifference other) => Pascals.CompareTo(other.Pascals);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(PressureDifference left, PressureDifference right) => left.Pascals < right.Pascals;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(PressureDifference left, PressureDifference right) => left.Pascals > right.Pascals;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(PressureDifference left, PressureDifference right) => left.Pascals <= right.Pascals;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(PressureDifference left, PressureDifference right) => left.Pascals >= right.Pascals;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static PressureDifference operator +(PressureDifference left, PressureDifference right) => new(left.Pascals + right.Pascals);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static PressureDifference operator -(PressureDifference left, PressureDifference right) => new(left.Pascals - right.Pascals);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static PressureDifference operator -(PressureDifference value) => new(-value.Pascals);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static PressureDifference operator *(double factor, PressureDifference value) => FromPascals(factor * value.Pascals);

    /// <inheritdoc/>
    public override string ToString() => $"{Pascals} Pa";
}
