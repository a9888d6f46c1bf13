namespace FixPlanner.Core.Quantities;

/// <summary>Resistance of a fluid to being sheared. Held in Pa s. The default value is zero, which is not a valid value and only stands for not set.</summary>
public readonly record struct DynamicViscosity : IComparable<DynamicViscosity>
{
    private DynamicViscosity(double value) => PascalSeconds = value;

    /// <summary>The value in Pa s.</summary>
    public double PascalSeconds { get; }

    /// <summary>Takes a value in Pa s.</summary>
    /// <param name="value">In Pa s: above zero.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or not above zero.</exception>
    public static DynamicViscosity FromPascalSeconds(double value) => new(Valid.Positive(value, "Pa s"));

    /// <inheritdoc/>
    public int CompareTo(DynamicViscosity other) => PascalSeconds.CompareTo(other.PascalSeconds);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(DynamicViscosity left, DynamicViscosity right) => left.PascalSeconds < right.PascalSeconds;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(DynamicViscosity left, DynamicViscosity right) => left.PascalSeconds > right.PascalSeconds;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(DynamicViscosity left, DynamicViscosity right) => left.PascalSeconds <= right.PascalSeconds;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(DynamicViscosity left, DynamicViscosity right) => left.PascalSeconds >= right.PascalSeconds;

    /// <inheritdoc/>
    public override string ToString() => $"{PascalSeconds} Pa s";
}
