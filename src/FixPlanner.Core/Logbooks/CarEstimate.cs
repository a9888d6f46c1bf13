using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Logbooks;

/// <summary>The car in figures: what the owner measured, and the body template's range for the rest.</summary>
/// <param name="FrontalAreaSquareMetres">Frontal area, in m2.</param>
/// <param name="DragCoefficient">Drag coefficient.</param>
/// <param name="DragAreaSquareMetres">Drag area, in m2; mean and 5 to 95 % points.</param>
/// <param name="MassKilograms">Mass as driven, in kg.</param>
/// <param name="Filled">Names of what the template filled: measuring these narrows the range.</param>
public sealed record CarEstimate(Triangle FrontalAreaSquareMetres, Triangle DragCoefficient, Spread DragAreaSquareMetres, Triangle MassKilograms, IReadOnlyList<string> Filled)
{
    /// <summary>Works it out.</summary>
    /// <param name="s">What is known.</param>
    /// <returns>The estimate; with an unknown body shape the ranges of all shapes together.</returns>
    public static CarEstimate Of(Situation s)
    {
        string? style = s.Fact("body_style")?.Word;
        BodyTemplate[] templates = [.. s.Pack.BodyTemplates.Where(t => t.BodyStyle == style)];
        BodyTemplate[] used = templates.Length > 0 ? templates : [.. s.Pack.BodyTemplates];
        List<string> filled = [];
        Triangle Take(string name)
        {
            if (s.Number(name) is { } measured)
            {
                return Triangle.Certain(measured);
            }

            filled.Add(name);
            Triangle[] ranges = [.. used.Where(t => t.Ranges.ContainsKey(name)).Select(t => t.Ranges[name])];
            return ranges.Length == 0 ? Triangle.Certain(1) : new(ranges.Min(r => r.Low), ranges.Average(r => r.Likely), ranges.Max(r => r.High));
        }

        Triangle area = s.Number("frontal_area_m2") is { } known ? Triangle.Certain(known) : Product(Take("width_m"), Take("height_m"), Take("frontal_area_factor"));
        Triangle cd = Take("drag_coefficient");
        return new(area, cd, SpreadOf(Product(area, cd)), Take("mass_kg"), filled);
    }

    // Independent ranges multiply by adding their relative variances; the result is kept as a triangle of the same mean and spread.
    private static Triangle Product(params Triangle[] ranges)
    {
        double mean = ranges.Aggregate(1.0, (m, r) => m * r.Mean);
        double relative = ranges.Sum(r => r.Variance / (r.Mean * r.Mean));
        double half = Math.Sqrt(6 * relative) * mean;
        return new(Math.Max(mean - half, 1e-6), mean, mean + half);
    }

    private static Spread SpreadOf(Triangle t) => new(t.Quantile(0.05), t.Mean, t.Quantile(0.95));
}
