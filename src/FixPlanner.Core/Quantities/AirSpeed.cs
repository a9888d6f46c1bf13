namespace FixPlanner.Core.Quantities;

/// <summary>Speed of the air past the car, which is the road speed only in still air. Held in m/s. The default value is zero.</summary>
public readonly record struct AirSpeed : IComparable<AirSpeed>
{
    private AirSpeed(double value) => MetresPerSecond = value;

    /// <summary>The value in m/s.</summary>
    public double MetresPerSecond { get; }

    /// <summary>The value in km/h.</summary>
    public double KilometresPerHour => MetresPerSecond / (1 / 3.6);

    /// <summary>The value in mph.</summary>
    public double MilesPerHour => MetresPerSecond / (0.44704);

    /// <summary>The value in kn.</summary>
    public double Knots => MetresPerSecond / (1852.0 / 3600);

    /// <summary>Takes a value in m/s.</summary>
    /// <param name="value">In m/s: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static AirSpeed FromMetresPerSecond(double value) => new(Valid.Finite(value, "m/s"));

    /// <summary>Takes a value in km/h.</summary>
    /// <param name="value">In km/h: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static AirSpeed FromKilometresPerHour(double value) => new(Valid.Finite(value * (1 / 3.6), "m/s"));

    /// <summary>Takes a value in mph.</summary>
    /// <param name="value">In mph: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static AirSpeed FromMilesPerHour(double value) => new(Valid.Finite(value * (0.44704), "m/s"));

    /// <summary>Takes a value in kn.</summary>
    /// <param name="value">In kn: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static AirSpeed FromKnots(double value) => new(Valid.Finite(value * (1852.0 / 3600), "m/s"));

    /// <inheritdoc/>
    public int CompareTo(AirSpeed other) => MetresPerSecond.CompareTo(other.MetresPerSecond);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(AirSpeed left, AirSpeed right) => left.MetresPerSecond < right.MetresPerSecond;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(AirSpeed left, AirSpeed right) => left.MetresPerSecond > right.MetresPerSecond;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(AirSpeed left, AirSpeed right) => left.MetresPerSecond <= right.MetresPerSecond;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(AirSpeed left, AirSpeed right) => left.MetresPerSecond >= right.MetresPerSecond;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static AirSpeed operator +(AirSpeed left, AirSpeed right) => new(left.MetresPerSecond + right.MetresPerSecond);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static AirSpeed operator -(AirSpeed left, AirSpeed right) => new(left.MetresPerSecond - right.MetresPerSecond);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static AirSpeed operator -(AirSpeed value) => new(-value.MetresPerSecond);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static AirSpeed operator *(double factor, AirSpeed value) => FromMetresPerSecond(factor * value.MetresPerSecond);

    /// <inheritdoc/>
    public override string ToString() => $"{MetresPerSecond} m/s";
}
