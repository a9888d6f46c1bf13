using System.Text.Json;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Plans.Json;

namespace FixPlanner.Report.Plans;

/// <summary>The plan for programs. Keys carry their units and only ever gain neighbours; docs/guide/json.md describes them.</summary>
public static class PlanJson
{
    /// <summary>Writes the plan.</summary>
    /// <param name="a">What follows from the logbook, fully worked out.</param>
    /// <returns>JSON, ended by a line feed.</returns>
    public static string Write(Assessment a) => JsonWriting.Whole(json =>
    {
        json.WriteString("car", a.Situation.Logbook.Name);
        json.WriteString("date", $"{a.Situation.Today:yyyy-MM-dd}");
        json.Object("pack", () =>
        {
            json.WriteString("id", a.Situation.Pack.Id);
            json.WriteString("version", a.Situation.Pack.Version);
        });
        json.WriteString("headline", Prose.Plain(a.Plan.Headline));
        json.WriteString("note", PlanWords.NotACertificate);
        SafetyJson.Write(json, a);
        CausesJson.Write(json, a);
        VentsPart.Write(json, a.Plan);
        LearnedPart.Write(json, a);
        ItemsJson.Write(json, a);
        NotNow(json, a.Plan);
        TotalsJson.Write(json, a.Plan);
        StandingPart.Write(json, a.Plan);
        json.ObjectOrNull("next_question", a.Plan.NextQuestion, next => Next(json, a.Situation.Pack, next));
        json.Strings("cautions", PlanWords.Cautions);
        json.Each("sources", SourcesPart.Used(a), s =>
        {
            json.WriteString("id", s.Id);
            json.WriteString("grade", $"{s.Grade}");
            json.WriteString("what", Prose.Plain(s.What));
            json.WriteString("where", s.Where);
        });
    });

    private static void NotNow(Utf8JsonWriter json, Plan plan)
    {
        json.Each("left_out", plan.LeftOut.OrderBy(l => l.Fix.Id, StringComparer.Ordinal), l =>
        {
            json.WriteString("fix", l.Fix.Id);
            json.WriteString("why", Prose.Plain(l.InWords));
            json.WriteString("maturity", PlanWords.Tried(l.Fix));
            json.WriteString("kind", JsonNamingPolicy.SnakeCaseLower.ConvertName(l.Why.ToString()));
            json.WriteString("gate", l.Gate?.Gate.Id);
        });
        json.Each("waiting", plan.Waiting, w =>
        {
            json.WriteString("fix", w.Fix.Id);
            json.WriteString("gate", w.Gate.Gate.Id);
            json.Number("points", w.Points);
        });
    }

    private static void Next(Utf8JsonWriter json, KnowledgePack pack, NextQuestion next)
    {
        json.WriteString("kind", next.IsFact ? "fact" : "observation");
        json.WriteString("id", next.Id);
        Fact? fact = next.IsFact ? pack.Fact(next.Id) : null;
        Observation? observation = next.IsFact ? null : pack.Observation(next.Id);
        json.WriteString("question", Prose.Plain(fact?.Ask ?? observation?.Question ?? next.Id));
        json.Strings("answers", fact is null ? observation?.Answers.Select(x => x.Id) ?? [] : fact.Kind == FactKind.YesNo ? ["yes", "no"] : fact.Choices);
        json.WriteString("why", next.Why);
        json.Number("gain", next.GainPoints);
        json.Number("effort_min", next.EffortMinutes);
    }
}
