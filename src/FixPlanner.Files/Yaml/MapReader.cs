using FixPlanner.Core.Quantities;
using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Yaml;

/// <summary>
/// Binds the keys of one map by hand. A plain name reads an optional key and gives null (or nothing) when it is
/// missing or empty; <c>Need…</c> reports that as well and gives an empty value, so that reading goes on and every
/// problem is found in one run: use nothing of the result when the problems have errors. <see cref="Done"/>, called
/// last, reports the keys that nobody asked for.
/// </summary>
internal sealed class MapReader
{
    private readonly string thing;
    private readonly ProblemList problems;
    private readonly Dictionary<string, YamlEntry> entries = [];
    private readonly HashSet<string> asked = [];

    /// <summary>Reads a map.</summary>
    /// <param name="map">The map.</param>
    /// <param name="thing">What it describes, for messages, such as "the fix".</param>
    /// <param name="problems">Takes what is wrong.</param>
    public MapReader(YamlMap map, string thing, ProblemList problems)
    {
        Map = map;
        this.thing = thing;
        this.problems = problems;
        foreach (YamlEntry entry in map.Entries)
        {
            entries.TryAdd(entry.Key.Text, entry);
        }
    }

    public YamlMap Map { get; }

    public Place Place => Map.Place;

    /// <summary>A reader for a node that ought to be a map; null after reporting that it is something else.</summary>
    public static MapReader? Of(YamlNode node, string thing, ProblemList problems)
    {
        if (node is YamlMap map)
        {
            return new MapReader(map, thing, problems);
        }

        problems.Add(Messages.WrongShape(node, thing, "a group of keys", "key: value"));
        return null;
    }

    /// <summary>What stands behind a key, of whatever shape; null when the key is missing or nothing stands there.</summary>
    public YamlNode? Node(string key)
    {
        asked.Add(key);
        YamlNode? value = entries.GetValueOrDefault(key)?.Value;
        return value is YamlScalar { IsUnset: true } ? null : value;
    }

    public YamlNode? NeedNode(string key) => Node(key) ?? Missing<YamlNode>(key);

    public YamlScalar? Scalar(string key) => Node(key) is YamlNode node ? ValueReader.Scalar(node, key, problems) : null;

    public YamlScalar? NeedScalar(string key) => NeedNode(key) is YamlNode node ? ValueReader.Scalar(node, key, problems) : null;

    public string? Text(string key) => Scalar(key)?.Text;

    public string NeedText(string key) => NeedScalar(key)?.Text ?? "";

    public int? Integer(string key, int least, int most) =>
        Scalar(key) is YamlScalar scalar ? ValueReader.Integer(scalar, key, least, most, problems) : null;

    public int NeedInteger(string key, int least, int most) =>
        NeedScalar(key) is YamlScalar scalar ? ValueReader.Integer(scalar, key, least, most, problems) ?? least : least;

    /// <summary>A pure number; quantities carry a unit, see <see cref="Amount"/>.</summary>
    public double? Number(string key, double least, double most) =>
        Scalar(key) is YamlScalar scalar ? ValueReader.Number(scalar, key, least, most, problems) : null;

    public double NeedNumber(string key, double least, double most) =>
        NeedScalar(key) is YamlScalar scalar ? ValueReader.Number(scalar, key, least, most, problems) ?? least : least;

    public Amount? Amount(string key, UnitKind kind) =>
        Scalar(key) is YamlScalar scalar ? ValueReader.Amount(scalar, key, kind, problems) : null;

    public Amount? NeedAmount(string key, UnitKind kind) =>
        NeedScalar(key) is YamlScalar scalar ? ValueReader.Amount(scalar, key, kind, problems) : null;

    public AmountRange? Range(string key, UnitKind kind) =>
        Scalar(key) is YamlScalar scalar ? ValueReader.Range(scalar, key, kind, problems) : null;

    public AmountRange? NeedRange(string key, UnitKind kind) =>
        NeedScalar(key) is YamlScalar scalar ? ValueReader.Range(scalar, key, kind, problems) : null;

    public T OneOf<T>(string key, IReadOnlyDictionary<string, T> words, T otherwise) =>
        Scalar(key) is YamlScalar scalar && ValueReader.OneOf(scalar, key, words, problems, out T? value) ? value! : otherwise;

    public T NeedOneOf<T>(string key, IReadOnlyDictionary<string, T> words, T otherwise) =>
        NeedScalar(key) is YamlScalar scalar && ValueReader.OneOf(scalar, key, words, problems, out T? value) ? value! : otherwise;

    /// <summary>The items of a list; none when it is missing.</summary>
    public IReadOnlyList<YamlNode> Items(string key) => Node(key) is YamlNode node ? ItemsOf(node, key) : [];

    public IReadOnlyList<YamlNode> NeedItems(string key) => NeedNode(key) is YamlNode node ? ItemsOf(node, key) : [];

    /// <summary>A list of single values.</summary>
    public IReadOnlyList<YamlScalar> Scalars(string key) =>
        [.. Items(key).Select(item => ValueReader.Scalar(item, key, problems)).OfType<YamlScalar>()];

    public IReadOnlyList<YamlScalar> NeedScalars(string key) =>
        [.. NeedItems(key).Select(item => ValueReader.Scalar(item, key, problems)).OfType<YamlScalar>()];

    /// <summary>A map within this one; its reader must be told <see cref="Done"/> too.</summary>
    public MapReader? Inner(string key, string innerThing) => Node(key) is YamlNode node ? Of(node, innerThing, problems) : null;

    public MapReader? NeedInner(string key, string innerThing) => NeedNode(key) is YamlNode node ? Of(node, innerThing, problems) : null;

    /// <summary>A list of maps.</summary>
    public IReadOnlyList<MapReader> Inners(string key, string innerThing) =>
        [.. Items(key).Select(item => Of(item, innerThing, problems)).OfType<MapReader>()];

    /// <summary>Where the value of a key stands, or the map when the key is missing.</summary>
    public Place PlaceOf(string key) => entries.GetValueOrDefault(key)?.Value.Place ?? Place;

    /// <summary>Reports every key that was not asked for, each at its place with the nearest spelling.</summary>
    public void Done(Severity severity = Severity.Error)
    {
        foreach (YamlEntry entry in entries.Values.Where(entry => !asked.Contains(entry.Key.Text)))
        {
            problems.Add(Messages.UnknownKey(entry.Key.Place, severity, entry.Key.Text, thing, asked));
        }
    }

    private IReadOnlyList<YamlNode> ItemsOf(YamlNode node, string key)
    {
        if (node is YamlList list)
        {
            return list.Items;
        }

        problems.Add(Messages.WrongShape(node, key, "a list", $"{key}: [one, two]"));
        return [];
    }

    private T? Missing<T>(string key)
        where T : class
    {
        problems.Add(Messages.MissingKey(PlaceOf(key), key, thing));
        return null;
    }
}
