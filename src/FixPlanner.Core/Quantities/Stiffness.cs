namespace FixPlanner.Core.Quantities;

/// <summary>Force for each metre of give. Held in N/m. The default value is zero.</summary>
public readonly record struct Stiffness : IComparable<Stiffness>
{
    private Stiffness(double value) => NewtonsPerMetre = value;

    /// <summary>The value in N/m.</summary>
    public double NewtonsPerMetre { get; }

    /// <summary>The value in N/mm.</summary>
    public double NewtonsPerMillimetre => NewtonsPerMetre / (1e3);

    /// <summary>Takes a value in N/m.</summary>
    /// <param name="value">In N/m: zero or more.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or below zero.</exception>
    public static Stiffness FromNewtonsPerMetre(double value) => new(Valid.NotNegative(value, "N/m"));

    /// <summary>Takes a value in N/mm.</summary>
    /// <param name="value">In N/mm: zero or more.</param>
    /// <returns>The quantity.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a finite number, or below zero.</exception>
    public static Stiffness FromNewtonsPerMillimetre(double value) => new(Valid.NotNegative(value * (1e3), "N/m"));

    /// <inheritdoc/>
    public int CompareTo(Stiffness other) => NewtonsPerMetre.CompareTo(other.NewtonsPerMetre);

    /// <summary>True when the left is smaller.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <(Stiffness left, Stiffness right) => left.NewtonsPerMetre < right.NewtonsPerMetre;

    /// <summary>True when the left is larger.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >(Stiffness left, Stiffness right) => left.NewtonsPerMetre > right.NewtonsPerMetre;

    /// <summary>True when the left is smaller or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator <=(Stiffness left, Stiffness right) => left.NewtonsPerMetre <= right.NewtonsPerMetre;

    /// <summary>True when the left is larger or equal.</summary>
    /// <param name="left">Left.</param>
    /// <param name="right">Right.</param>
    /// <returns>The answer.</returns>
    public static bool operator >=(Stiffness left, Stiffness right) => left.NewtonsPerMetre >= right.NewtonsPerMetre;

    /// <summary>Scaled.</summary>
    /// <param name="factor">A pure number.</param>
    /// <param name="value">The value.</param>
    /// <returns>The scaled value.</returns>
    public static Stiffness operator *(double factor, Stiffness value) => FromNewtonsPerMetre(factor * value.NewtonsPerMetre);

    /// <inheritdoc/>
    public override string ToString() => $"{NewtonsPerMetre} N/m";
}
