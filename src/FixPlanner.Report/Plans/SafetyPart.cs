using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>Safety: the gates in force, in their order, what is not checked, and the cautions that always hold.</summary>
internal static class SafetyPart
{
    public static IEnumerable<Block> Of(Assessment a)
    {
        KnowledgePack pack = a.Situation.Pack;
        yield return new Heading(2, "Safety first");
        GateStatus[] force = [.. a.Plan.Gates.Where(g => g.State == GateState.InForce)];
        GateStatus[] open = [.. a.Plan.Gates.Where(g => g.State == GateState.NotChecked)];
        if (force.Length == 0)
        {
            yield return new Paragraph("No safety gate is in force on what is known now. That is not the same as safe: see what is not checked.");
        }

        foreach (GateStatus gate in force)
        {
            yield return new Warning(PlanWords.Level(gate.Gate.Level).ToUpperInvariant(), $"**{Prose.Plain(gate.Gate.Title)}** is in force. {Prose.Plain(gate.Gate.RequiredAction)}");
            yield return new Bullets([.. Facts(pack, gate)]);
        }

        if (open.Length > 0)
        {
            yield return new Paragraph("Not checked: until these are known, drive no faster than the car is driven now.");
            yield return new Table(["Gate", "Level", "Find out first"], [.. open.Select(g => (IReadOnlyList<string>)[Prose.Plain(g.Gate.Title), PlanWords.Level(g.Gate.Level), string.Join("; ", g.Open.Select(o => Ask(pack, o)))])]);
        }

        Figure[] other = [.. a.Plan.Gates.Where(g => g.State is GateState.NotChecked or GateState.Clear).SelectMany(g => g.Figures).Except(force.SelectMany(g => g.Figures)).DistinctBy(f => f.Key)];
        if (other.Length > 0)
        {
            yield return new Paragraph("Computed for this car, for gates that are not in force; a comfortable figure clears nothing.");
            yield return new Bullets([.. other.Select(Line)]);
        }

        if (a.Plan.SpeedRise.Count > 0)
        {
            yield return new Heading(3, "What the planned speed does");
            yield return new Table(["Load", "At its fastest now", "At the planned speed", "Times"], [.. a.Plan.SpeedRise.Select(r => (IReadOnlyList<string>)[r.Title, RangeText.Of(r.Now, r.Unit), RangeText.Of(r.Planned, r.Unit), r.Ratio is { } ratio ? $"{ratio:0.0}" : "-"])]);
        }

        yield return new Heading(3, "Always");
        yield return new Bullets(PlanWords.Cautions);
    }

    private static IEnumerable<string> Facts(KnowledgePack pack, GateStatus gate)
    {
        yield return $"Because: {string.Join("; ", gate.Triggers.SelectMany(t => t.InWords.Split("; ")).Distinct().Select(Prose.Plain))}.";
        yield return $"Why it matters: {Prose.Plain(gate.Gate.Why)}";
        if (gate.Gate.BlocksRuns.Count > 0)
        {
            yield return $"Held back until signed: {string.Join("; ", gate.Gate.BlocksRuns.Select(r => PlanTitles.Run(pack, r)))}";
        }

        foreach (Figure figure in gate.Figures)
        {
            yield return $"Computed for this car: {Line(figure)}";
        }

        if (gate.SignOffs.FirstOrDefault(s => !s.Counts) is { } next)
        {
            yield return $"Lifted by: the sign-off '{next.Rule.Kind}': {Prose.Plain(next.Rule.By)}; {Prose.Plain(next.Rule.Evidence)}.{(next.WhyNot.Length > 0 ? $" The recorded one does not count: {Prose.Plain(next.WhyNot)}." : "")}";
        }
    }

    private static string Line(Figure figure) =>
        $"{figure.Text}{(figure.MattersMostInWords is { } most ? $" What would narrow it most: {most}." : "")} (calc {figure.Origin.Model}: {figure.Origin.Formula})";

    private static string Ask(KnowledgePack pack, OpenMustKnow must) => must.IsFact ? PlanTitles.Fact(pack, must.Ask) : PlanTitles.Question(pack, must.Ask);
}
