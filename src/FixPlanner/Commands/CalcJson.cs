using System.Buffers;
using System.Text;
using System.Text.Json;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Commands;

/// <summary>The answers of <c>calc</c> for programs. Keys end in the unit; a number that does not exist is null.</summary>
internal static class CalcJson
{
    public static string Outcome(PhysicsModel model, ModelOutcome outcome, IEnumerable<string> given) => Written(json =>
    {
        json.WriteString("model", model.Name);
        json.WriteStartObject("inputs");
        foreach ((string name, Triangle value) in outcome.Used)
        {
            Input(json, model.Inputs.First(input => input.Name == name), value);
        }

        json.WriteEndObject();
        Texts(json, "assumed", outcome.Used.Keys.Except(given));
        json.WriteStartObject("outputs");
        Outputs(json, model, outcome.Answer!);
        json.WriteEndObject();
        json.WriteStartObject("ranges");
        foreach ((string name, PropagatedOutput range) in outcome.Ranges)
        {
            Range(json, name, range);
        }

        json.WriteEndObject();
        Provenance(json, model, outcome.Warnings);
    });

    public static string Sweep(PhysicsModel model, CalcSweep sweep) => Written(json =>
    {
        json.WriteString("model", model.Name);
        json.WriteString("swept", sweep.Range.Input.Name);
        json.WriteStartArray("points");
        foreach ((double at, ModelAnswer answer) in sweep.Points)
        {
            json.WriteStartObject();
            json.WriteNumber(sweep.Range.Input.Name, at);
            json.WriteStartObject("outputs");
            Outputs(json, model, answer);
            json.WriteEndObject();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        Provenance(json, model, sweep.Warnings);
    });

    public static string List(IReadOnlyList<PhysicsModel> models) => Written(json =>
    {
        json.WriteStartArray("models");
        foreach (PhysicsModel model in models)
        {
            json.WriteStartObject();
            json.WriteString("model", model.Name);
            json.WriteString("title", model.Title);
            json.WriteString("what", model.What);
            json.WriteStartArray("inputs");
            foreach (ModelInput input in model.Inputs)
            {
                Declared(json, input);
            }

            json.WriteEndArray();
            json.WriteStartArray("outputs");
            foreach (ModelOutput declared in model.Outputs)
            {
                json.WriteStartObject();
                json.WriteString("name", declared.Name);
                json.WriteString("unit", declared.Unit?.Name ?? "word");
                json.WriteString("meaning", declared.Meaning);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            Provenance(json, model, []);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    });

    private static void Declared(Utf8JsonWriter json, ModelInput input)
    {
        json.WriteStartObject();
        json.WriteString("name", input.Name);
        json.WriteString("unit", input.Unit.Name);
        json.WriteString("meaning", input.Meaning);
        json.WriteBoolean("required", input.IsRequired);
        if (input.Choices.Count > 0)
        {
            Texts(json, "choices", input.Choices);
        }
        else
        {
            Ends(json, "possible_range", input.Possible);
            if (input.Default is { } assumed)
            {
                Triple(json, "assumed", assumed.Low, assumed.Likely, assumed.High);
            }
        }

        json.WriteEndObject();
    }

    private static void Input(Utf8JsonWriter json, ModelInput input, Triangle value)
    {
        if (input.Choices.Count > 0)
        {
            json.WriteString(input.Name, input.Choices[(int)value.Likely]);
        }
        else if (value.High > value.Low)
        {
            Triple(json, input.Name, value.Low, value.Likely, value.High);
        }
        else
        {
            Number(json, input.Name, value.Likely);
        }
    }

    private static void Outputs(Utf8JsonWriter json, PhysicsModel model, ModelAnswer answer)
    {
        foreach (ModelOutput declared in model.Outputs)
        {
            if (declared.Unit is null)
            {
                json.WriteString(declared.Name, answer.Words[declared.Name]);
            }
            else
            {
                Number(json, declared.Name, answer.Numbers[declared.Name]);
            }
        }
    }

    private static void Range(Utf8JsonWriter json, string name, PropagatedOutput range)
    {
        Spread spread = range.Spread!.Value;
        json.WriteStartObject(name);
        Number(json, "low", spread.Low);
        Number(json, "likely", spread.Likely);
        Number(json, "high", spread.High);
        json.WriteStartObject("share_of_spread");
        foreach (VarianceShare share in range.Shares)
        {
            Number(json, share.Input, Math.Round(share.Share, 3));
        }

        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void Provenance(Utf8JsonWriter json, PhysicsModel model, IEnumerable<string> warnings)
    {
        if (model.Formula.Length > 0)
        {
            json.WriteString("formula", model.Formula);
        }

        json.WriteString("source", model.Source);
        json.WriteStartObject("valid_range");
        foreach (ModelInput input in model.Inputs.Where(input => input.Choices.Count == 0))
        {
            Ends(json, input.Name, input.Valid);
        }

        json.WriteEndObject();
        json.WriteString("validity", model.Validity);
        json.WriteString("uncertainty", model.Uncertainty);
        Texts(json, "warnings", warnings);
    }

    private static void Ends(Utf8JsonWriter json, string name, ValueRange range)
    {
        json.WriteStartObject(name);
        Number(json, "low", range.Low);
        Number(json, "high", range.High);
        json.WriteEndObject();
    }

    private static void Triple(Utf8JsonWriter json, string name, double low, double likely, double high)
    {
        json.WriteStartObject(name);
        Number(json, "low", low);
        Number(json, "likely", likely);
        Number(json, "high", high);
        json.WriteEndObject();
    }

    private static void Texts(Utf8JsonWriter json, string name, IEnumerable<string> texts)
    {
        json.WriteStartArray(name);
        texts.ToList().ForEach(json.WriteStringValue);
        json.WriteEndArray();
    }

    private static void Number(Utf8JsonWriter json, string name, double value)
    {
        if (double.IsFinite(value))
        {
            json.WriteNumber(name, value);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    private static string Written(Action<Utf8JsonWriter> write)
    {
        ArrayBufferWriter<byte> bytes = new();
        JsonWriterOptions options = new() { Indented = true, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };
        using (Utf8JsonWriter json = new(bytes, options))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.WrittenSpan);
    }
}
