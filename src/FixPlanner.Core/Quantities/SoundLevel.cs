namespace FixPlanner.Core.Quantities;

/// <summary>Sound pressure level, against 20 micropascals. Held in dB. The default value is zero.</summary>
public readonly record struct SoundLevel : IComparable<SoundLevel>
{
    private SoundLevel(double value) => Decibels = value;

    /// <summary>The value in dB.</summary>
    public double Decibels { get; }

    /// <summary>Takes a value in dB.</summary>
    /// <param name="value">In dB: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static SoundLevel FromDecibels(double value) => new(Valid.Finite(value, "dB"));

    /// <inheritdoc/>
    public int CompareTo(SoundLevel other) => Decibels.CompareTo(other.Decibels);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(SoundLevel left, SoundLevel right) => left.Decibels < right.Decibels;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(SoundLevel left, SoundLevel right) => left.Decibels > right.Decibels;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(SoundLevel left, SoundLevel right) => left.Decibels <= right.Decibels;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(SoundLevel left, SoundLevel right) => left.Decibels >= right.Decibels;

    /// <inheritdoc/>
    public override string ToString() => $"{Decibels} dB";
}
