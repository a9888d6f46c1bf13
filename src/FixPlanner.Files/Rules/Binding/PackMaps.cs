using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>What many files of the pack have in common.</summary>
internal static class PackMaps
{
    /// <summary>Older names under <c>was</c>: one, or a list.</summary>
    public static IReadOnlyList<string> Aliases(this MapReader map) => map.Node("was") switch
    {
        null => [],
        YamlScalar one => [one.Text],
        _ => [.. map.Scalars("was").Select(scalar => scalar.Text)],
    };

    public static IReadOnlyList<string> TextList(this MapReader map, string key) => [.. map.Scalars(key).Select(scalar => scalar.Text)];

    /// <summary>yes or no; no when it is not written.</summary>
    public static bool YesNo(this MapReader map, string key) => map.OneOf(key, Words.YesNo, false);
}
