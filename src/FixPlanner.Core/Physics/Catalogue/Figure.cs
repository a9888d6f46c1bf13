using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>A value that went into a figure.</summary>
/// <param name="Name">Name of the model's input, ends in the unit.</param>
/// <param name="Meaning">What it is, in plain words.</param>
/// <param name="Unit">Its unit; empty for a pure number or a word.</param>
/// <param name="Range">Low, likely, high as taken.</param>
/// <param name="From">Where the range comes from, in plain words.</param>
/// <param name="Known">True when the owner said or measured it; false when it was filled in and so widens the range.</param>
public sealed record FigureInput(string Name, string Meaning, string Unit, Triangle Range, string From, bool Known)
{
    /// <summary>The word, for an input that is a choice among words; null for a number.</summary>
    public string? Word { get; init; }
}

/// <summary>What stands behind a figure: it opens into this.</summary>
/// <param name="Model">Name of the model, as the command calc knows it.</param>
/// <param name="Formula">The formula in one line.</param>
/// <param name="Source">Where formula and constants come from.</param>
/// <param name="Validity">Where it holds.</param>
/// <param name="Inputs">What went in.</param>
public sealed record FigureOrigin(string Model, string Formula, string Source, string Validity, IReadOnlyList<FigureInput> Inputs)
{
    /// <summary>What the reader must know beside the figures; may be empty.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];
}

/// <summary>A figure computed for one car, with its range, that opens into formula, inputs and source. It informs and never clears anything.</summary>
/// <param name="Key">Name that ends in the unit, for instance rear_glass_pull_n.</param>
/// <param name="Text">One sentence for the reader, with range and unit.</param>
/// <param name="Unit">Unit of the range; empty for a pure number.</param>
/// <param name="Range">5 %, mean and 95 % over the draws.</param>
/// <param name="Origin">What stands behind it.</param>
/// <param name="MattersMost">Name of the input that it would help most to know better; null when nothing is uncertain.</param>
public sealed record Figure(string Key, string Text, string Unit, Spread Range, FigureOrigin Origin, string? MattersMost)
{
    /// <summary>First words of the meaning of <see cref="MattersMost"/>; null when nothing is uncertain.</summary>
    public string? MattersMostInWords => Origin.Inputs.FirstOrDefault(i => i.Name == MattersMost)?.Meaning.Split([';', ':', '('], 2)[0].TrimEnd() ?? MattersMost;

    /// <summary>Inputs that nobody said or measured: knowing them narrows the range.</summary>
    public IEnumerable<FigureInput> Unknown => Origin.Inputs.Where(i => !i.Known && i.Range.High > i.Range.Low);
}
