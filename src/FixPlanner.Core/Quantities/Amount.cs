namespace FixPlanner.Core.Quantities;

/// <summary>A number with the unit in which somebody wrote it. Kept as written, so that it can be written back unchanged.</summary>
/// <param name="Value">In <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit.</param>
public readonly record struct Amount(double Value, Unit Unit)
{
    /// <summary>The value in the base unit of its kind, which is SI where SI has one.</summary>
    public double BaseValue => Unit.ToBase(Value);

    /// <summary>The same amount in another unit of the same kind.</summary>
    /// <param name="unit">The unit wanted.</param>
    /// <returns>The value in that unit; as written when it is the same unit.</returns>
    /// <exception cref="ArgumentException">The unit measures something else.</exception>
    public double In(Unit unit)
    {
        ArgumentNullException.ThrowIfNull(unit);
        if (unit.Kind != Unit.Kind)
        {
            throw new ArgumentException($"{unit.Name} does not measure what {Unit.Name} measures", nameof(unit));
        }

        return ReferenceEquals(unit, Unit) ? Value : unit.FromBase(BaseValue);
    }

    /// <inheritdoc/>
    public override string ToString() => Unit.Name.Length == 0 ? $"{Value}" : $"{Value} {Unit.Name}";
}
