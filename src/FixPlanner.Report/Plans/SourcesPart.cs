using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>The sources behind the plan, how good each is and how much of it was read.</summary>
internal static class SourcesPart
{
    public static IEnumerable<Block> Of(Assessment a)
    {
        Source[] used = [.. Used(a)];
        if (used.Length == 0)
        {
            yield break;
        }

        yield return new Heading(2, "Sources");
        yield return new Table(["Source", "Where", "Grade, read"], [.. used.Select(s => (IReadOnlyList<string>)[$"{s.Id} {Prose.Plain(s.What)}", s.Where + (s.Erratum is { } wrong ? $". Mind: {Prose.Plain(wrong)}" : ""), $"{s.Grade}; read: {s.Read}"])]) { Stacked = true };
        yield return new Paragraph($"Grades: A standard, law or reviewed paper; B measured by a careful amateur, textbook or agency; C one owner's opinion; D general article. Where a figure names no source it says 'from memory' or 'common practice'. Sizes in the words of fixes and trials: {Prose.Plain(a.Situation.Pack.Scales.Sizes?.Text ?? "not said")}.");
    }

    /// <summary>Sources of the plan's fixes, of the causes they act on, and of the gates in force, in the pack's order.</summary>
    public static IEnumerable<Source> Used(Assessment a)
    {
        HashSet<string> ids = [.. a.Plan.Items.SelectMany(i => i.Fix.EffectsBasis.Sources)];
        ids.UnionWith(a.Plan.Items.SelectMany(i => i.Fix.ActsOn.Keys).Select(m => a.Situation.Pack.Mechanism(m)).OfType<Mechanism>().SelectMany(m => m.Basis.Sources));
        ids.UnionWith(a.Plan.Gates.Where(g => g.State == GateState.InForce).SelectMany(g => g.Gate.Basis.Sources));
        return a.Situation.Pack.Sources.Where(s => ids.Contains(s.Id));
    }
}
