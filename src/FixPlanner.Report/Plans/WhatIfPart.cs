using FixPlanner.Core.Interview;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>A supposition beside the proposed plan: figure by figure, and the difference in words.</summary>
public static class WhatIfPart
{
    /// <summary>Said until the models have computed both sets.</summary>
    public const string BeingComputed = "Glass, fresh air and cooling are still being computed for both sets; until then the sums of the rules stand.";

    /// <summary>The figures.</summary>
    /// <param name="supposed">What follows from the supposition.</param>
    /// <returns>A table.</returns>
    public static Table Figures(Supposed supposed)
    {
        ArgumentNullException.ThrowIfNull(supposed);
        WhatIf set = supposed.Set;
        return new(
            ["What", "Car now", "Proposed", "Yours"],
            [
                ["points for your aims", "", Shown.Number(set.Proposed.Points), Shown.Number(set.Ticked.Points)],
                ["likely cost, EUR", "", $"{set.Proposed.CostEur:0}", $"{set.Ticked.CostEur:0}"],
                ["own work, h", "", $"{set.Proposed.Hours:0.#}", $"{set.Ticked.Hours:0.#}"],
                .. set.Changes.Select(c => (IReadOnlyList<string>)[Name(c), c.Now is { } now ? Shown.RangeIn(now, c.Unit) : "", Shown.RangeIn(c.Proposed, c.Unit), Shown.RangeIn(c.Ticked, c.Unit)]),
            ]);
    }

    /// <summary>Figures, then the difference in words.</summary>
    /// <param name="supposed">What follows from the supposition.</param>
    /// <returns>The blocks.</returns>
    public static IReadOnlyList<Block> Of(Supposed supposed) =>
    [
        Figures(supposed),
        .. supposed.Set.WithModels ? Array.Empty<Block>() : [new Paragraph(BeingComputed)],
        new Paragraph($"Changes are as believed now, with 5 and 95 % points of {WhatIf.Draws} draws."),
        new Bullets(SupposedWords.Of(supposed)),
    ];

    private static string Name(WhatIfChange change) => change.Unit.Length > 0 ? $"{change.Title}, {change.Unit}" : Prose.Plain(change.Title);
}
