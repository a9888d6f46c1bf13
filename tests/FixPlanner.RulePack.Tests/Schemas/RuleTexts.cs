using System.Text.Json;
using System.Text.Json.Nodes;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules.Binding;
using FixPlanner.Files.Rules.Layers;
using FixPlanner.Files.Schemas;
using FixPlanner.Files.Yaml;
using Json.Schema;

namespace FixPlanner.RulePack.Tests.Schemas;

/// <summary>The files of the shipped pack, with what the loader and what the schema make of changed ones.</summary>
internal static class RuleTexts
{
    private static readonly Lazy<Dictionary<string, (JsonObject Text, JsonSchema Schema)>> Schemas = new(() =>
        RuleSchemas.All(ShippedPack.Pack).ToDictionary(one => one.File, one => (JsonNode.Parse(one.Text)!.AsObject(), JsonSchema.FromText(one.Text))));

    private static readonly Lazy<BindContext> Context = new(() => new(
        ShippedPack.Pack.Sources.Select(source => source.Id).ToHashSet(),
        ShippedPack.Pack.Facts.ToDictionary(fact => fact.Id),
        new Dictionary<string, double> { ["common"] = 0.2, ["sometimes"] = 0.09, ["rare"] = 0.04 },
        new HashSet<(RuleKind, string)>()));

    /// <summary>Paths of the rule files within a folder, parted by slashes.</summary>
    public static IEnumerable<string> Paths(string folder) =>
        Directory.GetFiles(folder, "*.yaml", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/')).Order(StringComparer.Ordinal);

    public static string SchemaFile(string path) => RuleSchemas.FirstLine(path) is { } line ? line.Split('/')[^1] : "";

    public static JsonObject SchemaOf(string path) => Schemas.Value[SchemaFile(path)].Text;

    public static bool SchemaTakes(string path, JsonNode? instance) =>
        Schemas.Value[SchemaFile(path)].Schema.Evaluate(JsonSerializer.SerializeToElement(instance)).IsValid;

    /// <summary>What the schema says against a file, place by place.</summary>
    public static IEnumerable<string> Complaints(string path, JsonNode? instance) => SchemaTakes(path, instance)
        ? []
        : (Schemas.Value[SchemaFile(path)].Schema.Evaluate(JsonSerializer.SerializeToElement(instance), new() { OutputFormat = OutputFormat.List }).Details ?? [])
            .Where(detail => detail.Errors is { Count: > 0 })
            .SelectMany(detail => detail.Errors!.Select(error => $"{path} {detail.InstanceLocation}: {error.Value}"));

    /// <summary>What the loader says against a file; JSON is YAML, so changed files go to it as they are.</summary>
    public static IReadOnlyList<Problem> LoaderSays(string path, JsonNode? instance)
    {
        ProblemList problems = new();
        YamlDocument? document = YamlReader.Read(path, instance?.ToJsonString() ?? "", problems);
        problems.AddRange(Binders.Bind(new RuleFile(path, path, 0, RuleFileKinds.Of(path)) { Document = document }, Context.Value).Problems.InOrder());
        return problems.InOrder();
    }
}
