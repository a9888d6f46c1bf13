namespace FixPlanner.Core.Quantities;

/// <summary>A difference between two temperatures. Held in K. The default value is zero.</summary>
public readonly record struct TemperatureChange : IComparable<TemperatureChange>
{
    private TemperatureChange(double value) => Kelvins = value;

    /// <summary>The value in K.</summary>
    public double Kelvins { get; }

    /// <summary>Takes a value in K.</summary>
    /// <param name="value">In K: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static TemperatureChange FromKelvins(double value) => new(Valid.Finite(value, "K"));

    /// <inheritdoc/>
    public int CompareTo(TemperatureChange other) => Kelvins.CompareTo(other.Kelvins);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(TemperatureChange left, TemperatureChange right) => left.Kelvins < right.Kelvins;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(TemperatureChange left, TemperatureChange right) => left.Kelvins > right.Kelvins;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(TemperatureChange left, TemperatureChange right) => left.Kelvins <= right.Kelvins;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(TemperatureChange left, TemperatureChange right) => left.Kelvins >= right.Kelvins;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static TemperatureChange operator +(TemperatureChange left, TemperatureChange right) => new(left.Kelvins + right.Kelvins);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static TemperatureChange operator -(TemperatureChange left, TemperatureChange right) => new(left.Kelvins - right.Kelvins);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static TemperatureChange operator -(TemperatureChange value) => new(-value.Kelvins);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static TemperatureChange operator *(double factor, TemperatureChange value) => FromKelvins(factor * value.Kelvins);

    /// <inheritdoc/>
    public override string ToString() => $"{Kelvins} K";
}
