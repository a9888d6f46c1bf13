using System.Text.Json;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans.Json;

/// <summary>What stands behind a figure: the model, its formula and source, and what went in.</summary>
internal static class OriginJson
{
    public static void Write(Utf8JsonWriter json, FigureOrigin origin)
    {
        json.WriteString("model", origin.Model);
        json.WriteString("formula", origin.Formula);
        json.WriteString("source", origin.Source);
        json.WriteString("validity", origin.Validity);
        json.Object("inputs", () =>
        {
            foreach (FigureInput input in origin.Inputs)
            {
                json.Object(input.Name, () => Input(json, input));
            }
        });
    }

    private static void Input(Utf8JsonWriter json, FigureInput input)
    {
        if (input.Word is { } word)
        {
            json.WriteString("word", word);
        }
        else
        {
            json.Ends(new Spread(input.Range.Low, input.Range.Likely, input.Range.High));
        }

        json.WriteString("from", input.From);
        json.WriteBoolean("known", input.Known);
    }
}
