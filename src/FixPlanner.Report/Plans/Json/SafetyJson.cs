using System.Text.Json;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans.Json;

/// <summary>The gates, with what they hang on, who signs them off and their figures for this car.</summary>
internal static class SafetyJson
{
    public static void Write(Utf8JsonWriter json, Assessment a) => json.Each("safety", a.Plan.Gates, g =>
    {
        json.WriteString("gate", g.Gate.Id);
        json.WriteString("title", Prose.Plain(g.Gate.Title));
        json.WriteString("state", PlanWords.StateKey(g.State));
        json.WriteString("level", PlanWords.LevelKey(g.Gate.Level));
        json.WriteString("trigger", g.Triggers.Count > 0 ? string.Join(" / ", g.Triggers.Select(t => Prose.Plain(t.InWords))) : Prose.Plain(g.Gate.TriggerInWords));
        json.WriteString("action", Prose.Plain(g.Gate.RequiredAction));
        json.Strings("must_know", g.Open.Select(open => open.Ask));
        json.Each("sign_off", g.SignOffs, s =>
        {
            json.WriteString("kind", s.Rule.Kind);
            json.Texts(("by", s.Rule.By), ("evidence", s.Rule.Evidence));
            json.WriteBoolean("counts", s.Counts);
        });
        json.Each("figures", g.Figures, figure =>
        {
            json.WriteString("key", figure.Key);
            json.WriteString("text", figure.Text);
            json.Range(figure.Key, figure.Range);
            json.WriteString("matters_most", figure.MattersMost);
            OriginJson.Write(json, figure.Origin);
        });
    });
}
