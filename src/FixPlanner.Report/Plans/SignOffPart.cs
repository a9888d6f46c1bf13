using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>A page for the inspector: each gate in force, what is inspected, who signs on what evidence, and what was signed before.</summary>
internal static class SignOffPart
{
    public static IEnumerable<Block> Of(Assessment a)
    {
        GateStatus[] force = [.. a.Plan.Gates.Where(g => g.State == GateState.InForce)];
        SignOff[] recorded = [.. a.Situation.Logbook.SignOffs];
        if (force.Length + recorded.Length == 0)
        {
            yield break;
        }

        yield return new PageBreak();
        yield return new Heading(2, "Sign-offs");
        yield return new Paragraph("A signature says what was inspected on that day. It is no approval for the road: local law and the licensed inspector decide.");
        foreach (GateStatus gate in force)
        {
            yield return new Heading(3, $"{Prose.Plain(gate.Gate.Title)} ({PlanWords.Level(gate.Gate.Level)})");
            yield return new Paragraph($"What is required: {Prose.Plain(gate.Gate.RequiredAction)}");
            foreach (SignOffStatus s in gate.SignOffs.Where(s => !s.Counts))
            {
                yield return new SignatureBox($"{s.Rule.Kind}", Prose.Plain(s.Rule.By), $"{Prose.Plain(s.Rule.Evidence)}{(s.Rule.ValidMonths is { } months ? $" (valid for {months} months)" : "")}{(s.WhyNot.Length > 0 ? $". The recorded one does not count: {Prose.Plain(s.WhyNot)}" : "")}");
            }
        }

        if (recorded.Length > 0)
        {
            yield return new Heading(3, "Signed before");
            yield return new Table(["Gate", "Kind", "By, role", "Date", "Evidence", "Counts"], [.. recorded.Select(s => Row(a, s))]) { Stacked = true };
        }
    }

    private static IReadOnlyList<string> Row(Assessment a, SignOff s)
    {
        Gate? gate = a.Situation.Pack.Gate(s.Gate);
        SignOffStatus? status = a.Plan.Gates.FirstOrDefault(g => g.Gate.Id == gate?.Id)?.SignOffs.FirstOrDefault(x => x.Rule.Kind == s.Kind);
        string counts = status is null ? "no such sign-off in the pack" : status.Counts ? "yes" : $"no: {Prose.Plain(status.WhyNot)}";
        return [Prose.Plain(gate?.Title ?? s.Gate), s.Kind, $"{s.By}, {s.Role}", s.Date is { } day ? $"{day:yyyy-MM-dd}" : "no date", s.Evidence, counts];
    }
}
