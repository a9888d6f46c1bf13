using System.Text.Json;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans.Json;

/// <summary>The items of the plan in their order.</summary>
internal static class ItemsJson
{
    public static void Write(Utf8JsonWriter json, Assessment a) => json.Each("plan", a.Plan.Items, i =>
    {
        json.WriteNumber("rank", i.Rank);
        json.WriteString("stage", PlanWords.Stage(i.Stage));
        json.WriteString("fix", i.Fix.Id);
        json.WriteString("title", Prose.Plain(i.Fix.Title));
        json.WriteString("shown_as", PlanWords.Shown(i.ShownAs).Replace(' ', '_'));
        json.Range("cost_eur", i.Fix.Cost);
        json.Range("hours", i.Fix.Hours);
        EffectsJson.Write(json, i.Effects);
        json.Number("in_best_set_share", i.InBestSetShare);
        json.Strings("held_by", i.HeldBy.Select(g => g.Gate.Id));
        Reasons(json, i);
        json.Strings("cautions", Cautions(i));
        json.WriteString("trial", i.Fix.Trial is { } trial ? Prose.Plain(trial.Do) : null);
        json.ObjectOrNull("trial_value", i.Trial, odds =>
        {
            json.Number("points", odds.Points);
            json.Number("chance_of_better", odds.ChanceOfBetter);
            json.Number("chance_of_worse", odds.ChanceOfWorse);
            json.Number("standard_error", odds.StandardError);
            json.WriteString("noise_from", odds.NoiseFrom);
        });
        json.Number("in_best_set_share_error", i.InBestSetShareError);
        json.WriteString("effects_from", Prose.Plain(i.Fix.EffectsBasis.Text));
        json.WriteString("reversible", PlanWords.Reversible(i.Fix));
        json.WriteString("legal", Prose.Plain(i.Fix.LegalNote.Length > 0 ? i.Fix.LegalNote : a.Situation.Pack.Scales.DefaultLegalNote));
        json.Each("verify", i.Fix.Verify, v =>
        {
            json.WriteString("observation", v.Observation);
            json.WriteString("expect", v.Expect);
        });
        json.WriteString("maturity", PlanWords.Tried(i.Fix));
        json.WriteString("for_gate", i.ForGate?.Gate.Id);
    });

    private static void Reasons(Utf8JsonWriter json, PlanItem i) => json.Each("reasons", i.Reasons, r =>
    {
        json.WriteString("cause", r.Cause);
        json.Number("probability", r.Probability);
        json.WriteString("action", r.Action.ToString().ToLowerInvariant());
        json.WriteString("observation", r.Observation);
        json.WriteString("answer", r.Answer);
        json.Number("log_odds", r.LogOdds);
    });

    private static IEnumerable<string> Cautions(PlanItem i) =>
    [
        .. i.Fix.SafetyNote.Length > 0 ? [Prose.Plain(i.Fix.SafetyNote)] : Array.Empty<string>(),
        .. i.WithTheWork.Select(g => $"{Prose.Plain(g.Title)}: {Prose.Plain(g.RequiredAction)}"),
        .. i.BeforeFastUse.Select(g => $"before driving faster than now: {Prose.Plain(g.Title)}"),
    ];
}
