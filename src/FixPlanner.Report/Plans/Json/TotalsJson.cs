using System.Text.Json;
using FixPlanner.Core.Planning;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans.Json;

/// <summary>What the plan costs and brings altogether, and what more or less money and time would bring.</summary>
internal static class TotalsJson
{
    public static void Write(Utf8JsonWriter json, Plan plan)
    {
        PlanTotals t = plan.Totals;
        json.Object("totals", () =>
        {
            json.Range("cost_eur", t.CostEur);
            json.Number("likely_cost_eur", t.LikelyCostEur);
            json.Range("hours", t.Hours);
            json.Number("likely_hours", t.LikelyHours);
            json.Number("spent_eur", t.SpentEur);
            json.Number("safety_eur", t.SafetyEur);
            json.Number("shortfall_eur", t.ShortfallEur);
            json.Number("budget_eur", t.BudgetEur);
            json.Number("hours_limit", t.HoursLimit);
            json.Number("points", t.Points);
            json.Number("proven_gap_percent", plan.ProvenGapPercent);
            EffectsJson.Write(json, t.Effects);
        });
        SpeedRise(json, plan);
        json.Number("regret", plan.Regret);
        json.Number("overrun_probability", t.OverrunProbability);
        Frontiers(json, plan);
    }

    private static void SpeedRise(Utf8JsonWriter json, Plan plan) => json.Each("speed_rise", plan.SpeedRise, row =>
    {
        json.WriteString("key", row.Key);
        json.WriteString("what", row.Title);
        json.WriteString("unit", row.Unit);
        json.Range("now", row.Now);
        json.Range("planned", row.Planned);
        json.Number("ratio", row.Ratio);
        json.WriteString("model", row.Model);
    });

    private static void Frontiers(Utf8JsonWriter json, Plan plan)
    {
        json.Each("frontier", plan.Frontier, step =>
        {
            json.Number("budget_eur", step.BudgetEur);
            json.Number("benefit", step.Points);
            json.Strings("fixes", step.Fixes);
        });
        json.Each("frontier_hours", plan.HoursFrontier, step =>
        {
            json.Number("hours", step.Hours);
            json.Number("benefit", step.Points);
            json.Strings("fixes", step.Fixes);
        });
    }
}
