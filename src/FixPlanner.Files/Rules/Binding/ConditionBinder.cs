using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads conditions: one test, or <c>all</c> of several.</summary>
internal static class ConditionBinder
{
    public static readonly IReadOnlyDictionary<string, Comparison> Comparisons = new Dictionary<string, Comparison>
    {
        ["is"] = Comparison.Is,
        ["is_not"] = Comparison.IsNot,
        ["in"] = Comparison.In,
        ["not_in"] = Comparison.NotIn,
        ["at_least"] = Comparison.AtLeast,
        ["above"] = Comparison.Above,
        ["at_most"] = Comparison.AtMost,
        ["below"] = Comparison.Below,
        ["age_at_least"] = Comparison.AgeAtLeast,
        ["age_above"] = Comparison.AgeAbove,
        ["age_below"] = Comparison.AgeBelow,
        ["is_unknown"] = Comparison.IsUnknown,
    };

    public static Condition? Read(MapReader map, string key, FileBinder binder) =>
        map.Node(key) is { } node ? Read(node, key, binder) : null;

    public static Condition? Read(YamlNode node, string what, FileBinder binder)
    {
        if (MapReader.Of(node, "the condition " + what, binder.Problems) is not { } map)
        {
            return null;
        }

        if (map.Map.Find("all") is null)
        {
            return Test(map, binder) is { } one ? new Condition([one]) : null;
        }

        List<ConditionTest> tests = [];
        foreach (MapReader inner in map.Inners("all", "the condition " + what))
        {
            if (Test(inner, binder) is { } test)
            {
                tests.Add(test);
            }
        }

        map.Done();
        return tests.Count > 0 ? new Condition(tests) : null;
    }

    private static ConditionTest? Test(MapReader map, FileBinder binder)
    {
        string? fact = map.Scalar("fact") is { } f ? binder.Named(f, RuleKind.Fact) : null;
        YamlScalar? observed = map.Scalar("observation");
        string? observation = observed is null ? null : binder.Named(observed, RuleKind.Observation);
        bool unknownCounts = map.OneOf("unknown_counts", Words.YesNo, false);
        var found = Comparisons.Where(word => map.Node(word.Key) is not null).ToList();
        map.Done();
        if (map.Map.Find("fact") is null == (map.Map.Find("observation") is null) || found.Count != 1)
        {
            binder.Problems.Add(Messages.IncompleteTest(map.Place, Comparisons.Keys));
            return null;
        }

        if (fact is null && observation is null)
        {
            return null;
        }

        YamlNode value = map.Node(found[0].Key)!;
        Comparison comparison = found[0].Value;
        if (value is YamlMap)
        {
            return OtherFact(map, found[0].Key, binder) is { } other ? new(fact, observation, comparison, [], other, unknownCounts) : null;
        }

        return new(fact, observation, comparison, Values(value, comparison, fact, observed, binder), null, unknownCounts);
    }

    private static string? OtherFact(MapReader map, string key, FileBinder binder)
    {
        MapReader other = map.NeedInner(key, "the other fact")!;
        string? id = other.NeedScalar("fact") is { } scalar ? binder.Named(scalar, RuleKind.Fact) : null;
        other.Done();
        return id;
    }

    private static List<string> Values(YamlNode node, Comparison comparison, string? fact, YamlScalar? observed, FileBinder binder)
    {
        List<string> values = [];
        foreach (YamlNode item in node is YamlList list ? list.Items : [node])
        {
            if (ValueReader.Scalar(item, "the value", binder.Problems) is not { } scalar)
            {
                continue;
            }

            if (comparison == Comparison.IsUnknown)
            {
                _ = ValueReader.OneOf(scalar, "is_unknown", Words.YesNo, binder.Problems, out _);
            }
            else if (observed is not null)
            {
                binder.Bound.AnswerMentions.Add(new(observed.Text, scalar.Text, scalar.Place));
                values.Add(scalar.Text);
            }
            else if (FactValue(scalar, comparison, fact!, binder) is { } value)
            {
                values.Add(value);
            }
        }

        return values;
    }

    /// <summary>A value of a fact as the program keeps it: a word, or a number in the fact's unit.</summary>
    public static string? FactValue(YamlScalar scalar, Comparison comparison, string factId, FileBinder binder)
    {
        if (!binder.Context.Facts.TryGetValue(factId, out Fact? fact))
        {
            return scalar.Text;
        }

        bool age = comparison is Comparison.AgeAtLeast or Comparison.AgeAbove or Comparison.AgeBelow;
        if (age || fact.Kind == FactKind.Number)
        {
            PackUnit? unit = age ? PackUnit.Years : PackUnit.OfFact(fact.Unit);
            return unit is null ? scalar.Text : Figure.Read(scalar, factId, unit, binder.Problems)?.ToString("R");
        }

        IEnumerable<string> words = fact.Kind switch { FactKind.Choice => fact.Choices, FactKind.YesNo => Words.YesNo.Keys, _ => [scalar.Text] };
        if (!words.Contains(scalar.Text))
        {
            binder.Problems.Add(Messages.NotAmong(scalar, factId, words));
            return null;
        }

        return scalar.Text;
    }
}
