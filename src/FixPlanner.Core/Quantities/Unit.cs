namespace FixPlanner.Core.Quantities;

/// <summary>One unit in which people write a quantity. Made only by <see cref="UnitTable"/>.</summary>
public sealed class Unit
{
    private readonly double factor;
    private readonly double offset;
    private readonly bool reciprocal;

    internal Unit(UnitKind kind, string name, string keySuffix, double factor, IReadOnlyList<string> spellings, double offset = 0, bool reciprocal = false)
    {
        Kind = kind;
        Name = name;
        KeySuffix = keySuffix;
        Spellings = spellings;
        this.factor = factor;
        this.offset = offset;
        this.reciprocal = reciprocal;
    }

    /// <summary>What the unit measures.</summary>
    public UnitKind Kind { get; }

    /// <summary>How we write it, such as <c>km/h</c>; empty for a pure number.</summary>
    public string Name { get; }

    /// <summary>How it ends a key in JSON, such as <c>kmh</c>; empty for a pure number.</summary>
    public string KeySuffix { get; }

    /// <summary>Other ways to write it that are understood.</summary>
    public IReadOnlyList<string> Spellings { get; }

    /// <summary>From a value in this unit to the base unit of its kind.</summary>
    /// <param name="value">In this unit. Zero in a unit of distance for fuel (mpg) gives infinity.</param>
    /// <returns>The value in the base unit named at <see cref="UnitKind"/>.</returns>
    public double ToBase(double value) => reciprocal ? factor / value : (value * factor) + offset;

    /// <summary>From a value in the base unit to this unit.</summary>
    /// <param name="value">In the base unit of the kind.</param>
    /// <returns>The value in this unit.</returns>
    public double FromBase(double value) => reciprocal ? factor / value : (value - offset) / factor;

    /// <inheritdoc/>
    public override string ToString() => Name;
}
