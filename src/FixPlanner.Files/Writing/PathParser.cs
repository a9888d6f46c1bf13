using System.Text.Json;

namespace FixPlanner.Files.Writing;

/// <summary>Reads the text form of a <see cref="YamlPath"/>.</summary>
internal sealed class PathParser(string text)
{
    private int at;

    /// <summary>The steps, or null when the text is no path.</summary>
    public IReadOnlyList<PathStep>? Read()
    {
        var steps = new List<PathStep>();
        while (at < text.Length)
        {
            PathStep? step = Take('[') ? InBrackets() : steps.Count == 0 || Take('.') ? KeyStep() : null;
            if (step is null)
            {
                return null;
            }

            steps.Add(step);
        }

        return steps;
    }

    private PathStep.ToKey? KeyStep() => Word() is string key ? new PathStep.ToKey(key) : null;

    private PathStep? InBrackets()
    {
        if (Take('+'))
        {
            return Take(']') ? new PathStep.ToNew() : null;
        }

        var conditions = new List<KeyValuePair<string, string>>();
        do
        {
            if (Word() is not string key)
            {
                return null;
            }

            if (conditions.Count == 0 && Take(']'))
            {
                return int.TryParse(key, System.Globalization.NumberStyles.None, null, out int index) ? new PathStep.ToItem(index) : null;
            }

            if (!Take('=') || Word() is not string value)
            {
                return null;
            }

            conditions.Add(new(key, value));
        }
        while (Take(','));

        return Take(']') ? new PathStep.ToWhere(conditions) : null;
    }

    private string? Word()
    {
        int start = at;
        if (at < text.Length && text[at] == '"')
        {
            at++;
            while (at < text.Length && text[at] != '"')
            {
                at += text[at] == '\\' ? 2 : 1;
            }

            at = Math.Min(at + 1, text.Length);
            return Unquoted(text[start..at]);
        }

        while (at < text.Length && !".[]=,+\"".Contains(text[at]))
        {
            at++;
        }

        return at > start ? text[start..at] : null;
    }

    private static string? Unquoted(string quoted)
    {
        try
        {
            using var json = JsonDocument.Parse(quoted);
            return json.RootElement.ValueKind == JsonValueKind.String ? json.RootElement.GetString() : null;
        }
        catch (Exception failure) when (failure is JsonException or InvalidOperationException)
        {
            return null;
        }
    }

    private bool Take(char expected)
    {
        bool found = at < text.Length && text[at] == expected;
        at += found ? 1 : 0;
        return found;
    }
}
