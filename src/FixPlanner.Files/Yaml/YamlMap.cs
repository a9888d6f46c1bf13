using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Yaml;

/// <summary>A key and what stands behind it.</summary>
internal sealed record YamlEntry(YamlScalar Key, YamlNode Value);

/// <summary>Keys with values, written line by line or in braces.</summary>
internal sealed class YamlMap(Place place, int start, int end, IReadOnlyList<YamlEntry> entries, bool isFlow) : YamlNode(place, start, end)
{
    public IReadOnlyList<YamlEntry> Entries { get; } = entries;

    /// <summary>Whether it is written in braces.</summary>
    public bool IsFlow { get; } = isFlow;

    /// <summary>The entry of a key; the first where a key is repeated, which is a problem of its own.</summary>
    public YamlEntry? Find(string key) => Entries.FirstOrDefault(entry => entry.Key.Text == key);
}
