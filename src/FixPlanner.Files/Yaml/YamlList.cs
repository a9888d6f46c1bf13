using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Yaml;

/// <summary>A list, written with dashes or in square brackets.</summary>
internal sealed class YamlList(Place place, int start, int end, IReadOnlyList<YamlNode> items, bool isFlow) : YamlNode(place, start, end)
{
    public IReadOnlyList<YamlNode> Items { get; } = items;

    /// <summary>Whether it is written in brackets.</summary>
    public bool IsFlow { get; } = isFlow;
}
