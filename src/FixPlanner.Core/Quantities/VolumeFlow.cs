namespace FixPlanner.Core.Quantities;

/// <summary>Volume that passes in a second; the sign says which way. Held in m3/s. The default value is zero.</summary>
public readonly record struct VolumeFlow : IComparable<VolumeFlow>
{
    private VolumeFlow(double value) => CubicMetresPerSecond = value;

    /// <summary>The value in m3/s.</summary>
    public double CubicMetresPerSecond { get; }

    /// <summary>The value in m3/h.</summary>
    public double CubicMetresPerHour => CubicMetresPerSecond / (1.0 / 3600);

    /// <summary>The value in l/s.</summary>
    public double LitresPerSecond => CubicMetresPerSecond / (1e-3);

    /// <summary>Takes a value in m3/s.</summary>
    /// <param name="value">In m3/s: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static VolumeFlow FromCubicMetresPerSecond(double value) => new(Valid.Finite(value, "m3/s"));

    /// <summary>Takes a value in m3/h.</summary>
    /// <param name="value">In m3/h: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static VolumeFlow FromCubicMetresPerHour(double value) => new(Valid.Finite(value * (1.0 / 3600), "m3/s"));

    /// <summary>Takes a value in l/s.</summary>
    /// <param name="value">In l/s: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static VolumeFlow FromLitresPerSecond(double value) => new(Valid.Finite(value * (1e-3), "m3/s"));

    /// <inheritdoc/>
    public int CompareTo(VolumeFlow other) => CubicMetresPerSecond.CompareTo(other.CubicMetresPerSecond);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(VolumeFlow left, VolumeFlow right) => left.CubicMetresPerSecond < right.CubicMetresPerSecond;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(VolumeFlow left, VolumeFlow right) => left.CubicMetresPerSecond > right.CubicMetresPerSecond;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(VolumeFlow left, VolumeFlow right) => left.CubicMetresPerSecond <= right.CubicMetresPerSecond;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(VolumeFlow left, VolumeFlow right) => left.CubicMetresPerSecond >= right.CubicMetresPerSecond;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static VolumeFlow operator +(VolumeFlow left, VolumeFlow right) => new(left.CubicMetresPerSecond + right.CubicMetresPerSecond);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static VolumeFlow operator -(VolumeFlow left, VolumeFlow right) => new(left.CubicMetresPerSecond - right.CubicMetresPerSecond);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static VolumeFlow operator -(VolumeFlow value) => new(-value.CubicMetresPerSecond);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static VolumeFlow operator *(double factor, VolumeFlow value) => FromCubicMetresPerSecond(factor * value.CubicMetresPerSecond);

    /// <inheritdoc/>
    public override string ToString() => $"{CubicMetresPerSecond} m3/s";
}
