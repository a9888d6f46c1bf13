using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>A value for one input of a model, with where it comes from.</summary>
/// <param name="Range">Low, likely, high in the unit of the input.</param>
/// <param name="From">Where it comes from, in plain words.</param>
/// <param name="Known">True when the owner said or measured it.</param>
public readonly record struct GivenInput(Triangle Range, string From, bool Known);

/// <summary>One run of a model of the catalogue for one car: its outputs as figures that open into what went in.</summary>
public sealed class ModelFigures
{
    // Runs of the cars that were worked out last: most answers leave most of what goes into a model as it was.
    private static readonly Kept<string, ModelFigures?> Recent = new(96);

    private readonly PhysicsModel model;
    private readonly ModelOutcome outcome;
    private readonly FigureOrigin origin;

    private ModelFigures(PhysicsModel model, ModelOutcome outcome, FigureOrigin origin) => (this.model, this.outcome, this.origin) = (model, outcome, origin);

    /// <summary>Runs a model.</summary>
    /// <param name="name">Name of the model.</param>
    /// <param name="given">Input name to what is taken; the rest is the model's default.</param>
    /// <returns>The run, or null when the values cannot go together or a needed one is missing.</returns>
    /// <exception cref="ArgumentException">No such model.</exception>
    public static ModelFigures? Run(string name, IReadOnlyDictionary<string, GivenInput> given)
    {
        PhysicsModel model = ModelCatalogue.Find(name) ?? throw new ArgumentException($"no model is called {name}", nameof(name));
        Dictionary<string, GivenInput> taken = given.Where(g => model.Inputs.Any(i => i.Name == g.Key)).ToDictionary();
        return Recent.Of(Key(name, taken), () => Run(model, taken));
    }

    private static ModelFigures? Run(PhysicsModel model, Dictionary<string, GivenInput> taken)
    {
        ModelOutcome outcome = ModelRun.Of(model, taken.ToDictionary(g => g.Key, g => g.Value.Range));
        return outcome.Answer is null ? null : new(model, outcome, new(model.Name, model.Formula, model.Source, model.Validity, [.. model.Inputs.Where(i => outcome.Used.ContainsKey(i.Name)).Select(i => Input(i, outcome.Used[i.Name], taken))]) { Warnings = outcome.Warnings });
    }

    /// <summary>An output in words; null where the model has none.</summary>
    /// <param name="output">Name of the output.</param>
    /// <returns>The word.</returns>
    public string? Word(string output) => outcome.Answer!.Words.GetValueOrDefault(output);

    /// <summary>An output as a figure.</summary>
    /// <param name="output">Name of the output.</param>
    /// <param name="key">Key of the figure, ends in the unit.</param>
    /// <param name="text">The sentence; {0} stands for the range with its unit.</param>
    /// <returns>The figure, or null where the model gave none.</returns>
    public Figure? Of(string output, string key, string text)
    {
        if (Range(output) is not { } range)
        {
            return null;
        }

        string unit = model.Outputs.First(o => o.Name == output).Unit?.Name ?? "";
        return new(key, string.Format(text, RangeText.Of(range, unit)), unit, range, origin, outcome.Ranges.GetValueOrDefault(output)?.MattersMost);
    }

    /// <summary>The range of an output; null where the model gave none.</summary>
    /// <param name="output">Name of the output.</param>
    /// <returns>The range.</returns>
    public Spread? Range(string output)
    {
        PropagatedOutput? drawn = outcome.Ranges.GetValueOrDefault(output);
        double likely = outcome.Answer!.Numbers.GetValueOrDefault(output, double.NaN);
        return drawn?.Spread ?? (double.IsFinite(likely) ? Spread.Certain(likely) : null);
    }

    private static string Key(string name, Dictionary<string, GivenInput> taken) => string.Join('\n', taken.OrderBy(t => t.Key, StringComparer.Ordinal)
        .Select(t => $"{t.Key} {t.Value.Range.Low:R} {t.Value.Range.Likely:R} {t.Value.Range.High:R} {t.Value.Known} {t.Value.From}").Prepend(name));

    private static FigureInput Input(ModelInput input, Triangle used, Dictionary<string, GivenInput> taken) =>
        new(input.Name, input.Meaning, input.Choices.Count > 0 ? "" : input.Unit.Name, used,
            taken.TryGetValue(input.Name, out GivenInput given) ? given.From : used.High > used.Low ? "nobody said: the usual range" : "taken as set", taken.ContainsKey(input.Name) && taken[input.Name].Known)
        {
            Word = input.Choices.Count > 0 ? input.Choices[(int)used.Likely] : null,
        };
}
