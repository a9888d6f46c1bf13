using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Interview;

/// <summary>The difference between what is supposed and the proposed plan, in sentences.</summary>
public static class SupposedWords
{
    private const double Equal = 0.005;

    /// <summary>States the difference.</summary>
    /// <param name="supposed">What follows from a supposition.</param>
    /// <returns>Sentences: the sum first, then what comes and goes, what stands against it, and what the gates say.</returns>
    public static IReadOnlyList<string> Of(Supposed supposed)
    {
        ArgumentNullException.ThrowIfNull(supposed);
        WhatIf set = supposed.Set;
        List<string> said = [Sum(set)];
        Add(said, "Comes in", set.ComesIn);
        Add(said, "Goes out", set.GoesOut);
        if (set.BestPoints > set.Ticked.Points + Equal && set.Against.Count == 0)
        {
            said.Add($"The best set within these limits brings {set.BestPoints - set.Ticked.Points:0.00} points more than yours.");
        }

        said.AddRange(set.Against.Select(a => $"Against it: {Prose.Plain(a)}."));
        said.AddRange(Gates(supposed));
        return said;
    }

    private static string Sum(WhatIf set)
    {
        if (set.ComesIn.Count == 0 && set.GoesOut.Count == 0)
        {
            return "This is the proposed set.";
        }

        double points = set.Ticked.Points - set.Proposed.Points;
        string benefit = Math.Abs(points) < Equal ? "brings as much as" : $"brings {Math.Abs(points):0.00} points {(points > 0 ? "more" : "less")} than";
        return $"Your set {benefit} the proposed one, for {Difference(set.Ticked.CostEur - set.Proposed.CostEur, "0", "EUR")} and {Difference(set.Ticked.Hours - set.Proposed.Hours, "0.#", "h")}.";
    }

    private static string Difference(double value, string format, string unit) =>
        Math.Abs(value) < 0.05 ? $"the same {unit}" : $"{Math.Abs(value).ToString(format)} {unit} {(value > 0 ? "more" : "less")}";

    private static void Add(List<string> said, string what, IReadOnlyList<Fix> fixes)
    {
        if (fixes.Count > 0)
        {
            said.Add($"{what}: {string.Join("; ", fixes.Select(f => Prose.Plain(f.Title)))}.");
        }
    }

    private static IEnumerable<string> Gates(Supposed supposed)
    {
        Dictionary<string, GateState> was = supposed.Standing.Gates.ToDictionary(g => g.Gate.Id, g => g.State);
        return supposed.Set.Gates
            .Where(g => g.State is GateState.InForce or GateState.NotChecked && was.GetValueOrDefault(g.Gate.Id, GateState.NotConcerned) != g.State)
            .Select(g => $"Safety gate {ChangeSummary.Name(g.State)}: {Prose.Plain(g.Gate.Title)}. {Prose.Plain(g.Gate.RequiredAction)}");
    }
}
