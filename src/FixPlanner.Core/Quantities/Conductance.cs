namespace FixPlanner.Core.Quantities;

/// <summary>Heat passed for each kelvin of difference. Held in W/K. The default value is zero.</summary>
public readonly record struct Conductance : IComparable<Conductance>
{
    private Conductance(double value) => WattsPerKelvin = value;

    /// <summary>The value in W/K.</summary>
    public double WattsPerKelvin { get; }

    /// <summary>Takes a value in W/K.</summary>
    /// <param name="value">In W/K: zero or more.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or below zero.</exception>
    public static Conductance FromWattsPerKelvin(double value) => new(Valid.NotNegative(value, "W/K"));

    /// <inheritdoc/>
    public int CompareTo(Conductance other) => WattsPerKelvin.CompareTo(other.WattsPerKelvin);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Conductance left, Conductance right) => left.WattsPerKelvin < right.WattsPerKelvin;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Conductance left, Conductance right) => left.WattsPerKelvin > right.WattsPerKelvin;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Conductance left, Conductance right) => left.WattsPerKelvin <= right.WattsPerKelvin;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Conductance left, Conductance right) => left.WattsPerKelvin >= right.WattsPerKelvin;

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static Conductance operator *(double factor, Conductance value) => FromWattsPerKelvin(factor * value.WattsPerKelvin);

    /// <inheritdoc/>
    public override string ToString() => $"{WattsPerKelvin} W/K";
}
