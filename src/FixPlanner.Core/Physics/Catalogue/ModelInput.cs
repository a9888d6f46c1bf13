using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>One thing that a model must be told.</summary>
public sealed record ModelInput
{
    private ModelInput(string name, Unit unit, ValueRange possible, ValueRange valid, string meaning)
    {
        Name = name;
        Unit = unit;
        Possible = possible;
        Valid = valid;
        Meaning = meaning;
    }

    /// <summary>snake_case, ends in the unit (<c>speed_kmh</c>); without a unit for pure numbers, counts and choices.</summary>
    public string Name { get; }

    /// <summary>The unit in which the model takes the value.</summary>
    public Unit Unit { get; }

    /// <summary>Outside this the value is refused: it is impossible or the formula has no meaning.</summary>
    public ValueRange Possible { get; }

    /// <summary>Outside this the answer carries a warning: the formula was not made for it.</summary>
    public ValueRange Valid { get; }

    /// <summary>What it is, in plain words, with the source of the default.</summary>
    public string Meaning { get; }

    /// <summary>What is taken when nothing is known, with its spread; null when the model cannot do without the value, or when it is <see cref="IsOptional"/>.</summary>
    public Triangle? Default { get; private init; }

    /// <summary>True when the model leaves something out if the value is not given.</summary>
    public bool IsOptional { get; private init; }

    /// <summary>The words that may be given in place of a number; empty for numbers. The value is the place of the word in the list, from zero.</summary>
    public IReadOnlyList<string> Choices { get; private init; } = [];

    /// <summary>True when the value must be given.</summary>
    public bool IsRequired => Default is null && !IsOptional;

    /// <summary>An input that must be given.</summary>
    /// <param name="name">Name ending in the unit.</param>
    /// <param name="kind">What it measures.</param>
    /// <param name="unit">Name of the unit, as in <see cref="UnitTable"/>.</param>
    /// <param name="possible">Outside: refused.</param>
    /// <param name="valid">Outside: warned.</param>
    /// <param name="meaning">Plain words.</param>
    /// <returns>The input.</returns>
    public static ModelInput Required(string name, UnitKind kind, string unit, (double Low, double High) possible, (double Low, double High) valid, string meaning) =>
        new(name, UnitTable.Get(kind, unit), new(possible.Low, possible.High), new(valid.Low, valid.High), meaning);

    /// <summary>An input with a default.</summary>
    /// <param name="name">Name ending in the unit.</param>
    /// <param name="kind">What it measures.</param>
    /// <param name="unit">Name of the unit, as in <see cref="UnitTable"/>.</param>
    /// <param name="possible">Outside: refused.</param>
    /// <param name="valid">Outside: warned.</param>
    /// <param name="assumed">Low, likely, high when nothing is known; equal where it is a setting and not a guess.</param>
    /// <param name="meaning">Plain words, with the source of the default.</param>
    /// <returns>The input.</returns>
    public static ModelInput WithDefault(string name, UnitKind kind, string unit, (double Low, double High) possible, (double Low, double High) valid, Triangle assumed, string meaning) =>
        Required(name, kind, unit, possible, valid, meaning) with { Default = assumed };

    /// <summary>An input without which the model leaves something out.</summary>
    /// <param name="name">Name ending in the unit.</param>
    /// <param name="kind">What it measures.</param>
    /// <param name="unit">Name of the unit, as in <see cref="UnitTable"/>.</param>
    /// <param name="possible">Outside: refused.</param>
    /// <param name="valid">Outside: warned.</param>
    /// <param name="meaning">Plain words; says what is left out.</param>
    /// <returns>The input.</returns>
    public static ModelInput Optional(string name, UnitKind kind, string unit, (double Low, double High) possible, (double Low, double High) valid, string meaning) =>
        Required(name, kind, unit, possible, valid, meaning) with { IsOptional = true };

    /// <summary>A choice among words.</summary>
    /// <param name="name">Name.</param>
    /// <param name="choices">At least two words in kebab-case; the first is the default.</param>
    /// <param name="meaning">Plain words.</param>
    /// <returns>The input.</returns>
    public static ModelInput Choice(string name, IReadOnlyList<string> choices, string meaning) =>
        Required(name, UnitKind.Count, string.Empty, (0, choices.Count - 1), (0, choices.Count - 1), meaning)
            with { Choices = choices, Default = Triangle.Certain(0) };
}
