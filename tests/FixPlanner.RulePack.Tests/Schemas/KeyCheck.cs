using System.Text.Json.Nodes;
using FixPlanner.Files.Problems;

namespace FixPlanner.RulePack.Tests.Schemas;

/// <summary>Holds the keys of a schema against those of the loader, group by group of one file, by asking both.</summary>
internal sealed class KeyCheck(string path, JsonObject schema, Func<JsonNode, bool> schemaTakes, Func<JsonNode, IReadOnlyList<Problem>> loaderSays)
{
    private const string Unknown = "no_such_key";

    /// <summary>Keys that one of the two reads and the other does not.</summary>
    public IEnumerable<string> Keys(JsonNode root)
    {
        foreach ((JsonObject group, JsonObject part) in Within(root, schema))
        {
            string place = $"{path} {group.GetPath()}";
            IReadOnlyList<string>? named = SchemaWalk.Keys(schema, part, group);
            (IReadOnlyList<string>? read, bool isRefused) = LoadersKeys(root, group);
            if (read is null)
            {
                // Ids as keys: the loader says which id is unknown, not which keys there are.
                if (named is not null && !isRefused)
                {
                    yield return $"{place}: the loader takes any key, the schema does not";
                }

                continue;
            }

            foreach (string key in read.Except(named ?? []))
            {
                yield return $"{place}: the loader reads {key}, the schema does not name it";
            }

            // A key that only goes with others may be named, if the schema refuses it here.
            foreach (string key in (named ?? []).Except(read).Where(key => With(group, key, () => schemaTakes(root))))
            {
                yield return $"{place}: the schema takes {key}, the loader does not read it";
            }
        }
    }

    /// <summary>Keys that one of the two needs and the other does not.</summary>
    public IEnumerable<string> NeededKeys(JsonNode root)
    {
        foreach ((JsonObject group, JsonObject _) in Within(root, schema))
        {
            foreach (string key in group.Select(entry => entry.Key).ToList())
            {
                (IReadOnlyList<Problem> said, bool taken) = Without(group, key, () => (loaderSays(root), schemaTakes(root)));
                if (taken && said.Any(problem => problem.Code == "FP1021"))
                {
                    yield return $"{path} {group.GetPath()}: the loader needs {key}, the schema does not";
                }

                if (!taken && said.All(problem => problem.Severity != Severity.Error))
                {
                    yield return $"{path} {group.GetPath()}: the schema needs {key}, the loader does not";
                }
            }
        }
    }

    // Every group of keys in the file, with the part of the schema for it.
    private IEnumerable<(JsonObject Group, JsonObject Part)> Within(JsonNode node, JsonObject part)
    {
        if (node is JsonObject group)
        {
            yield return (group, part);
        }

        IEnumerable<(string? Key, JsonNode? Value)> inner = node switch
        {
            JsonObject entries => entries.Select(entry => ((string?)entry.Key, entry.Value)),
            JsonArray items => items.Select(item => ((string?)null, item)),
            _ => [],
        };
        foreach ((string? key, JsonNode? value) in inner.Where(one => one.Value is JsonObject or JsonArray).ToList())
        {
            JsonObject next = SchemaWalk.Step(schema, part, node, key) ?? throw new InvalidOperationException($"{path} {value!.GetPath()}: the schema does not go there");
            foreach (var found in Within(value!, next))
            {
                yield return found;
            }
        }
    }

    // The loader names the keys that it reads when it meets one that it does not know.
    private (IReadOnlyList<string>? Keys, bool IsRefused) LoadersKeys(JsonNode root, JsonObject group)
    {
        Problem[] said = With(group, Unknown, () => loaderSays(root).Where(problem => problem.What.Contains(Unknown, StringComparison.Ordinal)).ToArray());
        Problem? listed = said.FirstOrDefault(problem => problem.Code == "FP1020");
        return (listed?.Mend.Replace("use one of: ", "").Replace("; or remove it", "").Split(", "), said.Length > 0);
    }

    private static T With<T>(JsonObject group, string key, Func<T> look)
    {
        group[key] = "x";
        T seen = look();
        group.Remove(key);
        return seen;
    }

    private static T Without<T>(JsonObject group, string key, Func<T> look)
    {
        int at = group.IndexOf(key);
        JsonNode? value = group[key];
        group.RemoveAt(at);
        T seen = look();
        group.Insert(at, key, value);
        return seen;
    }
}
