using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads a safety gate.</summary>
internal static class GateBinder
{
    private const int MostMustKnow = 3;

    public static void Bind(MapReader map, FileBinder binder)
    {
        string id = binder.OwnId(map, RuleKind.Gate);
        MapReader? triggers = map.Inner("triggers", "triggers");
        MapReader? blocks = map.Inner("blocks", "blocks");
        bool all = blocks?.Node("fixes") is YamlScalar { Text: "all" };
        Gate gate = new(
            id,
            map.NeedText("title"),
            map.NeedOneOf("level", Words.Levels, GateLevel.Stop),
            map.NeedInteger("order", 1, 999),
            map.NeedText("why"),
            map.NeedText("action"),
            map.NeedText("what"),
            Concerned(map, binder),
            MustKnow(map, binder),
            SignOffBinder.Read(map, binder),
            binder.NeedBasis(map, "sources", "the gate"))
        {
            DecidedBy = map.NeedOneOf("decided_by", Words.DecidedBy, "car"),
            IsGlass = map.YesNo("is_glass"),
            Figures = Figures(map, binder),
            TriggeredByAnswers = triggers is null ? [] : TriggerAnswers(triggers, binder),
            TriggeredByFacts = triggers is null ? [] : Conditions(triggers, binder),
            BlocksRuns = blocks is null ? [] : binder.NamedList(blocks, "runs", RuleKind.Run),
            BlocksRunsIf = blocks is null ? [] : RunsIf(blocks, binder),
            BlocksAllFixes = all,
            BlocksFixes = all || blocks is null ? [] : binder.NamedList(blocks, "fixes", RuleKind.Fix),
            HelpedByFixes = binder.NamedList(map, "helped_by", RuleKind.Fix),
            Aliases = map.Aliases(),
        };
        triggers?.Done();
        blocks?.Done();
        binder.Bound.Gates.Add(gate);
    }

    private static List<GateFigures> Figures(MapReader map, FileBinder binder)
    {
        List<GateFigures> found = [];
        foreach (YamlScalar word in map.Scalars("figures"))
        {
            if (ValueReader.OneOf(word, "figures", Words.GateFigures, binder.Problems, out GateFigures figures))
            {
                found.Add(figures);
            }
        }

        return found;
    }

    private static ConcernedWhen Concerned(MapReader map, FileBinder binder)
    {
        if (map.NeedInner("concerned_when", "concerned_when") is not { } inner)
        {
            return new(true, false, false, [], []);
        }

        ConcernedWhen concerned = new(
            inner.YesNo("always"),
            inner.YesNo("fixes"),
            inner.YesNo("faster"),
            binder.NamedList(inner, "runs", RuleKind.Run),
            Conditions(inner, binder));
        inner.Done();
        if (!concerned.Always && !concerned.Fixes && !concerned.Faster && concerned.Runs.Count == 0 && concerned.Facts.Count == 0)
        {
            binder.Problems.Add(Messages.ConcernsNobody(inner.Place));
        }

        return concerned;
    }

    private static List<Condition> Conditions(MapReader map, FileBinder binder) =>
        [.. map.Items("facts").Select(node => ConditionBinder.Read(node, "facts", binder)).OfType<Condition>()];

    private static List<AnswerTrigger> TriggerAnswers(MapReader map, FileBinder binder)
    {
        List<AnswerTrigger> found = [];
        foreach (YamlEntry entry in binder.Entries(map, "answers"))
        {
            foreach (YamlNode item in entry.Value is YamlList list ? list.Items : [entry.Value])
            {
                if (ValueReader.Scalar(item, entry.Key.Text, binder.Problems) is { } answer && binder.Answer(entry.Key, answer) is { } named)
                {
                    found.Add(new(named.Observation, named.Answer));
                }
            }
        }

        return found;
    }

    private static List<MustKnow> MustKnow(MapReader map, FileBinder binder)
    {
        List<MustKnow> found = [];
        foreach (MapReader inner in map.Inners("must_know", "an entry of must_know"))
        {
            List<MustKnowWay> ways = [];
            TakeWay(inner, ways, binder);
            foreach (MapReader other in inner.Inners("or", "another way to know"))
            {
                TakeWay(other, ways, binder);
                other.Done();
            }

            inner.Done();
            if (ways.Count > 0)
            {
                found.Add(new(ways));
            }
        }

        if (found.Count > MostMustKnow)
        {
            binder.Problems.Add(Messages.TooMuchToKnow(map.PlaceOf("must_know"), MostMustKnow));
        }

        return found;
    }

    private static void TakeWay(MapReader map, List<MustKnowWay> ways, FileBinder binder)
    {
        YamlScalar? factScalar = map.Scalar("fact");
        YamlScalar? observed = map.Scalar("observation");
        YamlScalar? only = map.Scalar("only");
        if (factScalar is null == observed is null)
        {
            binder.Problems.Add(Messages.FactOrObservation(map.Place));
            return;
        }

        if (factScalar is not null && binder.Named(factScalar, RuleKind.Fact) is { } fact)
        {
            ways.Add(new(fact, null, only is null ? null : ConditionBinder.FactValue(only, Comparison.Is, fact, binder)));
        }
        else if (observed is not null && binder.Named(observed, RuleKind.Observation) is { } observation)
        {
            if (only is not null)
            {
                binder.Bound.AnswerMentions.Add(new(observation, only.Text, only.Place));
            }

            ways.Add(new(null, observation, only?.Text));
        }
    }

    private static List<BlockedRunIf> RunsIf(MapReader map, FileBinder binder)
    {
        List<BlockedRunIf> found = [];
        foreach (MapReader inner in map.Inners("runs_if", "a run blocked on a condition"))
        {
            string? run = inner.NeedScalar("run") is { } scalar ? binder.Named(scalar, RuleKind.Run) : null;
            string when = inner.NeedText("when");
            inner.Done();
            if (run is not null)
            {
                found.Add(new(run, when));
            }
        }

        return found;
    }
}
