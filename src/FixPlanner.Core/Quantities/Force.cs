namespace FixPlanner.Core.Quantities;

/// <summary>A push or a pull. Held in N. The default value is zero.</summary>
public readonly record struct Force : IComparable<Force>
{
    private Force(double value) => Newtons = value;

    /// <summary>The value in N.</summary>
    public double Newtons { get; }

    /// <summary>The value in kgf.</summary>
    public double KilogramsForce => Newtons / (9.80665);

    /// <summary>The value in lbf.</summary>
    public double PoundsForce => Newtons / (4.4482216152605);

    /// <summary>Takes a value in N.</summary>
    /// <param name="value">In N: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Force FromNewtons(double value) => new(Valid.Finite(value, "N"));

    /// <summary>Takes a value in kgf.</summary>
    /// <param name="value">In kgf: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Force FromKilogramsForce(double value) => new(Valid.Finite(value * (9.80665), "N"));

    /// <summary>Takes a value in lbf.</summary>
    /// <param name="value">In lbf: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static Force FromPoundsForce(double value) => new(Valid.Finite(value * (4.4482216152605), "N"));

    /// <inheritdoc/>
    public int CompareTo(Force other) => Newtons.CompareTo(other.Newtons);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Force left, Force right) => left.Newtons < right.Newtons;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Force left, Force right) => left.Newtons > right.Newtons;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Force left, Force right) => left.Newtons <= right.Newtons;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Force left, Force right) => left.Newtons >= right.Newtons;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static Force operator +(Force left, Force right) => new(left.Newtons + right.Newtons);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static Force operator -(Force left, Force right) => new(left.Newtons - right.Newtons);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static Force operator -(Force value) => new(-value.Newtons);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static Force operator *(double factor, Force value) => FromNewtons(factor * value.Newtons);

    /// <inheritdoc/>
    public override string ToString() => $"{Newtons} N";
}
