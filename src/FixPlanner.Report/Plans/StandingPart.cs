using System.Text.Json;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Planning;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>How well the plan stands when things are not what they seem: regret, the runner-up, and the cause on which most of it hangs.</summary>
internal static class StandingPart
{
    public static IEnumerable<Block> Of(Assessment a)
    {
        string[] said = [.. Sentences(a)];
        if (said.Length > 0)
        {
            yield return new Heading(3, "How well it stands");
            yield return new Bullets(said);
        }
    }

    public static void Write(Utf8JsonWriter json, Plan plan)
    {
        json.WriteNumber("draws", plan.DrawsFinished);
        json.ObjectOrNull("runner_up", plan.RunnerUp, rival =>
        {
            json.Strings("goes", rival.Goes);
            json.Strings("comes", rival.Comes);
            json.Number("less_points", rival.LessPoints);
            json.WriteString("cause", rival.Cause);
            json.Number("probability_now", rival.BeliefNow);
            json.Number("probability_at_turn", rival.BeliefAtTurn);
        });
        json.ObjectOrNull("hangs_on", plan.Stake, stake =>
        {
            json.WriteString("cause", stake.Cause);
            json.Number("probability", stake.Belief);
            json.Number("loss_points", stake.LossPoints);
            json.Number("missed_points", stake.MissedPoints);
        });
    }

    private static IEnumerable<string> Sentences(Assessment a)
    {
        Plan plan = a.Plan;
        if (plan is { Regret: { } regret, DrawsFinished: > 0 and var draws })
        {
            string error = plan.Items.Select(i => i.InBestSetShareError).Max() is { } most ? $" The shares in the tables are good to {100 * most:0.#} points in 100." : "";
            yield return $"In {draws} draws of beliefs, effects, costs and hours the best set of each draw would bring {Shown.Number(regret)} points more on average than this plan, of {Shown.Number(plan.Totals.Points)}.{error}";
        }

        if (plan.RunnerUp is { } rival)
        {
            string turn = rival.Cause is { } cause ? $" They change places when '{PlanTitles.Cause(a.Situation.Pack, cause)}' is at {Shown.Percent(rival.BeliefAtTurn ?? 0)}; it is at {Shown.Percent(rival.BeliefNow ?? 0)} now." : " No single cause makes them change places.";
            yield return $"Nearest other set: {Titles(a, rival.Comes)} in place of {Titles(a, rival.Goes)}, {Shown.Number(rival.LessPoints)} points less.{turn}";
        }

        if (plan.Stake is { } stake)
        {
            yield return $"Most hangs on '{PlanTitles.Cause(a.Situation.Pack, stake.Cause)}' ({Shown.Percent(stake.Belief)}): if it is not there, the plan loses {Shown.Number(stake.LossPoints)} points, and the best set would then bring {Shown.Number(stake.MissedPoints)} more than this one.";
        }
    }

    private static string Titles(Assessment a, IReadOnlyList<string> fixes) => string.Join("; ", fixes.Select(f => PlanTitles.Fix(a.Situation.Pack, f)));
}
