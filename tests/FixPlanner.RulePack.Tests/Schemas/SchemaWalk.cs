using System.Text.Json.Nodes;

namespace FixPlanner.RulePack.Tests.Schemas;

/// <summary>Finds, for a group inside a file, the part of the schema that describes it, and the keys that it names.</summary>
internal static class SchemaWalk
{
    /// <summary>The part of the schema for one step into a value: a key of a group, or an item of a list (null).</summary>
    public static JsonObject? Step(JsonObject root, JsonObject at, JsonNode instance, string? key)
    {
        JsonObject here = Plain(root, at, instance);
        JsonNode? next = key is null ? here["items"] : here["properties"]?[key] ?? here["additionalProperties"];
        return next as JsonObject;
    }

    /// <summary>The keys that the schema names for a group; null where any key may stand.</summary>
    public static IReadOnlyList<string>? Keys(JsonObject root, JsonObject at, JsonNode instance)
    {
        JsonObject here = Plain(root, at, instance);
        return here["properties"] is JsonObject keys ? [.. keys.Select(key => key.Key)] : null;
    }

    // Follows references and choices until the part with the keys is reached.
    private static JsonObject Plain(JsonObject root, JsonObject at, JsonNode instance)
    {
        if (at["$ref"] is JsonValue reference)
        {
            return Plain(root, root["definitions"]![reference.GetValue<string>().Split('/')[^1]]!.AsObject(), instance);
        }

        if (at["if"]?["required"]?[0]?.GetValue<string>() is { } key)
        {
            return Plain(root, at[instance is JsonObject group && group.ContainsKey(key) ? "then" : "else"]!.AsObject(), instance);
        }

        if (at["anyOf"] is JsonArray ways)
        {
            return Plain(root, ways.Select(way => way!.AsObject()).Single(way => IsOfType(way, instance)), instance);
        }

        return at["properties"] is null && at["allOf"]?[0] is JsonObject only && only.ContainsKey("$ref") ? Plain(root, only, instance) : at;
    }

    private static bool IsOfType(JsonObject way, JsonNode instance)
    {
        string type = instance switch { JsonObject => "object", JsonArray => "array", _ => "string" };
        return way["type"] is JsonArray several ? several.Any(one => one!.GetValue<string>() == type)
            : way["type"]?.GetValue<string>() == type || (way["enum"] is not null && type == "string");
    }
}
