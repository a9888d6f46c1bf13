using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules.Layers;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>What every file of the pack needs when it is bound: ids and what they name, figures with unit and basis, conditions.</summary>
internal sealed class FileBinder(RuleFile file, BindContext context)
{
    public RuleFile File { get; } = file;

    public BindContext Context { get; } = context;

    public BoundRules Bound { get; } = new();

    public ProblemList Problems => Bound.Problems;

    /// <summary>Reads the id of the one rule of a file, which is its name.</summary>
    public string OwnId(MapReader map, RuleKind kind)
    {
        string id = ListedId(map, kind);
        if (id.Length > 0 && id != File.Name)
        {
            Problems.Add(Messages.IdIsNotFileName(map.PlaceOf("id"), id, File.Name));
        }

        return id;
    }

    /// <summary>Reads the id of a rule in a list.</summary>
    public string ListedId(MapReader map, RuleKind kind)
    {
        string id = map.NeedText("id");
        if (id.Length > 0 && !IsWellFormed(id, kind))
        {
            Problems.Add(Messages.IllFormedId(map.PlaceOf("id"), id, kind));
        }

        if (id.Length > 0)
        {
            Bound.Definitions.Add(new(kind, id, map.PlaceOf("id"), map.Aliases(), File.Layer));
        }

        return id;
    }

    /// <summary>Notes that an id is named here; null when a layer retired what it names.</summary>
    public string? Named(YamlScalar scalar, RuleKind kind)
    {
        if (Context.Retired.Contains((kind, scalar.Text)))
        {
            return null;
        }

        Bound.Mentions.Add(new(kind, scalar.Text, scalar.Place));
        return scalar.Text;
    }

    public IReadOnlyList<string> NamedList(MapReader map, string key, RuleKind kind) =>
        [.. map.Scalars(key).Select(scalar => Named(scalar, kind)).OfType<string>()];

    /// <summary>A map from observations to one answer each.</summary>
    public IReadOnlyList<(string Observation, string Answer)> Answers(MapReader map, string key)
    {
        List<(string, string)> found = [];
        foreach (YamlEntry entry in Entries(map, key))
        {
            if (ValueReader.Scalar(entry.Value, entry.Key.Text, Problems) is { } answer && Answer(entry.Key, answer) is { } named)
            {
                found.Add(named);
            }
        }

        return found;
    }

    public (string Observation, string Answer)? Answer(YamlScalar observation, YamlScalar answer)
    {
        if (Named(observation, RuleKind.Observation) is not { } id)
        {
            return null;
        }

        Bound.AnswerMentions.Add(new(id, answer.Text, answer.Place));
        return (id, answer.Text);
    }

    /// <summary>The entries of a map whose keys are ids or words; none when it is missing.</summary>
    public IReadOnlyList<YamlEntry> Entries(MapReader map, string key)
    {
        if (map.Node(key) is not { } node)
        {
            return [];
        }

        if (node is YamlMap inner)
        {
            return inner.Entries;
        }

        Problems.Add(Messages.WrongShape(node, key, "a group of keys", $"{key}: then one line for each"));
        return [];
    }

    /// <summary>Named texts: a map of words to prose.</summary>
    public IReadOnlyList<(string Name, string Text)> Texts(MapReader map, string key) =>
        [.. Entries(map, key).Select(entry => (entry.Key.Text, ValueReader.Scalar(entry.Value, entry.Key.Text, Problems)?.Text ?? ""))];

    /// <summary>Where a figure or rule comes from; reported when it names nothing.</summary>
    public Basis NeedBasis(MapReader map, string key, string what) =>
        map.NeedScalar(key) is { } scalar ? BasisText.Read(scalar, what, this) : BasisText.None;

    public double? NeedFigure(MapReader map, string key, PackUnit unit) =>
        map.NeedScalar(key) is { } scalar ? Figure.Read(scalar, key, unit, Problems) : null;

    public double? FigureIn(MapReader map, string key, PackUnit unit) =>
        map.Scalar(key) is { } scalar ? Figure.Read(scalar, key, unit, Problems) : null;

    public double? Share(MapReader map, string key) => map.Scalar(key) is { } scalar ? Figure.Share(scalar, key, Problems) : null;

    /// <summary>low, likely and high, in order.</summary>
    public Triangle NeedTriangle(MapReader map, string what, PackUnit unit, double least = double.NegativeInfinity)
    {
        double? low = NeedFigure(map, "low", unit);
        double? likely = NeedFigure(map, "likely", unit);
        double? high = NeedFigure(map, "high", unit);
        if (low is not { } l || likely is not { } m || high is not { } h)
        {
            return default;
        }

        if (l <= m && m <= h && l >= least)
        {
            return new(l, m, h);
        }

        Problems.Add(Messages.RangeOutOfOrder(map.Place, what, "low", "likely", "high"));
        return default;
    }

    private static bool IsWellFormed(string id, RuleKind kind) => kind switch
    {
        RuleKind.Source => id.All(c => char.IsAsciiLetterOrDigit(c) || c == '-'),
        RuleKind.Fact => id.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '_') && char.IsAsciiLetterLower(id[0]),
        _ => id.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-') && char.IsAsciiLetterLower(id[0]),
    };
}
