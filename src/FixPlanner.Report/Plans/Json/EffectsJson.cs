using System.Text.Json;
using FixPlanner.Core.Planning;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans.Json;

/// <summary>Effects as believed now, effects if the cause is there, and where their figures come from.</summary>
internal static class EffectsJson
{
    public static void Write(Utf8JsonWriter json, IReadOnlyList<PlannedEffect> effects)
    {
        json.Object("effects", () =>
        {
            foreach (PlannedEffect e in effects)
            {
                json.Range(e.Key, e.AsBelieved);
            }
        });
        json.Object("effects_if_cause", () =>
        {
            foreach (PlannedEffect e in effects)
            {
                json.Range(e.Key, e.IfCause);
            }
        });
        json.Object("effects_explained", () =>
        {
            foreach (PlannedEffect effect in effects.Where(e => e.Origin is not null))
            {
                json.Object(effect.Key, () =>
                {
                    json.WriteString("what", effect.Title);
                    json.WriteString("unit", effect.Unit);
                    json.WriteString("matters_most", effect.MattersMost);
                    OriginJson.Write(json, effect.Origin!);
                });
            }
        });
    }
}
