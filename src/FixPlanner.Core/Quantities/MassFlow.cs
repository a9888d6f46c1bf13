namespace FixPlanner.Core.Quantities;

/// <summary>Mass that passes in a second; the sign says which way. Held in kg/s. The default value is zero.</summary>
public readonly record struct MassFlow : IComparable<MassFlow>
{
    private MassFlow(double value) => KilogramsPerSecond = value;

    /// <summary>The value in kg/s.</summary>
    public double KilogramsPerSecond { get; }

    /// <summary>Takes a value in kg/s.</summary>
    /// <param name="value">In kg/s: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static MassFlow FromKilogramsPerSecond(double value) => new(Valid.Finite(value, "kg/s"));

    /// <inheritdoc/>
    public int CompareTo(MassFlow other) => KilogramsPerSecond.CompareTo(other.KilogramsPerSecond);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(MassFlow left, MassFlow right) => left.KilogramsPerSecond < right.KilogramsPerSecond;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(MassFlow left, MassFlow right) => left.KilogramsPerSecond > right.KilogramsPerSecond;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(MassFlow left, MassFlow right) => left.KilogramsPerSecond <= right.KilogramsPerSecond;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(MassFlow left, MassFlow right) => left.KilogramsPerSecond >= right.KilogramsPerSecond;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static MassFlow operator +(MassFlow left, MassFlow right) => new(left.KilogramsPerSecond + right.KilogramsPerSecond);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static MassFlow operator -(MassFlow left, MassFlow right) => new(left.KilogramsPerSecond - right.KilogramsPerSecond);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static MassFlow operator -(MassFlow value) => new(-value.KilogramsPerSecond);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static MassFlow operator *(double factor, MassFlow value) => FromKilogramsPerSecond(factor * value.KilogramsPerSecond);

    /// <inheritdoc/>
    public override string ToString() => $"{KilogramsPerSecond} kg/s";
}
