using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace FixPlanner.Files.Writing;

/// <summary>One line of a journal: an entry, or a mark on entries before it.</summary>
/// <param name="Entry">The entry; null for a mark.</param>
/// <param name="KeptUpTo">The logbook file holds everything up to this entry; 0 when the line does not say so.</param>
/// <param name="Left">Entries that are not to be put in any more.</param>
internal sealed record JournalLine(JournalEntry? Entry, int KeptUpTo, IReadOnlyList<int> Left)
{
    private const int Version = 1;

    private static readonly JsonWriterOptions Readable = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    // Deeper than any value that a logbook can hold.
    private static readonly JsonDocumentOptions Deep = new() { MaxDepth = 128 };

    public static JournalLine Of(JournalEntry entry) => new(entry, 0, []);

    public static JournalLine Kept(int number) => new(null, number, []);

    public static JournalLine Leaving(IReadOnlyList<int> numbers) => new(null, 0, numbers);

    /// <summary>The line as JSON with its line feed.</summary>
    public byte[] ToBytes()
    {
        var bytes = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(bytes, Readable))
        {
            json.WriteStartObject();
            json.WriteNumber("journal", Version);
            if (Entry is not null)
            {
                WriteEntry(json, Entry);
            }

            if (KeptUpTo > 0)
            {
                json.WriteNumber("kept", KeptUpTo);
            }

            if (Left.Count > 0)
            {
                json.WriteStartArray("left");
                foreach (int number in Left)
                {
                    json.WriteNumberValue(number);
                }

                json.WriteEndArray();
            }

            json.WriteEndObject();
        }

        return [.. bytes.WrittenSpan, (byte)'\n'];
    }

    /// <summary>Reads a line; null when it is none of ours or was cut off.</summary>
    public static JournalLine? Parse(ReadOnlyMemory<byte> line)
    {
        try
        {
            using var json = JsonDocument.Parse(line, Deep);
            JsonElement root = json.RootElement;
            if (root.GetProperty("journal").GetInt32() != Version)
            {
                return null;
            }

            return new JournalLine(
                root.TryGetProperty("n", out _) ? ReadEntry(root) : null,
                root.TryGetProperty("kept", out JsonElement kept) ? kept.GetInt32() : 0,
                root.TryGetProperty("left", out JsonElement left) ? [.. left.EnumerateArray().Select(number => number.GetInt32())] : []);
        }
        catch (Exception failure) when (failure is JsonException or KeyNotFoundException or InvalidOperationException or FormatException or DecoderFallbackException)
        {
            return null;
        }
    }

    private static void WriteEntry(Utf8JsonWriter json, JournalEntry entry)
    {
        json.WriteNumber("n", entry.Number);
        json.WriteString("kind", entry.Kind.ToString().ToLowerInvariant());
        if (entry.Of > 0)
        {
            json.WriteNumber("of", entry.Of);
        }

        json.WriteString("time", entry.Time);
        json.WriteString("what", entry.What);
        json.WriteString("before", entry.Before);
        json.WriteString("after", entry.After);
        json.WriteNumber("at", entry.Splice.At);
        json.WriteString("out", entry.Splice.Removed);
        json.WriteString("in", entry.Splice.Inserted);
        json.WriteStartArray("changes");
        foreach (YamlChange change in entry.Changes)
        {
            json.WriteStartObject();
            json.WriteString("path", change.Path.ToString());
            WriteValue(json, "old", change.Old);
            WriteValue(json, "new", change.New);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static JournalEntry ReadEntry(JsonElement root) => new(
        root.GetProperty("n").GetInt32(),
        root.GetProperty("kind").GetString() switch
        {
            "answer" => JournalKind.Answer,
            "undo" => JournalKind.Undo,
            "redo" => JournalKind.Redo,
            _ => throw new FormatException("unknown kind of entry"),
        },
        root.TryGetProperty("of", out JsonElement of) ? of.GetInt32() : 0,
        Text(root, "time"),
        Text(root, "what"),
        Text(root, "before"),
        Text(root, "after"),
        new Splice(root.GetProperty("at").GetInt32(), Text(root, "out"), Text(root, "in")),
        [.. root.GetProperty("changes").EnumerateArray().Select(ReadChange)]);

    private static YamlChange ReadChange(JsonElement change) => new(
        YamlPath.Parse(Text(change, "path")) ?? throw new FormatException("no path"),
        change.TryGetProperty("old", out JsonElement old) ? ReadValue(old) : null,
        change.TryGetProperty("new", out JsonElement now) ? ReadValue(now) : null);

    private static string Text(JsonElement parent, string name) => parent.GetProperty(name).GetString() ?? throw new FormatException($"{name} is missing");

    private static void WriteValue(Utf8JsonWriter json, string name, YamlValue? value)
    {
        if (value is not null)
        {
            json.WritePropertyName(name);
            WriteValue(json, value);
        }
    }

    private static void WriteValue(Utf8JsonWriter json, YamlValue value)
    {
        switch (value)
        {
            case YamlValue.Single single:
                json.WriteStringValue(single.Text);
                break;
            case YamlValue.Several list:
                json.WriteStartArray();
                foreach (YamlValue item in list.Items)
                {
                    WriteValue(json, item);
                }

                json.WriteEndArray();
                break;
            case YamlValue.Keyed map:
                json.WriteStartObject();
                foreach ((string key, YamlValue inner) in map.Entries)
                {
                    json.WritePropertyName(key);
                    WriteValue(json, inner);
                }

                json.WriteEndObject();
                break;
            default:
                json.WriteNullValue();
                break;
        }
    }

    private static YamlValue ReadValue(JsonElement value) => value.ValueKind switch
    {
        JsonValueKind.String => YamlValue.Of(value.GetString()!),
        JsonValueKind.Array => YamlValue.List([.. value.EnumerateArray().Select(ReadValue)]),
        JsonValueKind.Object => YamlValue.Map([.. value.EnumerateObject().Select(entry => KeyValuePair.Create(entry.Name, ReadValue(entry.Value)))]),
        JsonValueKind.Null => YamlValue.Unset,
        _ => throw new FormatException("no value"),
    };
}
