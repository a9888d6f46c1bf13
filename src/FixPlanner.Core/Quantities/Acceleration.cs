namespace FixPlanner.Core.Quantities;

/// <summary>Rate at which speed changes; negative while slowing. Held in m/s2. The default value is zero.</summary>
public readonly record struct Acceleration : IComparable<Acceleration>
{
    private Acceleration(double value) => MetresPerSecondSquared = value;

    /// <summary>The value in m/s2.</summary>
    public double MetresPerSecondSquared { get; }

    /// <summary>Takes a value in m/s2.</summary>
    /// <param name="value">In m/s2: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Acceleration FromMetresPerSecondSquared(double value) => new(Valid.Finite(value, "m/s2"));

    /// <inheritdoc/>
    public int CompareTo(Acceleration other) => MetresPerSecondSquared.CompareTo(other.MetresPerSecondSquared);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Acceleration left, Acceleration right) => left.MetresPerSecondSquared < right.MetresPerSecondSquared;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Acceleration left, Acceleration right) => left.MetresPerSecondSquared > right.MetresPerSecondSquared;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Acceleration left, Acceleration right) => left.MetresPerSecondSquared <= right.MetresPerSecondSquared;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Acceleration left, Acceleration right) => left.MetresPerSecondSquared >= right.MetresPerSecondSquared;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static Acceleration operator +(Acceleration left, Acceleration right) => new(left.MetresPerSecondSquared + right.MetresPerSecondSquared);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static Acceleration operator -(Acceleration left, Acceleration right) => new(left.MetresPerSecondSquared - right.MetresPerSecondSquared);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static Acceleration operator -(Acceleration value) => new(-value.MetresPerSecondSquared);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static Acceleration operator *(double factor, Acceleration value) => FromMetresPerSecondSquared(factor * value.MetresPerSecondSquared);

    /// <inheritdoc/>
    public override string ToString() => $"{MetresPerSecondSquared} m/s2";
}
