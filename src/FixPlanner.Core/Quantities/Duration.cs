namespace FixPlanner.Core.Quantities;

/// <summary>A span of time. Held in s. The default value is zero.</summary>
public readonly record struct Duration : IComparable<Duration>
{
    private Duration(double value) => Seconds = value;

    /// <summary>The value in s.</summary>
    public double Seconds { get; }

    /// <summary>The value in min.</summary>
    public double Minutes => Seconds / (60);

    /// <summary>The value in h.</summary>
    public double Hours => Seconds / (3600);

    /// <summary>Takes a value in s.</summary>
    /// <param name="value">In s: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Duration FromSeconds(double value) => new(Valid.Finite(value, "s"));

    /// <summary>Takes a value in min.</summary>
    /// <param name="value">In min: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Duration FromMinutes(double value) => new(Valid.Finite(value * (60), "s"));

    /// <summary>Takes a value in h.</summary>
    /// <param name="value">In h: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Duration FromHours(double value) => new(Valid.Finite(value * (3600), "s"));

    /// <inheritdoc/>
    public int CompareTo(Duration other) => Seconds.CompareTo(other.Seconds);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Duration left, Duration right) => left.Seconds < right.Seconds;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Duration left, Duration right) => left.Seconds > right.Seconds;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Duration left, Duration right) => left.Seconds <= right.Seconds;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Duration left, Duration right) => left.Seconds >= right.Seconds;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static Duration operator +(Duration left, Duration right) => new(left.Seconds + right.Seconds);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static Duration operator -(Duration left, Duration right) => new(left.Seconds - right.Seconds);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static Duration operator -(Duration value) => new(-value.Seconds);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static Duration operator *(double factor, Duration value) => FromSeconds(factor * value.Seconds);

    /// <inheritdoc/>
    public override string ToString() => $"{Seconds} s";
}
