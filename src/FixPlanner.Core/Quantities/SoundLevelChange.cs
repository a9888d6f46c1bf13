namespace FixPlanner.Core.Quantities;

/// <summary>A change of sound level; minus is quieter. Held in dB. The default value is zero.</summary>
public readonly record struct SoundLevelChange : IComparable<SoundLevelChange>
{
    private SoundLevelChange(double value) => Decibels = value;

    /// <summary>The value in dB.</summary>
    public double Decibels { get; }

    /// <summary>Takes a value in dB.</summary>
    /// <param name="value">In dB: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static SoundLevelChange FromDecibels(double value) => new(Valid.Finite(value, "dB"));

    /// <inheritdoc/>
    public int CompareTo(SoundLevelChange other) => Decibels.CompareTo(other.Decibels);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(SoundLevelChange left, SoundLevelChange right) => left.Decibels < right.Decibels;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(SoundLevelChange left, SoundLevelChange right) => left.Decibels > right.Decibels;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(SoundLevelChange left, SoundLevelChange right) => left.Decibels <= right.Decibels;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(SoundLevelChange left, SoundLevelChange right) => left.Decibels >= right.Decibels;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static SoundLevelChange operator +(SoundLevelChange left, SoundLevelChange right) => new(left.Decibels + right.Decibels);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static SoundLevelChange operator -(SoundLevelChange left, SoundLevelChange right) => new(left.Decibels - right.Decibels);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static SoundLevelChange operator -(SoundLevelChange value) => new(-value.Decibels);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static SoundLevelChange operator *(double factor, SoundLevelChange value) => FromDecibels(factor * value.Decibels);

    /// <inheritdoc/>
    public override string ToString() => $"{Decibels} dB";
}
