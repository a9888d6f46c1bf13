using FixPlanner.Core.Interview;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Drawings;

namespace FixPlanner.Report.Plans;

/// <summary>What more money would buy, the benefit against the budget, and what waits for a sign-off.</summary>
internal static class MoneyPart
{
    private const int MostSteps = 8;

    public static IEnumerable<Block> Of(Assessment a)
    {
        if (a.Plan.MoreMoney is { } more)
        {
            string come = Titles(a, more.Comes);
            string instead = more.Goes.Count > 0 ? $" in place of {Titles(a, more.Goes)}" : "";
            yield return new Paragraph(more.Comes.Count == 0
                ? $"What the next {more.MoreEur:0} EUR would buy: nothing more for your aims."
                : $"What the next {more.MoreEur:0} EUR would buy: {come}{instead}: {Shown.Number(more.Points)} points on top of {Shown.Number(a.Plan.Totals.Points)}.");
        }

        if (a.Plan.Frontier.Count > 1)
        {
            yield return Frontier(a.Plan);
            yield return Steps(a);
        }

        if (a.Plan.HoursFrontier.Count > 1)
        {
            yield return Hours(a.Plan);
        }

        if (a.Plan.Waiting.Count > 0)
        {
            yield return new Paragraph("Waiting for a sign-off: these would be in the best set, and are not to be done before the gate is signed off.");
            yield return new Bullets([.. a.Plan.Waiting.Select(w => $"{Prose.Plain(w.Fix.Title)}: waits for '{Prose.Plain(w.Gate.Gate.Title)}'.")]);
        }
    }

    private static string Titles(Assessment a, IReadOnlyList<string> fixes) => string.Join("; ", fixes.Select(f => PlanTitles.Fix(a.Situation.Pack, f)));

    /// <summary>The steps round the budget: from which money on what comes in and what gives way.</summary>
    private static Table Steps(Assessment a)
    {
        IReadOnlyList<FrontierStep> all = a.Plan.Frontier;
        double budget = a.Plan.Totals.BudgetEur ?? all[^1].BudgetEur;
        int at = Math.Max(0, all.Count(s => s.BudgetEur <= budget) - 1);
        int from = Math.Clamp(at - (MostSteps / 2), 1, Math.Max(1, all.Count - MostSteps));
        return new(["From EUR", "Points", "Comes in", "Gives way"], [.. Enumerable.Range(from, Math.Min(MostSteps, all.Count - from)).Select(i => (IReadOnlyList<string>)[
            $"{all[i].BudgetEur:0.##}", Shown.Number(all[i].Points), Titles(a, [.. all[i].Fixes.Except(all[i - 1].Fixes)]), Titles(a, [.. all[i - 1].Fixes.Except(all[i].Fixes)])])])
        { Stacked = true };
    }

    private static Picture Hours(Plan plan)
    {
        HoursStep last = plan.HoursFrontier[^1];
        double most = Math.Max(last.Hours, plan.Totals.HoursLimit ?? 0);
        string limit = plan.Totals.HoursLimit is { } hours ? $" The broken line is the limit of {hours:0.#} h." : "";
        return Charts.Picture(new("frontier-hours", "Benefit against own hours", "own work, h", "points for your aims", [new("best set for those hours", [.. plan.HoursFrontier.Select(s => (s.Hours, s.Points)), (most, last.Points)], Stairs: true)])
        {
            Spans = plan.Totals.HoursLimit is { } said ? [new("limit", said, said, "")] : [],
            Words = $"Benefit against own hours, within the budget: from {plan.HoursFrontier[0].Hours:0.#} h with {Shown.Number(plan.HoursFrontier[0].Points)} points to {last.Hours:0.#} h with {Shown.Number(last.Points)} points; beyond that time brings nothing more.{limit}",
        });
    }

    private static Picture Frontier(Plan plan)
    {
        FrontierStep last = plan.Frontier[^1];
        double most = Math.Max(last.BudgetEur, plan.Totals.BudgetEur ?? 0);
        string budget = plan.Totals.BudgetEur is { } eur ? $" The broken line is the budget of {eur:0} EUR." : "";
        Chart chart = new("frontier", "Benefit against budget", "budget, EUR", "points for your aims", [new("best set for that money", [.. plan.Frontier.Select(s => (s.BudgetEur, s.Points)), (most, last.Points)], Stairs: true)])
        {
            Spans = plan.Totals.BudgetEur is { } said ? [new("budget", said, said, "")] : [],
            Words = $"Benefit against budget: from {plan.Frontier[0].BudgetEur:0} EUR with {Shown.Number(plan.Frontier[0].Points)} points to {last.BudgetEur:0} EUR with {Shown.Number(last.Points)} points; beyond that money buys nothing more.{budget}",
        };
        return Charts.Picture(chart);
    }
}
