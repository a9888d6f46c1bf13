using System.Text.Json.Nodes;

namespace FixPlanner.Files.Schemas;

/// <summary>A group of known keys: what each holds, and which must be there.</summary>
internal sealed class KeyGroup(string description)
{
    private readonly JsonObject keys = [];
    private readonly List<string> needed = [];

    /// <summary>A key without which the rest cannot be used.</summary>
    public KeyGroup Need(string key, JsonObject shape)
    {
        needed.Add(key);
        keys[key] = shape;
        return this;
    }

    /// <summary>A key that may be left out, or left empty.</summary>
    public KeyGroup May(string key, JsonObject shape)
    {
        if (shape["type"] is JsonArray several)
        {
            several.Add("null");
        }
        else if (shape["type"] is JsonValue one)
        {
            shape["type"] = Shape.Names(one.GetValue<string>(), "null");
        }

        keys[key] = shape;
        return this;
    }

    /// <summary>The schema of the group; other keys are refused unless <paramref name="others"/> says what they hold.</summary>
    public JsonObject Done(JsonObject? others = null)
    {
        JsonObject group = new() { ["type"] = "object", ["description"] = description, ["properties"] = keys };
        if (needed.Count > 0)
        {
            group["required"] = Shape.Names([.. needed]);
        }

        group["additionalProperties"] = others is null ? false : others;
        return group;
    }
}
