using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>The plan: what a stop demands before anything else, then the lines by stage, the sums, and what more money would buy.</summary>
internal static class ItemsPart
{
    public static IEnumerable<Block> Of(Assessment a, bool opens)
    {
        yield return new Heading(2, "The plan");
        foreach (GateStatus stop in Stops(a))
        {
            yield return new Warning("STOP FIRST", $"**{Prose.Plain(stop.Gate.Title)}**: {Prose.Plain(stop.Gate.RequiredAction)} Nothing below is started before this is signed{(Cure(a, stop) is { } cure ? $", except line {cure.Rank}, which is part of it" : "")}.");
        }

        if (a.Plan.Items.Count == 0)
        {
            yield return new Paragraph(Prose.Plain(a.Plan.Headline));
            yield break;
        }

        foreach (IGrouping<string, PlanItem> stage in a.Plan.Items.GroupBy(i => Stage(i.Stage)))
        {
            yield return new Heading(3, stage.Key);
            yield return new Table(
                ["No.", "Fix", "How", "Rule is", "Cost, EUR", "Hours", "In best set"],
                [.. stage.Select(i => (IReadOnlyList<string>)[$"{i.Rank}", Prose.Plain(i.Fix.Title) + Held(i), PlanWords.Shown(i.ShownAs), PlanWords.Tried(i.Fix), $"{i.Fix.Cost.Likely:0} ({i.Fix.Cost.Low:0}-{i.Fix.Cost.High:0})", $"{i.Fix.Hours.Likely:0.#}", i.InBestSetShare is { } share ? Shown.Percent(share) : "-"])]);
        }

        yield return new Heading(3, "All together");
        yield return new Bullets([.. Sums(a.Plan)]);
        if (EffectTable.Of(a.Plan.Totals.Effects) is { } effects)
        {
            yield return effects;
        }

        foreach (Block block in (opens ? WorkedOutPart.Of(a.Plan.Totals.Effects) : []).Concat(StandingPart.Of(a)).Concat(MoneyPart.Of(a)))
        {
            yield return block;
        }
    }

    private static IEnumerable<GateStatus> Stops(Assessment a) => a.Plan.Gates.Where(g => g.State == GateState.InForce && g.Gate.Level == GateLevel.Stop);

    private static PlanItem? Cure(Assessment a, GateStatus stop) => a.Plan.Items.FirstOrDefault(i => i.ForGate?.Gate.Id == stop.Gate.Id);

    private static string Stage(Stage stage) => stage switch
    {
        Core.Planning.Stage.Safety => "Safety, paid first",
        Core.Planning.Stage.Trial => "Free and temporary: look and try first",
        Core.Planning.Stage.Cheap => "Cheap and lasting",
        _ => "The rest",
    };

    private static string Held(PlanItem i) => i.HeldBy.Count > 0 ? $" (first check: {string.Join(", ", i.HeldBy.Select(g => Prose.Plain(g.Gate.Title)))})" : "";

    private static IEnumerable<string> Sums(Plan plan)
    {
        PlanTotals t = plan.Totals;
        yield return $"Cost: likely {t.LikelyCostEur:0} EUR; computed range {Shown.Range(t.CostEur, "EUR")}{(t.BudgetEur is { } b ? $"; budget {b:0} EUR" : "; no budget said")}.";
        yield return $"Own work: likely {t.LikelyHours:0.#} h; computed range {Shown.Range(t.Hours, "h")}{(t.HoursLimit is { } h ? $"; limit {h:0.#} h" : "; no limit said")}.";
        if (t.SafetyEur > 0)
        {
            yield return $"Of that for safety, paid first: {t.SafetyEur:0} EUR.";
        }

        if (t.ShortfallEur > 0)
        {
            yield return $"The budget is {t.ShortfallEur:0} EUR short of the safety work alone.";
        }

        if (t.OverrunProbability is { } over && t.BudgetEur is not null)
        {
            yield return $"Chance that it costs more than the budget: {Shown.Percent(over)}.";
        }

        if (plan.ProvenGapPercent > 0)
        {
            yield return $"Not proven best: at most {plan.ProvenGapPercent:0.#} % better exists.";
        }
    }
}
