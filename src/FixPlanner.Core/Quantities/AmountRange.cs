namespace FixPlanner.Core.Quantities;

/// <summary>A range with the unit in which somebody wrote it: <c>0.9..1.1 m2</c>, <c>20..35..60 EUR</c>, or one value.</summary>
/// <param name="Values">Low, likely, high in <paramref name="Unit"/>; without width for one value.</param>
/// <param name="Unit">The unit.</param>
public readonly record struct AmountRange(Triangle Values, Unit Unit)
{
    /// <summary>The range in the base unit of its kind, in numerical order.</summary>
    public Triangle BaseValues => Triangle.Between(Unit.ToBase(Values.Low), Unit.ToBase(Values.Likely), Unit.ToBase(Values.High));

    /// <summary>The same range in another unit of the same kind.</summary>
    /// <param name="unit">The unit wanted.</param>
    /// <returns>The range in that unit, in numerical order.</returns>
    /// <exception cref="ArgumentException">The unit measures something else.</exception>
    public Triangle In(Unit unit) =>
        Triangle.Between(new Amount(Values.Low, Unit).In(unit), new Amount(Values.Likely, Unit).In(unit), new Amount(Values.High, Unit).In(unit));
}
