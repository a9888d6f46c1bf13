using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>One thing that a model answers.</summary>
/// <param name="Name">snake_case, ends in the unit (<c>drag_n</c>); without a unit for pure numbers and words.</param>
/// <param name="Unit">The unit of the value; null when the answer is a word.</param>
/// <param name="Meaning">What it is, in plain words.</param>
public sealed record ModelOutput(string Name, Unit? Unit, string Meaning)
{
    /// <summary>A number with a unit.</summary>
    /// <param name="name">Name ending in the unit.</param>
    /// <param name="kind">What it measures.</param>
    /// <param name="unit">Name of the unit, as in <see cref="UnitTable"/>.</param>
    /// <param name="meaning">Plain words.</param>
    /// <returns>The output.</returns>
    public static ModelOutput Of(string name, UnitKind kind, string unit, string meaning) => new(name, UnitTable.Get(kind, unit), meaning);

    /// <summary>An answer in a word or a few.</summary>
    /// <param name="name">Name.</param>
    /// <param name="meaning">Plain words; lists the words that can come.</param>
    /// <returns>The output.</returns>
    public static ModelOutput Word(string name, string meaning) => new(name, null, meaning);
}
