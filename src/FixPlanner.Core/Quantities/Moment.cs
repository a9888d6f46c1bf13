namespace FixPlanner.Core.Quantities;

/// <summary>A turning effect; also the torque of an engine. Held in N m. The default value is zero.</summary>
public readonly record struct Moment : IComparable<Moment>
{
    private Moment(double value) => NewtonMetres = value;

    /// <summary>The value in N m.</summary>
    public double NewtonMetres { get; }

    /// <summary>Takes a value in N m.</summary>
    /// <param name="value">In N m: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Moment FromNewtonMetres(double value) => new(Valid.Finite(value, "N m"));

    /// <inheritdoc/>
    public int CompareTo(Moment other) => NewtonMetres.CompareTo(other.NewtonMetres);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Moment left, Moment right) => left.NewtonMetres < right.NewtonMetres;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Moment left, Moment right) => left.NewtonMetres > right.NewtonMetres;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Moment left, Moment right) => left.NewtonMetres <= right.NewtonMetres;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Moment left, Moment right) => left.NewtonMetres >= right.NewtonMetres;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static Moment operator +(Moment left, Moment right) => new(left.NewtonMetres + right.NewtonMetres);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static Moment operator -(Moment left, Moment right) => new(left.NewtonMetres - right.NewtonMetres);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static Moment operator -(Moment value) => new(-value.NewtonMetres);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static Moment operator *(double factor, Moment value) => FromNewtonMetres(factor * value.NewtonMetres);

    /// <inheritdoc/>
    public override string ToString() => $"{NewtonMetres} N m";
}
