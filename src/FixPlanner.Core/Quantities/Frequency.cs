namespace FixPlanner.Core.Quantities;

/// <summary>Beats in a second. Held in Hz. The default value is zero.</summary>
public readonly record struct Frequency : IComparable<Frequency>
{
    private Frequency(double value) => Hertz = value;

    /// <summary>The value in Hz.</summary>
    public double Hertz { get; }

    /// <summary>Takes a value in Hz.</summary>
    /// <param name="value">In Hz: zero or more.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or below zero.</exception>
    public static Frequency FromHertz(double value) => new(Valid.NotNegative(value, "Hz"));

    /// <inheritdoc/>
    public int CompareTo(Frequency other) => Hertz.CompareTo(other.Hertz);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Frequency left, Frequency right) => left.Hertz < right.Hertz;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Frequency left, Frequency right) => left.Hertz > right.Hertz;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Frequency left, Frequency right) => left.Hertz <= right.Hertz;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Frequency left, Frequency right) => left.Hertz >= right.Hertz;

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static Frequency operator *(double factor, Frequency value) => FromHertz(factor * value.Hertz);

    /// <inheritdoc/>
    public override string ToString() => $"{Hertz} Hz";
}
