namespace FixPlanner.Core.Quantities;

/// <summary>Carbon dioxide that leaves the tailpipe for each kilometre. Held in g/km. The default value is zero.</summary>
public readonly record struct CarbonDioxideRate : IComparable<CarbonDioxideRate>
{
    private CarbonDioxideRate(double value) => GramsPerKilometre = value;

    /// <summary>The value in g/km.</summary>
    public double GramsPerKilometre { get; }

    /// <summary>Takes a value in g/km.</summary>
    /// <param name="value">In g/km: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static CarbonDioxideRate FromGramsPerKilometre(double value) => new(Valid.Finite(value, "g/km"));

    /// <inheritdoc/>
    public int CompareTo(CarbonDioxideRate other) => GramsPerKilometre.CompareTo(other.GramsPerKilometre);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(CarbonDioxideRate left, CarbonDioxideRate right) => left.GramsPerKilometre < right.GramsPerKilometre;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(CarbonDioxideRate left, CarbonDioxideRate right) => left.GramsPerKilometre > right.GramsPerKilometre;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(CarbonDioxideRate left, CarbonDioxideRate right) => left.GramsPerKilometre <= right.GramsPerKilometre;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(CarbonDioxideRate left, CarbonDioxideRate right) => left.GramsPerKilometre >= right.GramsPerKilometre;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static CarbonDioxideRate operator +(CarbonDioxideRate left, CarbonDioxideRate right) => new(left.GramsPerKilometre + right.GramsPerKilometre);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static CarbonDioxideRate operator -(CarbonDioxideRate left, CarbonDioxideRate right) => new(left.GramsPerKilometre - right.GramsPerKilometre);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static CarbonDioxideRate operator -(CarbonDioxideRate value) => new(-value.GramsPerKilometre);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static CarbonDioxideRate operator *(double factor, CarbonDioxideRate value) => FromGramsPerKilometre(factor * value.GramsPerKilometre);

    /// <inheritdoc/>
    public override string ToString() => $"{GramsPerKilometre} g/km";
}
