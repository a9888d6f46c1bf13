using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Writing;

/// <summary>A node with what is around it.</summary>
/// <param name="Node">The node; null only for the whole of a file that says nothing.</param>
/// <param name="Parent">The map or list that it is in; null for the whole.</param>
/// <param name="Index">Its number in the parent.</param>
internal sealed record Spot(YamlNode? Node, Spot? Parent, int Index)
{
    /// <summary>Whether the node stands within brackets or braces.</summary>
    public bool InFlow => Parent?.Node is YamlMap { IsFlow: true } or YamlList { IsFlow: true };

    /// <summary>The entry of which the node is the value, when it is in a map.</summary>
    public YamlEntry? Entry => Parent?.Node is YamlMap map ? map.Entries[Index] : null;

    /// <summary>Whether the node is written over lines of its own, without brackets.</summary>
    public bool IsSpread => Node is YamlMap { IsFlow: false } or YamlList { IsFlow: false };

    public static Spot? Find(YamlDocument document, IEnumerable<PathStep> steps)
    {
        Spot? spot = new(document.Root, null, 0);
        foreach (PathStep step in steps)
        {
            spot = spot?.Child(step);
        }

        return spot;
    }

    private Spot? Child(PathStep step)
    {
        switch (Node)
        {
            case YamlMap map when step is PathStep.ToKey key:
                int number = map.Entries.ToList().FindIndex(entry => entry.Key.Text == key.Key);
                return number < 0 ? null : new Spot(map.Entries[number].Value, this, number);
            case YamlList list when step is not PathStep.ToKey:
                int index = ValueTree.IndexOf((YamlValue.Several)YamlValue.From(list), step);
                return index < 0 ? null : new Spot(list.Items[index], this, index);
            default:
                return null;
        }
    }
}
