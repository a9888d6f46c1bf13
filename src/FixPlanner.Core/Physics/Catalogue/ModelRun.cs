using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>Runs a model with what is known: checks the values, fills in defaults, computes, and carries the ranges through.</summary>
public static class ModelRun
{
    /// <summary>Runs a model.</summary>
    /// <param name="model">The model.</param>
    /// <param name="given">Input name to value or range, in the declared unit of the input. Unknown names are refused.</param>
    /// <returns>Answer and ranges, or every reason why not.</returns>
    public static ModelOutcome Of(PhysicsModel model, IReadOnlyDictionary<string, Triangle> given)
    {
        ArgumentNullException.ThrowIfNull(model);
        ArgumentNullException.ThrowIfNull(given);
        List<TextTrouble> troubles = ModelChecks.Troubles(model, given);
        if (troubles.Count > 0)
        {
            return ModelOutcome.Refused(troubles);
        }

        Dictionary<string, Triangle> used = WithDefaults(model, given);
        ModelAnswer answer = model.Compute(new(model.Inputs, used.ToDictionary(pair => pair.Key, pair => pair.Value.Likely)));
        if (answer.Impossible is { } reason)
        {
            return ModelOutcome.Refused([new(reason, "the values cannot go together", "change one of them")]);
        }

        ModelOutcome outcome = new() { Answer = answer, Used = used, Warnings = [.. ModelChecks.Warnings(model, used), .. answer.Warnings] };
        return used.Values.Any(range => range.High > range.Low) ? WithRanges(model, outcome) : outcome;
    }

    private static Dictionary<string, Triangle> WithDefaults(PhysicsModel model, IReadOnlyDictionary<string, Triangle> given)
    {
        Dictionary<string, Triangle> used = [];
        foreach (ModelInput input in model.Inputs)
        {
            if (given.TryGetValue(input.Name, out Triangle range))
            {
                used[input.Name] = range;
            }
            else if (input.Default is { } assumed)
            {
                used[input.Name] = assumed;
            }
        }

        return used;
    }

    private static ModelOutcome WithRanges(PhysicsModel model, ModelOutcome outcome)
    {
        string[] names = [.. outcome.Answer!.Numbers.Keys];
        UncertainInput[] inputs = [.. outcome.Used.Select(pair => new UncertainInput(pair.Key, Uncertain.Triangular(pair.Value)))];
        Dictionary<string, double> values = [];
        Propagated propagated = MonteCarlo.Propagate(inputs, names.Length, (draw, outputs) =>
        {
            for (int i = 0; i < inputs.Length; i++)
            {
                values[inputs[i].Name] = draw[i];
            }

            ModelAnswer answer = model.Compute(new(model.Inputs, values));
            for (int i = 0; i < outputs.Length; i++)
            {
                outputs[i] = answer.At(i, names[i]);
            }
        });

        string[] warnings = propagated.Outputs.Any(output => output.Missing > 0)
            ? [.. outcome.Warnings, "in some of the draws the model had no answer; the range is that of the others"]
            : [.. outcome.Warnings];
        return outcome with { Warnings = warnings, Ranges = Named(names, propagated) };
    }

    private static Dictionary<string, PropagatedOutput> Named(string[] names, Propagated propagated)
    {
        Dictionary<string, PropagatedOutput> ranges = [];
        for (int i = 0; i < names.Length; i++)
        {
            if (propagated.Outputs[i].Spread is not null)
            {
                ranges[names[i]] = propagated.Outputs[i];
            }
        }

        return ranges;
    }
}
