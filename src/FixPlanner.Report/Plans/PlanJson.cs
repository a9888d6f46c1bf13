using System.Buffers;
using System.Text;
using System.Text.Json;
using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Measurement.Learning;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;
using FixPlanner.Core.Safety.Figures;

namespace FixPlanner.Report.Plans;

/// <summary>The plan for programs. Keys carry their units and only ever gain neighbours; docs/guide/json.md describes them.</summary>
public static class PlanJson
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Writes the plan.</summary>
    /// <param name="a">What follows from the logbook, fully worked out.</param>
    /// <returns>JSON, ended by a line feed.</returns>
    public static string Write(Assessment a)
    {
        ArrayBufferWriter<byte> bytes = new();
        using (Utf8JsonWriter json = new(bytes, Options))
        {
            json.WriteStartObject();
            json.WriteString("car", a.Situation.Logbook.Name);
            json.WriteString("date", $"{a.Situation.Today:yyyy-MM-dd}");
            json.WriteStartObject("pack");
            json.WriteString("id", a.Situation.Pack.Id);
            json.WriteString("version", a.Situation.Pack.Version);
            json.WriteEndObject();
            json.WriteString("headline", Prose.Plain(a.Plan.Headline));
            json.WriteString("note", PlanWords.NotACertificate);
            Safety(json, a);
            Causes(json, a);
            LearnedPart.Write(json, a);
            Items(json, a);
            LeftOut(json, a.Plan);
            Waiting(json, a.Plan);
            Totals(json, a.Plan);
            Frontier(json, a.Plan);
            StandingPart.Write(json, a.Plan);
            Next(json, a);
            json.WriteStartArray("cautions");
            foreach (string caution in PlanWords.Cautions)
            {
                json.WriteStringValue(caution);
            }

            json.WriteEndArray();
            json.WriteStartArray("sources");
            foreach (Source s in SourcesPart.Used(a))
            {
                json.WriteStartObject();
                json.WriteString("id", s.Id);
                json.WriteString("grade", $"{s.Grade}");
                json.WriteString("what", Prose.Plain(s.What));
                json.WriteString("where", s.Where);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.WrittenSpan) + "\n";
    }

    private static void Safety(Utf8JsonWriter json, Assessment a)
    {
        json.WriteStartArray("safety");
        foreach (GateStatus g in a.Plan.Gates)
        {
            json.WriteStartObject();
            json.WriteString("gate", g.Gate.Id);
            json.WriteString("title", Prose.Plain(g.Gate.Title));
            json.WriteString("state", PlanWords.StateKey(g.State));
            json.WriteString("level", PlanWords.LevelKey(g.Gate.Level));
            json.WriteString("trigger", g.Triggers.Count > 0 ? string.Join(" / ", g.Triggers.Select(t => Prose.Plain(t.InWords))) : Prose.Plain(g.Gate.TriggerInWords));
            json.WriteString("action", Prose.Plain(g.Gate.RequiredAction));
            json.WriteStartArray("must_know");
            foreach (OpenMustKnow open in g.Open)
            {
                json.WriteStringValue(open.Ask);
            }

            json.WriteEndArray();
            json.WriteStartArray("sign_off");
            foreach (SignOffStatus s in g.SignOffs)
            {
                json.WriteStartObject();
                json.WriteString("kind", s.Rule.Kind);
                json.WriteString("by", Prose.Plain(s.Rule.By));
                json.WriteString("evidence", Prose.Plain(s.Rule.Evidence));
                json.WriteBoolean("counts", s.Counts);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Figures(json, g.Figures);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Figures(Utf8JsonWriter json, IReadOnlyList<Figure> figures)
    {
        json.WriteStartArray("figures");
        foreach (Figure figure in figures)
        {
            json.WriteStartObject();
            json.WriteString("key", figure.Key);
            json.WriteString("text", figure.Text);
            Spread(json, figure.Key, figure.Range);
            json.WriteString("matters_most", figure.MattersMost);
            Origin(json, figure.Origin);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Explained(Utf8JsonWriter json, IReadOnlyList<PlannedEffect> effects)
    {
        json.WriteStartObject("effects_explained");
        foreach (PlannedEffect effect in effects.Where(e => e.Origin is not null))
        {
            json.WriteStartObject(effect.Key);
            json.WriteString("what", effect.Title);
            json.WriteString("unit", effect.Unit);
            json.WriteString("matters_most", effect.MattersMost);
            Origin(json, effect.Origin!);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void SpeedRise(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartArray("speed_rise");
        foreach (LoadAtSpeeds row in plan.SpeedRise)
        {
            json.WriteStartObject();
            json.WriteString("key", row.Key);
            json.WriteString("what", row.Title);
            json.WriteString("unit", row.Unit);
            Spread(json, "now", row.Now);
            Spread(json, "planned", row.Planned);
            Number(json, "ratio", row.Ratio);
            json.WriteString("model", row.Model);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Origin(Utf8JsonWriter json, FigureOrigin origin)
    {
        json.WriteString("model", origin.Model);
        json.WriteString("formula", origin.Formula);
        json.WriteString("source", origin.Source);
        json.WriteString("validity", origin.Validity);
        json.WriteStartObject("inputs");
        foreach (FigureInput input in origin.Inputs)
        {
            json.WriteStartObject(input.Name);
            if (input.Word is { } word)
            {
                json.WriteString("word", word);
            }
            else
            {
                Number(json, "low", input.Range.Low);
                Number(json, "likely", input.Range.Likely);
                Number(json, "high", input.Range.High);
            }

            json.WriteString("from", input.From);
            json.WriteBoolean("known", input.Known);
            json.WriteEndObject();
        }

        json.WriteEndObject();
    }

    private static void Causes(Utf8JsonWriter json, Assessment a)
    {
        json.WriteStartArray("causes");
        foreach (Mechanism m in a.Situation.Pack.Mechanisms.OrderByDescending(m => a.Beliefs.Probability(m.Id)).ThenBy(m => m.Id, StringComparer.Ordinal))
        {
            json.WriteStartObject();
            json.WriteString("cause", m.Id);
            json.WriteString("title", Prose.Plain(m.Title));
            Number(json, "probability", a.Beliefs.Probability(m.Id));
            json.WriteStartArray("reasons");
            foreach (Reason r in a.Beliefs.Reasons(m.Id))
            {
                json.WriteStartObject();
                json.WriteString("observation", r.Observation);
                json.WriteString("answer", r.Answer);
                Number(json, "log_odds", r.LogOdds);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("measured");
            foreach ((MeasuredEffect effect, double logOdds) in a.Beliefs.MeasuredReasons(m.Id))
            {
                json.WriteStartObject();
                json.WriteString("fix", effect.Fix.Id);
                json.WriteString("quantity", EffectNames.Key(effect.On));
                Number(json, "log_odds", logOdds);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Items(Utf8JsonWriter json, Assessment a)
    {
        json.WriteStartArray("plan");
        foreach (PlanItem i in a.Plan.Items)
        {
            json.WriteStartObject();
            json.WriteNumber("rank", i.Rank);
            json.WriteString("stage", PlanWords.Stage(i.Stage));
            json.WriteString("fix", i.Fix.Id);
            json.WriteString("title", Prose.Plain(i.Fix.Title));
            json.WriteString("shown_as", PlanWords.Shown(i.ShownAs).Replace(' ', '_'));
            Triangle(json, "cost_eur", i.Fix.Cost);
            Triangle(json, "hours", i.Fix.Hours);
            json.WriteStartObject("effects");
            foreach (PlannedEffect e in i.Effects)
            {
                Spread(json, e.Key, e.AsBelieved);
            }

            json.WriteEndObject();
            json.WriteStartObject("effects_if_cause");
            foreach (PlannedEffect e in i.Effects)
            {
                Spread(json, e.Key, e.IfCause);
            }

            json.WriteEndObject();
            Explained(json, i.Effects);
            Number(json, "in_best_set_share", i.InBestSetShare);
            Strings(json, "held_by", i.HeldBy.Select(g => g.Gate.Id));
            json.WriteStartArray("reasons");
            foreach (PlanReason r in i.Reasons)
            {
                json.WriteStartObject();
                json.WriteString("cause", r.Cause);
                Number(json, "probability", r.Probability);
                json.WriteString("action", r.Action.ToString().ToLowerInvariant());
                json.WriteString("observation", r.Observation);
                json.WriteString("answer", r.Answer);
                Number(json, "log_odds", r.LogOdds);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Strings(json, "cautions", [.. i.Fix.SafetyNote.Length > 0 ? [Prose.Plain(i.Fix.SafetyNote)] : Array.Empty<string>(), .. i.WithTheWork.Select(g => $"{Prose.Plain(g.Title)}: {Prose.Plain(g.RequiredAction)}"), .. i.BeforeFastUse.Select(g => $"before driving faster than now: {Prose.Plain(g.Title)}")]);
            json.WriteString("trial", i.Fix.Trial is { } trial ? Prose.Plain(trial.Do) : null);
            TrialValue(json, i.Trial);
            Number(json, "in_best_set_share_error", i.InBestSetShareError);
            json.WriteString("effects_from", Prose.Plain(i.Fix.EffectsBasis.Text));
            json.WriteString("reversible", PlanWords.Reversible(i.Fix));
            json.WriteString("legal", Prose.Plain(i.Fix.LegalNote.Length > 0 ? i.Fix.LegalNote : a.Situation.Pack.Scales.DefaultLegalNote));
            json.WriteStartArray("verify");
            foreach (Verification v in i.Fix.Verify)
            {
                json.WriteStartObject();
                json.WriteString("observation", v.Observation);
                json.WriteString("expect", v.Expect);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteString("maturity", PlanWords.Tried(i.Fix));
            json.WriteString("for_gate", i.ForGate?.Gate.Id);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Waiting(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartArray("waiting");
        foreach (WaitingFix w in plan.Waiting)
        {
            json.WriteStartObject();
            json.WriteString("fix", w.Fix.Id);
            json.WriteString("gate", w.Gate.Gate.Id);
            Number(json, "points", w.Points);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void LeftOut(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartArray("left_out");
        foreach (LeftOut l in plan.LeftOut.OrderBy(l => l.Fix.Id, StringComparer.Ordinal))
        {
            json.WriteStartObject();
            json.WriteString("fix", l.Fix.Id);
            json.WriteString("why", Prose.Plain(l.InWords));
            json.WriteString("maturity", PlanWords.Tried(l.Fix));
            json.WriteString("kind", JsonNamingPolicy.SnakeCaseLower.ConvertName(l.Why.ToString()));
            json.WriteString("gate", l.Gate?.Gate.Id);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Totals(Utf8JsonWriter json, Plan plan)
    {
        PlanTotals t = plan.Totals;
        json.WriteStartObject("totals");
        Spread(json, "cost_eur", t.CostEur);
        Number(json, "likely_cost_eur", t.LikelyCostEur);
        Spread(json, "hours", t.Hours);
        Number(json, "likely_hours", t.LikelyHours);
        Number(json, "spent_eur", t.SpentEur);
        Number(json, "safety_eur", t.SafetyEur);
        Number(json, "shortfall_eur", t.ShortfallEur);
        Number(json, "budget_eur", t.BudgetEur);
        Number(json, "hours_limit", t.HoursLimit);
        Number(json, "points", t.Points);
        Number(json, "proven_gap_percent", plan.ProvenGapPercent);
        json.WriteStartObject("effects");
        foreach (PlannedEffect e in t.Effects)
        {
            Spread(json, e.Key, e.AsBelieved);
        }

        json.WriteEndObject();
        json.WriteStartObject("effects_if_cause");
        foreach (PlannedEffect e in t.Effects)
        {
            Spread(json, e.Key, e.IfCause);
        }

        json.WriteEndObject();
        Explained(json, t.Effects);
        json.WriteEndObject();
        SpeedRise(json, plan);
        Number(json, "regret", plan.Regret);
        Number(json, "overrun_probability", t.OverrunProbability);
    }

    private static void TrialValue(Utf8JsonWriter json, TrialOdds? odds)
    {
        if (odds is null)
        {
            json.WriteNull("trial_value");
            return;
        }

        json.WriteStartObject("trial_value");
        Number(json, "points", odds.Points);
        Number(json, "chance_of_better", odds.ChanceOfBetter);
        Number(json, "chance_of_worse", odds.ChanceOfWorse);
        json.WriteEndObject();
    }

    private static void Frontier(Utf8JsonWriter json, Plan plan)
    {
        json.WriteStartArray("frontier");
        foreach (FrontierStep step in plan.Frontier)
        {
            json.WriteStartObject();
            Number(json, "budget_eur", step.BudgetEur);
            Number(json, "benefit", step.Points);
            Strings(json, "fixes", step.Fixes);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("frontier_hours");
        foreach (HoursStep step in plan.HoursFrontier)
        {
            json.WriteStartObject();
            Number(json, "hours", step.Hours);
            Number(json, "benefit", step.Points);
            Strings(json, "fixes", step.Fixes);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Next(Utf8JsonWriter json, Assessment a)
    {
        if (a.Plan.NextQuestion is not { } next)
        {
            json.WriteNull("next_question");
            return;
        }

        json.WriteStartObject("next_question");
        json.WriteString("kind", next.IsFact ? "fact" : "observation");
        json.WriteString("id", next.Id);
        Fact? fact = next.IsFact ? a.Situation.Pack.Fact(next.Id) : null;
        Observation? observation = next.IsFact ? null : a.Situation.Pack.Observation(next.Id);
        json.WriteString("question", Prose.Plain(fact?.Ask ?? observation?.Question ?? next.Id));
        Strings(json, "answers", fact is null ? observation?.Answers.Select(x => x.Id) ?? [] : fact.Kind == FactKind.YesNo ? ["yes", "no"] : fact.Choices);
        json.WriteString("why", next.Why);
        Number(json, "gain", next.GainPoints);
        Number(json, "effort_min", next.EffortMinutes);
        json.WriteEndObject();
    }

    internal static void Strings(Utf8JsonWriter json, string name, IEnumerable<string> items)
    {
        json.WriteStartArray(name);
        foreach (string item in items)
        {
            json.WriteStringValue(item);
        }

        json.WriteEndArray();
    }

    private static void Triangle(Utf8JsonWriter json, string name, Triangle t) => Three(json, name, t.Low, t.Likely, t.High);

    private static void Spread(Utf8JsonWriter json, string name, Spread s) => Three(json, name, s.Low, s.Likely, s.High);

    private static void Three(Utf8JsonWriter json, string name, double low, double likely, double high)
    {
        json.WriteStartObject(name);
        Number(json, "low", low);
        Number(json, "likely", likely);
        Number(json, "high", high);
        json.WriteEndObject();
    }

    // Nine significant figures: more is noise, and the same on every machine.
    internal static void Number(Utf8JsonWriter json, string name, double? value)
    {
        if (value is not { } number)
        {
            json.WriteNull(name);
            return;
        }

        double rounded = number == 0 || !double.IsFinite(number) ? 0 : double.Parse($"{number:G9}");
        json.WriteNumber(name, rounded == 0 ? 0 : rounded);
    }
}
