namespace FixPlanner.Core.Quantities;

/// <summary>Force for each metre of an edge or a gasket. Held in N/m. The default value is zero.</summary>
public readonly record struct LineLoad : IComparable<LineLoad>
{
    private LineLoad(double value) => NewtonsPerMetre = value;

    /// <summary>The value in N/m.</summary>
    public double NewtonsPerMetre { get; }

    /// <summary>The value in N/mm.</summary>
    public double NewtonsPerMillimetre => NewtonsPerMetre / (1e3);

    /// <summary>Takes a value in N/m.</summary>
    /// <param name="value">In N/m: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static LineLoad FromNewtonsPerMetre(double value) => new(Valid.Finite(value, "N/m"));

    /// <summary>Takes a value in N/mm.</summary>
    /// <param name="value">In N/mm: any finite number.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number.</exception>
    public static LineLoad FromNewtonsPerMillimetre(double value) => new(Valid.Finite(value * (1e3), "N/m"));

    /// <inheritdoc/>
    public int CompareTo(LineLoad other) => NewtonsPerMetre.CompareTo(other.NewtonsPerMetre);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(LineLoad left, LineLoad right) => left.NewtonsPerMetre < right.NewtonsPerMetre;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(LineLoad left, LineLoad right) => left.NewtonsPerMetre > right.NewtonsPerMetre;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(LineLoad left, LineLoad right) => left.NewtonsPerMetre <= right.NewtonsPerMetre;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(LineLoad left, LineLoad right) => left.NewtonsPerMetre >= right.NewtonsPerMetre;

    /// <summary>Sum.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The sum.</returns>
    public static LineLoad operator +(LineLoad left, LineLoad right) => new(left.NewtonsPerMetre + right.NewtonsPerMetre);

    /// <summary>Difference.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The difference.</returns>
    public static LineLoad operator -(LineLoad left, LineLoad right) => new(left.NewtonsPerMetre - right.NewtonsPerMetre);

    /// <summary>The other way round.</summary>
    /// <param name="value">The value.</param>
    /// <returns>The value with its sign turned.</returns>
    public static LineLoad operator -(LineLoad value) => new(-value.NewtonsPerMetre);

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static LineLoad operator *(double factor, LineLoad value) => FromNewtonsPerMetre(factor * value.NewtonsPerMetre);

    /// <inheritdoc/>
    public override string ToString() => $"{NewtonsPerMetre} N/m";
}
