using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>What is not in the plan and why, by reason; and what people do that usually disappoints.</summary>
internal static class LeftOutPart
{
    public static IEnumerable<Block> Of(Assessment a)
    {
        KnowledgePack pack = a.Situation.Pack;
        yield return new Heading(2, "Left out, and why");
        yield return new Table(["Why", "Fixes"], [.. a.Plan.LeftOut.Where(l => l.Why != LeftOutWhy.NotForThisCar)
            .OrderBy(l => l.Why).ThenBy(l => l.Fix.Id, StringComparer.Ordinal)
            .GroupBy(l => Prose.Plain(l.InWords))
            .Select(g => (IReadOnlyList<string>)[Capital(g.Key), string.Join("; ", g.Select(l => Prose.Plain(l.Fix.Title)))])]) { Stacked = true };
        yield return new Paragraph(HowWellTried([.. a.Plan.LeftOut.Where(l => l.Why != LeftOutWhy.NotForThisCar).Select(l => l.Fix)]));
        int others = a.Plan.LeftOut.Count(l => l.Why == LeftOutWhy.NotForThisCar);
        if (others > 0)
        {
            yield return new Paragraph($"{others} more are not for this car by what you said of it.");
        }

        if (pack.Disappointments.Count > 0)
        {
            yield return new Heading(2, "What usually disappoints");
            yield return new Table(["What people do", "Why it disappoints", "Do instead"], [.. pack.Disappointments.Select(d => (IReadOnlyList<string>)[Prose.Plain(d.What), Prose.Plain(d.Why), Prose.Plain(d.DoInstead)])]) { Stacked = true };
        }
    }

    // Beside each fix it would be the same word a hundred times: said once by word.
    private static string HowWellTried(Fix[] fixes) => "How well tried: " + string.Join("; ", fixes
        .GroupBy(PlanWords.Tried).OrderByDescending(g => g.Count())
        .Select((g, i) => i == 0 ? $"the rules of {(g.Count() == fixes.Length ? "all" : "the others")} are {g.Key}" : $"{g.Key}: {string.Join(", ", g.Select(f => Prose.Plain(f.Title)))}")) + ".";

    private static string Capital(string words) => words.Length == 0 ? words : char.ToUpperInvariant(words[0]) + words[1..];
}
