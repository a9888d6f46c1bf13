using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Rules.Binding;

namespace FixPlanner.Files.Schemas;

/// <summary>The pieces that schemas are made of. Every call makes new nodes, since a node has one parent only.</summary>
internal static class Shape
{
    // Spaces or apostrophes between thousands, point or comma for decimals, as the number reader takes them.
    private const string Number = @"[-+−]?[0-9.][0-9.,' ]*(?:[eE][-+]?[0-9]+)?";

    /// <summary>A single value that is read as text; editors see 1300 as a number.</summary>
    public static JsonObject Text(string description, params string[] examples) =>
        With(new() { ["type"] = Names("string", "number"), ["description"] = description }, examples);

    public static JsonObject Id(string description, params string[] examples) => Pattern(description, "^[a-z][a-z0-9-]*$", examples);

    public static JsonObject FactId(string description, params string[] examples) => Pattern(description, "^[a-z][a-z0-9_]*$", examples);

    public static JsonObject Pattern(string description, string pattern, params string[] examples) =>
        With(new() { ["type"] = "string", ["description"] = description, ["pattern"] = pattern }, examples);

    /// <summary>One word of a closed list, each with what it means.</summary>
    public static JsonObject Words(string description, IEnumerable<(string Word, string Meaning)> words)
    {
        (string Word, string Meaning)[] all = [.. words];
        JsonObject shape = new() { ["description"] = description, ["enum"] = Names([.. all.Select(one => one.Word)]) };
        if (all.Any(one => one.Meaning.Length > 0))
        {
            shape["enumDescriptions"] = Names([.. all.Select(one => one.Meaning)]);
        }

        return shape;
    }

    public static JsonObject YesNo(string description) => Words(description, [("yes", ""), ("no", "")]);

    public static JsonObject Whole(string description, int least, int most) =>
        new() { ["type"] = "integer", ["description"] = description, ["minimum"] = least, ["maximum"] = most };

    public static JsonObject PureNumber(string description, double least, double most) =>
        new() { ["type"] = "number", ["description"] = description, ["minimum"] = least, ["maximum"] = most };

    /// <summary>A figure with its unit; a number alone does not do.</summary>
    public static JsonObject Figure(string description, PackUnit unit, params string[] examples)
    {
        IEnumerable<string> spellings = unit.Kind is { } kind
            ? UnitTable.OfKind(kind).Where(one => one.Name.Length > 0).SelectMany(one => one.Spellings.Prepend(one.Name))
            : unit.OtherSpellings.Prepend(unit.Name);
        return Amount(description, spellings, unit.Kind is null ? " +" : " *", examples.Length > 0 ? examples : [$"1 {unit.Name}"]);
    }

    public static JsonObject Amount(string description, IEnumerable<string> units, string gap, params string[] examples)
    {
        string alternatives = string.Join('|', units.Select(Regex.Escape).Select(text => text.Replace(@"\ ", " ")));
        JsonObject shape = Pattern(description, $"^ *{Number}{gap}(?:{alternatives}) *$", examples);
        shape["patternErrorMessage"] = $"write a number and its unit, for example {examples[0]}";
        return shape;
    }

    public static JsonObject List(string description, JsonObject item) =>
        new() { ["type"] = "array", ["description"] = description, ["items"] = item };

    /// <summary>A group whose keys are ids or words of the writer.</summary>
    public static JsonObject Map(string description, JsonObject value) =>
        new() { ["type"] = "object", ["description"] = description, ["additionalProperties"] = value };

    public static JsonObject Either(string description, params JsonObject[] ways) =>
        new() { ["description"] = description, ["anyOf"] = new JsonArray([.. ways]) };

    public static JsonObject Ref(string definition) => new() { ["$ref"] = "#/definitions/" + definition };

    public static JsonObject Requires(string key) => new() { ["required"] = Names(key) };

    public static JsonArray Names(params string[] names) => new([.. names.Select(name => (JsonNode)name)]);

    private static JsonObject With(JsonObject shape, string[] examples)
    {
        if (examples.Length > 0)
        {
            shape["examples"] = Names(examples);
        }

        return shape;
    }
}
