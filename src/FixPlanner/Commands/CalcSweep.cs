using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Commands;

/// <summary>A model computed at evenly spaced values of one input, the others at their likely values.</summary>
internal sealed record CalcSweep(SweepRange Range, IReadOnlyList<(double At, ModelAnswer Answer)> Points, IReadOnlyList<string> Warnings, IReadOnlyList<TextTrouble> Troubles)
{
    /// <summary>Enough for a plot of sixty columns; the table shows every sixth.</summary>
    private const int Steps = 60;

    internal const int StepsOfTheTable = 6;

    public static CalcSweep Of(PhysicsModel model, IReadOnlyDictionary<string, Triangle> given, SweepRange range)
    {
        List<(double At, ModelAnswer Answer)> points = [];
        List<string> warnings = [];
        bool count = range.Input.Unit.Kind is UnitKind.Count or UnitKind.Year;
        Dictionary<string, Triangle> values = model.Inputs
            .Where(input => given.ContainsKey(input.Name) || input.Default is not null)
            .ToDictionary(input => input.Name, input => Triangle.Certain((given.TryGetValue(input.Name, out Triangle value) ? value : input.Default!.Value).Likely));
        for (int step = 0; step <= Steps; step++)
        {
            double at = range.From + ((range.To - range.From) * step / Steps);
            values[range.Input.Name] = Triangle.Certain(count ? Math.Round(at) : at);
            ModelOutcome outcome = ModelRun.Of(model, values);
            if (outcome.Troubles.Count > 0)
            {
                return new(range, [], [], outcome.Troubles);
            }

            points.Add((values[range.Input.Name].Likely, outcome.Answer!));
            warnings.AddRange(outcome.Warnings.Where(warning => !warning.StartsWith(range.Input.Name, StringComparison.Ordinal)));
        }

        if (!range.Input.Valid.Holds(range.From) || !range.Input.Valid.Holds(range.To))
        {
            warnings.Add($"a part of the sweep is outside {range.Input.Valid.Low} to {range.Input.Valid.High} {range.Input.Unit.Name}, for which this formula was made");
        }

        return new(range, points, [.. warnings.Distinct()], []);
    }
}
