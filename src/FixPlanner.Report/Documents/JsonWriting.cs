using System.Buffers;
using System.Text;
using System.Text.Json;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Report.Documents;

/// <summary>JSON for programs: the same layout, the same figures and the same ranges in every output.</summary>
internal static class JsonWriting
{
    private static readonly JsonWriterOptions Options = new() { Indented = true, NewLine = "\n", Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>One object, ended by a line feed.</summary>
    public static string Whole(Action<Utf8JsonWriter> write)
    {
        ArrayBufferWriter<byte> bytes = new();
        using (Utf8JsonWriter json = new(bytes, Options))
        {
            json.WriteStartObject();
            write(json);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.WrittenSpan) + "\n";
    }

    /// <summary>An object below a key.</summary>
    public static void Object(this Utf8JsonWriter json, string name, Action write)
    {
        json.WriteStartObject(name);
        write();
        json.WriteEndObject();
    }

    /// <summary>An object below a key; null where there is nothing to say.</summary>
    public static void ObjectOrNull<T>(this Utf8JsonWriter json, string name, T? value, Action<T> write)
        where T : class
    {
        if (value is null)
        {
            json.WriteNull(name);
        }
        else
        {
            json.Object(name, () => write(value));
        }
    }

    /// <summary>A list of objects.</summary>
    public static void Each<T>(this Utf8JsonWriter json, string name, IEnumerable<T> items, Action<T> write)
    {
        json.WriteStartArray(name);
        foreach (T item in items)
        {
            json.WriteStartObject();
            write(item);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>A list of words.</summary>
    public static void Strings(this Utf8JsonWriter json, string name, IEnumerable<string> items)
    {
        json.WriteStartArray(name);
        foreach (string item in items)
        {
            json.WriteStringValue(item);
        }

        json.WriteEndArray();
    }

    /// <summary>Prose of the pack, without its marks.</summary>
    public static void Texts(this Utf8JsonWriter json, params (string Name, string Text)[] texts)
    {
        foreach ((string name, string text) in texts)
        {
            json.WriteString(name, Prose.Plain(text));
        }
    }

    /// <summary>A figure; null where it is not known.</summary>
    public static void Number(this Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number && double.IsFinite(number))
        {
            json.WriteNumber(name, Rounded(number));
        }
        else
        {
            json.WriteNull(name);
        }
    }

    /// <summary>Low, likely, high.</summary>
    public static void Range(this Utf8JsonWriter json, string name, Spread s) => json.Object(name, () => json.Ends(s));

    /// <summary>Low, likely, high.</summary>
    public static void Range(this Utf8JsonWriter json, string name, Triangle t) => json.Range(name, new Spread(t.Low, t.Likely, t.High));

    /// <summary>The keys low, likely, high of the object that is open.</summary>
    public static void Ends(this Utf8JsonWriter json, Spread s)
    {
        json.Number("low", s.Low);
        json.Number("likely", s.Likely);
        json.Number("high", s.High);
    }

    /// <summary>Nine significant figures: more is noise, and the same on every machine.</summary>
    public static double Rounded(double value) => value == 0 || double.Parse($"{value:G9}") is 0 ? 0 : double.Parse($"{value:G9}");
}
