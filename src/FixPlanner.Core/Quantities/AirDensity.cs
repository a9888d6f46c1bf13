namespace FixPlanner.Core.Quantities;

/// <summary>Mass of a cubic metre of air. Held in kg/m3. The default value is zero, which is not a valid value and only stands for not set.</summary>
public readonly record struct AirDensity : IComparable<AirDensity>
{
    private AirDensity(double value) => KilogramsPerCubicMetre = value;

    /// <summary>The value in kg/m3.</summary>
    public double KilogramsPerCubicMetre { get; }

    /// <summary>Takes a value in kg/m3.</summary>
    /// <param name="value">In kg/m3: above zero.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or not above zero.</exception>
    public static AirDensity FromKilogramsPerCubicMetre(double value) => new(Valid.Positive(value, "kg/m3"));

    /// <inheritdoc/>
    public int CompareTo(AirDensity other) => KilogramsPerCubicMetre.CompareTo(other.KilogramsPerCubicMetre);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(AirDensity left, AirDensity right) => left.KilogramsPerCubicMetre < right.KilogramsPerCubicMetre;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(AirDensity left, AirDensity right) => left.KilogramsPerCubicMetre > right.KilogramsPerCubicMetre;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(AirDensity left, AirDensity right) => left.KilogramsPerCubicMetre <= right.KilogramsPerCubicMetre;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(AirDensity left, AirDensity right) => left.KilogramsPerCubicMetre >= right.KilogramsPerCubicMetre;

    /// <inheritdoc/>
    public override string ToString() => $"{KilogramsPerCubicMetre} kg/m3";
}
