using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Rules.Layers;

namespace FixPlanner.Files.Schemas;

/// <summary>
/// JSON Schemas of the files of a pack, for editors that check YAML while it is written. They are made from the same
/// lists of words and units as the loader's; a test holds their keys against the loader's.
/// </summary>
public static class RuleSchemas
{
    /// <summary>Folder of the schemas within a pack.</summary>
    public const string Folder = "schemas";

    private const string Dialect = "http://json-schema.org/draft-07/schema#";

    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, NewLine = "\n", Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private static readonly IReadOnlyList<(RuleFileKind Kind, string Name, string Title)> Kinds =
    [
        (RuleFileKind.Pack, "pack", "Head of a pack"),
        (RuleFileKind.Sources, "sources", "Sources"),
        (RuleFileKind.Scales, "scales", "Scales"),
        (RuleFileKind.TestDay, "test-day", "Notes for the test day"),
        (RuleFileKind.Disappointments, "disappointments", "What usually disappoints"),
        (RuleFileKind.Terms, "terms", "List of words"),
        (RuleFileKind.Facts, "questions", "Questions about the car"),
        (RuleFileKind.Templates, "templates", "Body templates"),
        (RuleFileKind.Zone, "zone", "Zone"),
        (RuleFileKind.Observations, "observations", "Questions of a zone"),
        (RuleFileKind.Mechanism, "mechanism", "Cause"),
        (RuleFileKind.Fix, "fix", "Fix"),
        (RuleFileKind.Gate, "gate", "Safety gate"),
        (RuleFileKind.Cases, "cases", "Situations"),
    ];

    /// <summary>All schemas of a pack.</summary>
    /// <param name="pack">The pack whose lists explain the words.</param>
    /// <returns>File names within <see cref="Folder"/>, each with its text.</returns>
    public static IReadOnlyList<(string File, string Text)> All(KnowledgePack pack) =>
        [.. Kinds.Select(kind => ($"{kind.Name}.schema.json", Text(Whole(kind.Title, Body(kind.Kind, new(pack))))))];

    /// <summary>The first line of a file of a pack, by which editors find its schema.</summary>
    /// <param name="path">Path within the pack, parted by slashes.</param>
    /// <returns>The line without its end; null where no schema fits.</returns>
    public static string? FirstLine(string path)
    {
        string name = NameOf(RuleFileKinds.Of(path));
        string up = string.Concat(Enumerable.Repeat("../", path.Count(letter => letter == '/')));
        return name.Length == 0 ? null : Line($"{up}{Folder}/{name}.schema.json");
    }

    internal static string Line(string schema) => "# yaml-language-server: $schema=" + schema;

    internal static string NameOf(RuleFileKind kind) => Kinds.FirstOrDefault(one => one.Kind == kind).Name ?? "";

    internal static string Text(JsonObject schema) => schema.ToJsonString(Readable) + "\n";

    internal static JsonObject Whole(string title, JsonObject body)
    {
        JsonObject whole = new() { ["$schema"] = Dialect, ["title"] = title };
        foreach ((string key, JsonNode? value) in body.ToList())
        {
            body.Remove(key);
            whole[key] = value;
        }

        if (whole.ToJsonString().Contains("#/definitions/", StringComparison.Ordinal))
        {
            whole["definitions"] = ConditionShape.Definitions();
        }

        return whole;
    }

    private static JsonObject Body(RuleFileKind kind, RuleShapes shapes) => kind switch
    {
        RuleFileKind.Pack => ScalesSchemas.Head(),
        RuleFileKind.Sources => ListSchemas.Sources(shapes),
        RuleFileKind.Scales => ScalesSchemas.Scales(shapes),
        RuleFileKind.TestDay => TestDaySchema.Of(),
        RuleFileKind.Disappointments => ListSchemas.Disappointments(),
        RuleFileKind.Terms => ListSchemas.Terms(),
        RuleFileKind.Facts => CarSchemas.Facts(shapes),
        RuleFileKind.Templates => CarSchemas.Templates(),
        RuleFileKind.Zone => ZoneSchemas.Zone(),
        RuleFileKind.Observations => ZoneSchemas.Observations(shapes),
        RuleFileKind.Mechanism => OrRetired(CauseSchema.Of(shapes)),
        RuleFileKind.Fix => OrRetired(FixSchema.Of(shapes)),
        RuleFileKind.Gate => OrRetired(GateSchema.Of(shapes)),
        _ => CaseSchema.Of(),
    };

    // A layer takes a rule out with a file that says just that.
    private static JsonObject OrRetired(JsonObject rule) => new()
    {
        ["description"] = rule["description"]!.DeepClone(),
        ["if"] = Shape.Requires("retire"),
        ["then"] = new KeyGroup("Takes the rule of this path out of the pack.")
            .Need("retire", Shape.YesNo("yes takes it out."))
            .May("id", Shape.Text("Its id."))
            .May("why", Shape.Text("Why."))
            .Done(),
        ["else"] = rule,
    };
}
