using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Writing;

/// <summary>What stands, or is to stand, at a place in a file: a text, a list or a map, without its places and style.</summary>
public abstract record YamlValue
{
    private YamlValue()
    {
    }

    /// <summary>Nothing stands there, as behind <c>key:</c>.</summary>
    public static YamlValue Unset { get; } = new Nothing();

    /// <summary>A single value.</summary>
    /// <param name="text">Any text; it is quoted where needed.</param>
    /// <returns>The value.</returns>
    public static YamlValue Of(string text) => new Single(text);

    /// <summary>A list.</summary>
    /// <param name="items">Its items.</param>
    /// <returns>The value.</returns>
    public static YamlValue List(params IReadOnlyList<YamlValue> items) => new Several(items);

    /// <summary>A map that is written on one line where it is short.</summary>
    /// <param name="entries">Keys, each once, and values.</param>
    /// <returns>The value.</returns>
    public static YamlValue Map(params IReadOnlyList<KeyValuePair<string, YamlValue>> entries) => new Keyed(entries);

    /// <summary>A map that is written line by line even while it is short, because it will grow.</summary>
    /// <param name="entries">Keys, each once, and values.</param>
    /// <returns>The value; equal to the map with the same entries.</returns>
    public static YamlValue Lines(params IReadOnlyList<KeyValuePair<string, YamlValue>> entries) => new Keyed(entries) { LineByLine = true };

    internal static YamlValue From(YamlNode? node) => node switch
    {
        null or YamlScalar { IsUnset: true } => Unset,
        YamlScalar scalar => Of(scalar.Text),
        YamlList list => List([.. list.Items.Select(From)]),
        YamlMap map => Map([.. map.Entries.Select(entry => KeyValuePair.Create(entry.Key.Text, From(entry.Value)))]),
        _ => throw new ArgumentException($"no value for {node.GetType().Name}", nameof(node)),
    };

    internal sealed record Nothing : YamlValue;

    internal sealed record Single(string Text) : YamlValue;

    internal sealed record Several(IReadOnlyList<YamlValue> Items) : YamlValue
    {
        public bool Equals(Several? other) => other is not null && Items.SequenceEqual(other.Items);

        public override int GetHashCode() => Items.Count;
    }

    internal sealed record Keyed(IReadOnlyList<KeyValuePair<string, YamlValue>> Entries) : YamlValue
    {
        public bool LineByLine { get; init; }

        public YamlValue? Find(string key) => Entries.FirstOrDefault(entry => entry.Key == key).Value;

        public bool Equals(Keyed? other) => other is not null && Entries.SequenceEqual(other.Entries);

        public override int GetHashCode() => Entries.Count;
    }
}
