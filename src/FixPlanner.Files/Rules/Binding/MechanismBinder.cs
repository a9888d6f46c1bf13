using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads a cause.</summary>
internal static class MechanismBinder
{
    public static void Bind(MapReader map, FileBinder binder)
    {
        string id = binder.OwnId(map, RuleKind.Mechanism);
        Mechanism mechanism = new(
            id,
            map.NeedText("title"),
            map.NeedText("what"),
            map.NeedText("why"),
            map.NeedOneOf("kind", Words.CauseKinds, MechanismKind.Flow),
            [binder.File.ZoneFolder, .. binder.NamedList(map, "also_in", RuleKind.Zone)],
            Prior(map, binder),
            binder.NeedBasis(map, "sources", "the cause"))
        {
            PriorUnknown = binder.Share(map, "prior_unknown"),
            PriorIf = PriorIf(map, binder),
            AppliesWhen = ConditionBinder.Read(map, "applies_when", binder),
            Hurts = Hurts(map, binder),
            GrowsWithSpeed = map.NeedText("grows_with_speed"),
            Signs = Signs(map, binder),
            MistakenFor = MistakenFor(map, binder),
            NotAir = map.Text("not_air") ?? "",
            BestNextLook = BestLook(map, binder),
            Maturity = map.NeedOneOf("maturity", Words.Maturity, Maturity.Draft),
            Aliases = map.Aliases(),
        };
        binder.Bound.Mechanisms.Add(mechanism);
    }

    private static double Prior(MapReader map, FileBinder binder)
    {
        if (map.NeedScalar("prior") is not { } scalar)
        {
            return 0;
        }

        return binder.Context.PriorWords.TryGetValue(scalar.Text, out double prior) ? prior : Figure.Share(scalar, "prior", binder.Problems) ?? 0;
    }

    private static List<PriorIf> PriorIf(MapReader map, FileBinder binder)
    {
        List<PriorIf> found = [];
        foreach (MapReader inner in map.Inners("prior_if", "a prior"))
        {
            Condition? when = inner.NeedNode("when") is { } node ? ConditionBinder.Read(node, "when", binder) : null;
            if (when is not null && binder.Share(inner, "prior") is { } prior)
            {
                found.Add(new(when, prior));
            }

            inner.Done();
        }

        return found;
    }

    private static List<string> Hurts(MapReader map, FileBinder binder)
    {
        List<string> found = [];
        foreach (YamlScalar scalar in map.Scalars("hurts"))
        {
            if (ValueReader.OneOf(scalar, "hurts", Words.Hurts, binder.Problems, out string? word))
            {
                found.Add(word!);
            }
        }

        return found;
    }

    private static List<Sign> Signs(MapReader map, FileBinder binder)
    {
        List<Sign> signs = [];
        foreach (YamlEntry entry in binder.Entries(map, "signs"))
        {
            if (entry.Value is not YamlMap answers)
            {
                binder.Problems.Add(Messages.WrongShape(entry.Value, entry.Key.Text, "a group of keys", $"{entry.Key.Text}: {{yes: for, no: against}}"));
                continue;
            }

            foreach (YamlEntry answer in answers.Entries)
            {
                if (ValueReader.Scalar(answer.Value, answer.Key.Text, binder.Problems) is { } word
                    && ValueReader.OneOf(word, "the strength", Words.Strengths, binder.Problems, out var strength)
                    && binder.Answer(entry.Key, answer.Key) is { } named)
                {
                    signs.Add(new(named.Observation, named.Answer, strength.For, strength.Strength));
                }
            }
        }

        return signs;
    }

    private static List<Rival> MistakenFor(MapReader map, FileBinder binder)
    {
        List<Rival> rivals = [];
        foreach (YamlEntry entry in binder.Entries(map, "mistaken_for"))
        {
            if (binder.Named(entry.Key, RuleKind.Mechanism) is { } rival && ValueReader.Scalar(entry.Value, entry.Key.Text, binder.Problems) is { } text)
            {
                rivals.Add(new(rival, text.Text));
            }
        }

        return rivals;
    }

    private static (string Observation, string Why)? BestLook(MapReader map, FileBinder binder)
    {
        if (map.Inner("best_look", "the best look") is not { } inner)
        {
            return null;
        }

        string? observation = inner.NeedScalar("observation") is { } scalar ? binder.Named(scalar, RuleKind.Observation) : null;
        string why = inner.NeedText("why");
        inner.Done();
        return observation is null ? null : (observation, why);
    }
}
