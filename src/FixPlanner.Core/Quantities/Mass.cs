namespace FixPlanner.Core.Quantities;

/// <summary>An amount of matter. Held in kg. The default value is zero.</summary>
public readonly record struct Mass : IComparable<Mass>
{
    private Mass(double value) => Kilograms = value;

    /// <summary>The value in kg.</summary>
    public double Kilograms { get; }

    /// <summary>The value in g.</summary>
    public double Grams => Kilograms / (1e-3);

    /// <summary>The value in lb.</summary>
    public double Pounds => Kilograms / (0.45359237);

    /// <summary>Takes a value in kg.</summary>
    /// <param name="value">In kg: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Mass FromKilograms(double value) => new(Valid.Finite(value, "kg"));

    /// <summary>Takes a value in g.</summary>
    /// <param name="value">In g: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Mass FromGrams(double value) => new(Valid.Finite(value * (1e-3), "kg"));

    /// <summary>Takes a value in lb.</summary>
    /// <param name="value">In lb: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Mass FromPounds(double value) => new(Valid.Finite(value * (0.45359237), "kg"));

    /// <inheritdoc/>
    public int CompareTo(Mass other) => Kilograms.CompareTo(other.Kilograms);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Mass left, Mass right) => left.Kilograms < right.Kilograms;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Mass left, Mass right) => left.Kilograms > right.Kilograms;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Mass left, Mass right) => left.Kilograms <= right.Kilograms;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Mass left, Mass right) => left.Kilograms >= right.Kilograms;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static Mass operator +(Mass left, Mass right) => new(left.Kilograms + right.Kilograms);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static Mass operator -(Mass left, Mass right) => new(left.Kilograms - right.Kilograms);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static Mass operator -(Mass value) => new(-value.Kilograms);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static Mass operator *(double factor, Mass value) => FromKilograms(factor * value.Kilograms);

    /// <inheritdoc/>
    public override string ToString() => $"{Kilograms} kg";
}
