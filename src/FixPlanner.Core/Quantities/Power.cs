namespace FixPlanner.Core.Quantities;

/// <summary>Work or heat for each second. Held in W. The default value is zero.</summary>
public readonly record struct Power : IComparable<Power>
{
    private Power(double value) => Watts = value;

    /// <summary>The value in W.</summary>
    public double Watts { get; }

    /// <summary>The value in kW.</summary>
    public double Kilowatts => Watts / (1e3);

    /// <summary>The value in PS.</summary>
    public double MetricHorsepower => Watts / (735.49875);

    /// <summary>The value in hp.</summary>
    public double MechanicalHorsepower => Watts / (745.69987158227);

    /// <summary>Takes a value in W.</summary>
    /// <param name="value">In W: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Power FromWatts(double value) => new(Valid.Finite(value, "W"));

    /// <summary>Takes a value in kW.</summary>
    /// <param name="value">In kW: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Power FromKilowatts(double value) => new(Valid.Finite(value * (1e3), "W"));

    /// <summary>Takes a value in PS.</summary>
    /// <param name="value">In PS: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Power FromMetricHorsepower(double value) => new(Valid.Finite(value * (735.49875), "W"));

    /// <summary>Takes a value in hp.</summary>
    /// <param name="value">In hp: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Power FromMechanicalHorsepower(double value) => new(Valid.Finite(value * (745.69987158227), "W"));

    /// <inheritdoc/>
    public int CompareTo(Power other) => Watts.CompareTo(other.Watts);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Power left, Power right) => left.Watts < right.Watts;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Power left, Power right) => left.Watts > right.Watts;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Power left, Power right) => left.Watts <= right.Watts;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Power left, Power right) => left.Watts >= right.Watts;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static Power operator +(Power left, Power right) => new(left.Watts + right.Watts);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static Power operator -(Power left, Power right) => new(left.Watts - right.Watts);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static Power operator -(Power value) => new(-value.Watts);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static Power operator *(double factor, Power value) => FromWatts(factor * value.Watts);

    /// <inheritdoc/>
    public override string ToString() => $"{Watts} W";
}
