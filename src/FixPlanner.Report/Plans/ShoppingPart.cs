using FixPlanner.Core.Interview;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>What to buy or to find: the materials of every line, each named once with the lines that need it.</summary>
internal static class ShoppingPart
{
    public static IEnumerable<Block> Of(Assessment a)
    {
        (string Item, PlanItem For)[] wanted = [.. a.Plan.Items.SelectMany(i => Parts(Prose.Plain(i.Fix.Materials)).Select(m => (m, i)))];
        if (wanted.Length == 0)
        {
            yield break;
        }

        yield return new Heading(2, "Shopping list");
        yield return new Paragraph("The number is the line of the plan. Buy for a line that says 'try first' or 'look first' only when the trial or the look says so.");
        yield return new Checklist([.. wanted.GroupBy(w => w.Item, StringComparer.OrdinalIgnoreCase).Select(g => $"{g.Key} - for {string.Join(", ", g.Select(w => w.For.Rank).Distinct().Order())}")]);
    }

    // Commas part the items, but not inside brackets.
    private static List<string> Parts(string materials)
    {
        List<string> parts = [];
        int from = 0;
        int depth = 0;
        for (int i = 0; i <= materials.Length; i++)
        {
            char c = i < materials.Length ? materials[i] : ',';
            depth += c == '(' ? 1 : c == ')' ? -1 : 0;
            if (i == materials.Length || (c == ',' && depth == 0))
            {
                string part = materials[from..i].Trim();
                if (part.Length > 0 && part is not ("none" or "no"))
                {
                    parts.Add(part);
                }

                from = i + 1;
            }
        }

        return parts;
    }
}
