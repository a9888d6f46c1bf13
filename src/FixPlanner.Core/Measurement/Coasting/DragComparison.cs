using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Statistics;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>Drag area of one configuration against the first one.</summary>
/// <param name="Before">Name of the first configuration.</param>
/// <param name="After">Name of the other.</param>
/// <param name="SquareMetres">Change of drag area in m2, 95 % interval, minus is less drag.</param>
/// <param name="Percent">The same in per cent of the drag area before.</param>
/// <param name="NewtonsAt100">The same as force at 100 km/h in N, in the air of that day.</param>
/// <param name="KilowattsAt100">The same as power at 100 km/h in kW.</param>
/// <param name="Coefficient">The same as drag coefficient; null when the frontal area is not known.</param>
/// <param name="Values">The comparison in m2 with its verdict.</param>
/// <param name="TwoSpeed">The same by the two-speed method; null when it could not be had.</param>
/// <param name="PairsNeeded">Pairs in all that would show the planned change with the scatter of this day; null when over 200.</param>
/// <param name="Warnings">What weakens this comparison.</param>
public sealed record DragComparison(
    string Before,
    string After,
    ConfidenceInterval SquareMetres,
    ConfidenceInterval Percent,
    ConfidenceInterval NewtonsAt100,
    ConfidenceInterval KilowattsAt100,
    ConfidenceInterval? Coefficient,
    ValueComparison Values,
    ValueComparison? TwoSpeed,
    int? PairsNeeded,
    IReadOnlyList<string> Warnings)
{
    private const double Hundred = 100 / 3.6;

    internal static DragComparison[] All(RunPair[] pairs, AnalysisChoices choices, double density, bool shared)
    {
        string[] names = [.. pairs.Select(pair => pair.Configuration).Distinct()];
        List<DragComparison> all = [];
        foreach (string name in names.Skip(1))
        {
            RunPair[] both = [.. pairs.Where(pair => pair.Configuration == names[0] || pair.Configuration == name)];
            if (Of(both, names[0], name, choices, density, shared, names.Length - 1) is { } comparison)
            {
                all.Add(comparison);
            }
        }

        return [.. all];
    }

    private static DragComparison? Of(RunPair[] pairs, string before, string after, AnalysisChoices choices, double density, bool shared, int looks)
    {
        List<string> warnings = [];
        string[] mixed = [.. pairs.GroupBy(pair => pair.Day).Where(day => day.Select(pair => pair.Configuration).Distinct().Count() > 1).Select(day => day.Key)];
        if (shared && mixed.Length > 0 && pairs.Any(pair => !mixed.Contains(pair.Day)))
        {
            warnings.Add(SessionWarnings.OtherDays(string.Join(", ", pairs.Select(pair => pair.Day).Distinct().Except(mixed))));
            pairs = [.. pairs.Where(pair => mixed.Contains(pair.Day))];
        }

        ComparisonRules rules = new(choices.PlannedSquareMetres, Looks: looks);
        if (ValueComparison.Of(ValuesOf(pairs, after, pair => pair.DragArea), rules) is not { } values)
        {
            return null;
        }

        ValueComparison? twoSpeed = ValueComparison.Of(ValuesOf(pairs, after, pair => pair.TwoSpeedDragArea), rules);
        AddWarnings(warnings, values, twoSpeed);
        ConfidenceInterval change = values.Decisive;
        double force = 0.5 * density * Hundred * Hundred;
        return new(
            before, after, change, change.Scaled(100 / values.Before.Mean), change.Scaled(force), change.Scaled(force * Hundred / 1000),
            choices.FrontalArea is { } frontal ? change.Scaled(1 / frontal.SquareMetres) : null,
            values, twoSpeed, Comparing.PairsNeeded.For(values.Scatter, rules.Planned), warnings);
    }

    private static MeasuredValue[] ValuesOf(RunPair[] pairs, string after, Func<RunPair, DragArea> area) =>
        [.. pairs.Select(pair => new MeasuredValue(area(pair).SquareMetres, pair.Configuration == after, pair.Clock, pair.Day))];

    private static void AddWarnings(List<string> warnings, ValueComparison values, ValueComparison? twoSpeed)
    {
        if (values.InTwoBlocks)
        {
            warnings.Add(SessionWarnings.Blocks(values.Order, values.Method == ComparisonMethod.DriftCorrected));
        }

        if (values.DriftSuspected)
        {
            warnings.Add(SessionWarnings.DriftSuspected);
        }

        if (Math.Min(values.Before.Count, values.After.Count) < 4)
        {
            warnings.Add(SessionWarnings.FewPairs);
        }

        if (twoSpeed is not null && Math.Abs(twoSpeed.Decisive.Estimate - values.Decisive.Estimate) > values.StandardError)
        {
            warnings.Add(SessionWarnings.MethodsDisagree);
        }
    }
}
