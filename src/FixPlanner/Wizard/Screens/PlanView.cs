using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Plans;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard.Screens;

/// <summary>The plan as a list; each line opens into its job card, each left-out fix into why.</summary>
internal static class PlanView
{
    public static ListModel Of(Assessment a)
    {
        PlanTotals t = a.Plan.Totals;
        return new()
        {
            Id = "plan",
            Title = Prose.Plain(a.Plan.Headline),
            Intro = a.Plan.Depth == PlanDepth.Full ? [] : [$"Ranges, shares and trials are being worked out: {Finished(a.Plan)}."],
            Columns = [new("Do", 0), new("Stage", 10), new("Rule is", 7), new("EUR", 5, true), new("Hours", 5, true), new("In set", 6, true)],
            Rows =
            [
                .. a.Plan.Items.Select(i => new RowModel(
                    Row(i.Fix),
                    [$"{i.Rank} {Standing(a, i.Fix)}{(i.HeldBy.Count > 0 ? "first check: " : "")}{Prose.Plain(i.Fix.Title)}", Stage(i), Core.Interview.Words.Of(i.Fix.Maturity), $"{i.Fix.Cost.Likely:0}", $"{i.Fix.Hours.Likely:0.#}", i.InBestSetShare is { } s ? $"{100 * s:0} %" : "-"],
                    () => Lines.Of(PlanDocument.CardOf(a, i)))),
                .. a.Plan.Depth == PlanDepth.Full ? [new RowModel("standing", ["How well it stands, and what more money or time would buy", "", "", "", "", ""], () => Lines.Of(PlanDocument.StandingOf(a)))] : Array.Empty<RowModel>(),
                RowModel.Heading("Left out, and why"),
                .. a.Plan.LeftOut.Where(l => l.Why != LeftOutWhy.NotForThisCar).OrderBy(l => l.Why).ThenBy(l => l.Fix.Id, StringComparer.Ordinal)
                    .Select(l => new RowModel(Row(l.Fix), [Standing(a, l.Fix) + Prose.Plain(l.Fix.Title), "", Core.Interview.Words.Of(l.Fix.Maturity), "", "", ""], () => [Lines.Of(l.Fix.What), Lines.Named("Left out", l.InWords)])),
            ],
            RowKeys = Lines.Keys(SubjectKind.Fix),
            WhenEmpty = "Nothing is worth doing on what is known.",
            Totals =
            [
                $"Likely {t.LikelyCostEur:0} EUR{(t.BudgetEur is { } b ? $" of {b:0}" : "")}, {t.LikelyHours:0.#} h{(t.HoursLimit is { } h ? $" of {h:0.#}" : "")}{(t.OverrunProbability is { } o && t.BudgetEur is not null ? $"; {100 * o:0} % chance to overrun the budget" : "")}{(t.ShortfallEur > 0 ? $"; {t.ShortfallEur:0} EUR short for safety alone" : "")}",
            ],
        };
    }

    private static string Row(Fix fix) => new Subject(SubjectKind.Fix, fix.Id).ToString();

    private static string Standing(Assessment a, Fix fix) =>
        Interviewer.Standing(a.Situation.Logbook, new(SubjectKind.Fix, fix.Id)) is { Length: > 0 } words ? $"[{words}] " : "";

    /// <summary>How far the draws are, in words.</summary>
    public static string Finished(Plan plan) =>
        plan.DrawsFinished > 0 ? $"{plan.DrawsFinished} of 500 draws are finished{(plan.Items.Select(i => i.InBestSetShareError).Max() is { } error ? $", shares good to {100 * error:0.#} in 100" : "")}" : "the draws have just begun";

    private static string Stage(PlanItem i) => i.ShownAs switch
    {
        ShownAs.TrialFirst => "try first",
        ShownAs.LookFirst => "look first",
        _ => i.Stage.ToString().ToLowerInvariant(),
    };
}
