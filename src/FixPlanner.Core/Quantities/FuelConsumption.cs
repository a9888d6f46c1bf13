namespace FixPlanner.Core.Quantities;

/// <summary>Fuel used for a distance. Held in l/100km. The default value is zero.</summary>
public readonly record struct FuelConsumption : IComparable<FuelConsumption>
{
    private FuelConsumption(double value) => LitresPerHundredKilometres = value;

    /// <summary>The value in l/100km.</summary>
    public double LitresPerHundredKilometres { get; }

    /// <summary>Takes a value in l/100km.</summary>
    /// <param name="value">In l/100km: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static FuelConsumption FromLitresPerHundredKilometres(double value) => new(Valid.Finite(value, "l/100km"));

    /// <inheritdoc/>
    public int CompareTo(FuelConsumption other) => LitresPerHundredKilometres.CompareTo(other.LitresPerHundredKilometres);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(FuelConsumption left, FuelConsumption right) => left.LitresPerHundredKilometres < right.LitresPerHundredKilometres;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(FuelConsumption left, FuelConsumption right) => left.LitresPerHundredKilometres > right.LitresPerHundredKilometres;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(FuelConsumption left, FuelConsumption right) => left.LitresPerHundredKilometres <= right.LitresPerHundredKilometres;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(FuelConsumption left, FuelConsumption right) => left.LitresPerHundredKilometres >= right.LitresPerHundredKilometres;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static FuelConsumption operator +(FuelConsumption left, FuelConsumption right) => new(left.LitresPerHundredKilometres + right.LitresPerHundredKilometres);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static FuelConsumption operator -(FuelConsumption left, FuelConsumption right) => new(left.LitresPerHundredKilometres - right.LitresPerHundredKilometres);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static FuelConsumption operator -(FuelConsumption value) => new(-value.LitresPerHundredKilometres);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static FuelConsumption operator *(double factor, FuelConsumption value) => FromLitresPerHundredKilometres(factor * value.LitresPerHundredKilometres);

    /// <inheritdoc/>
    public override string ToString() => $"{LitresPerHundredKilometres} l/100km";
}
