namespace FixPlanner.Core.Quantities;

/// <summary>Work or heat. Held in J. The default value is zero.</summary>
public readonly record struct Energy : IComparable<Energy>
{
    private Energy(double value) => Joules = value;

    /// <summary>The value in J.</summary>
    public double Joules { get; }

    /// <summary>The value in kJ.</summary>
    public double Kilojoules => Joules / (1e3);

    /// <summary>The value in MJ.</summary>
    public double Megajoules => Joules / (1e6);

    /// <summary>Takes a value in J.</summary>
    /// <param name="value">In J: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Energy FromJoules(double value) => new(Valid.Finite(value, "J"));

    /// <summary>Takes a value in kJ.</summary>
    /// <param name="value">In kJ: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Energy FromKilojoules(double value) => new(Valid.Finite(value * (1e3), "J"));

    /// <summary>Takes a value in MJ.</summary>
    /// <param name="value">In MJ: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Energy FromMegajoules(double value) => new(Valid.Finite(value * (1e6), "J"));

    /// <inheritdoc/>
    public int CompareTo(Energy other) => Joules.CompareTo(other.Joules);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Energy left, Energy right) => left.Joules < right.Joules;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Energy left, Energy right) => left.Joules > right.Joules;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Energy left, Energy right) => left.Joules <= right.Joules;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Energy left, Energy right) => left.Joules >= right.Joules;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static Energy operator +(Energy left, Energy right) => new(left.Joules + right.Joules);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static Energy operator -(Energy left, Energy right) => new(left.Joules - right.Joules);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static Energy operator -(Energy value) => new(-value.Joules);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static Energy operator *(double factor, Energy value) => FromJoules(factor * value.Joules);

    /// <inheritdoc/>
    public override string ToString() => $"{Joules} J";
}
