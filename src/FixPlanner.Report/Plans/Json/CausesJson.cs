using System.Text.Json;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans.Json;

/// <summary>The causes, the most likely first, with the answers and measurements that speak for and against each.</summary>
internal static class CausesJson
{
    public static void Write(Utf8JsonWriter json, Assessment a)
    {
        IEnumerable<Mechanism> causes = a.Situation.Pack.Mechanisms.OrderByDescending(m => a.Beliefs.Probability(m.Id)).ThenBy(m => m.Id, StringComparer.Ordinal);
        json.Each("causes", causes, m =>
        {
            json.WriteString("cause", m.Id);
            json.WriteString("title", Prose.Plain(m.Title));
            json.Number("probability", a.Beliefs.Probability(m.Id));
            json.Each("reasons", a.Beliefs.Reasons(m.Id), r =>
            {
                json.WriteString("observation", r.Observation);
                json.WriteString("answer", r.Answer);
                json.Number("log_odds", r.LogOdds);
            });
            json.Each("measured", a.Beliefs.MeasuredReasons(m.Id), r =>
            {
                json.WriteString("fix", r.Effect.Fix.Id);
                json.WriteString("quantity", EffectNames.Key(r.Effect.On));
                json.Number("log_odds", r.LogOdds);
            });
        });
    }
}
