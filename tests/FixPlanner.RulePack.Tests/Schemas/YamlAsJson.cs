using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Yaml;

namespace FixPlanner.RulePack.Tests.Schemas;

/// <summary>A YAML text as an editor's schema check sees it: plain scalars by the core schema of YAML 1.2 (chapter 10.3), the rest as text.</summary>
internal static partial class YamlAsJson
{
    public static JsonNode? Read(string file, string text)
    {
        ProblemList problems = new();
        YamlNode? root = YamlReader.Read(file, text, problems)?.Root;
        return problems.HasErrors ? throw new InvalidOperationException(string.Join('\n', problems.InOrder())) : Of(root);
    }

    private static JsonNode? Of(YamlNode? node) => node switch
    {
        YamlMap map => Object(map),
        YamlList list => new JsonArray([.. list.Items.Select(Of)]),
        YamlScalar { Style: YamlStyle.Plain } plain => Plain(plain.Text),
        YamlScalar scalar => scalar.Text,
        _ => null,
    };

    private static JsonObject Object(YamlMap map)
    {
        JsonObject made = [];
        foreach (YamlEntry entry in map.Entries)
        {
            made[entry.Key.Text] = Of(entry.Value);
        }

        return made;
    }

    private static JsonNode? Plain(string text) => text switch
    {
        "" or "~" or "null" or "Null" or "NULL" => null,
        "true" or "True" or "TRUE" => true,
        "false" or "False" or "FALSE" => false,
        _ when Integer().IsMatch(text) => long.Parse(text, CultureInfo.InvariantCulture),
        _ when Number().IsMatch(text) => double.Parse(text, CultureInfo.InvariantCulture),
        _ => text,
    };

    [GeneratedRegex("^[-+]?[0-9]{1,18}$")]
    private static partial Regex Integer();

    [GeneratedRegex(@"^[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?$")]
    private static partial Regex Number();
}
