using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads the questions of a zone in walking order.</summary>
internal static class ObservationBinder
{
    public static void Bind(MapReader root, FileBinder binder)
    {
        foreach (MapReader map in root.Inners("observations", "an observation"))
        {
            binder.Bound.Observations.Add(Observation(map, binder));
            map.Done();
        }
    }

    private static Observation Observation(MapReader map, FileBinder binder)
    {
        string id = binder.ListedId(map, RuleKind.Observation);
        IReadOnlyList<Answer> answers = Answers(map, binder);
        return new(id, binder.File.ZoneFolder, map.NeedText("question"), map.NeedText("how"), answers, binder.NeedBasis(map, "sources", "the observation"))
        {
            Why = map.NeedText("why"),
            NoticedBy = map.NeedOneOf("noticed_by", Words.NoticedBy, "look"),
            EvidenceGroup = map.NeedText("evidence_group"),
            When = map.NeedOneOf("when", Words.When, LookWhen.Parked),
            EffortMinutes = binder.NeedFigure(map, "effort", PackUnit.Minutes) ?? 5,
            Speed = map.Text("speed") ?? "",
            Repeatability = map.NeedOneOf("repeatability", Words.Repeatability, Repeatability.Medium),
            Ordered = map.YesNo("ordered"),
            PrivateGround = map.YesNo("private_ground"),
            Who = map.Text("who"),
            State = map.Text("state"),
            AppliesWhen = ConditionBinder.Read(map, "applies_when", binder),
            ReplacedByModel = map.YesNo("replaced_by_model"),
            SpoilsRoundAnswers = Spoils(map, answers, binder),
            Trap = map.Text("trap"),
            Aliases = map.Aliases(),
        };
    }

    private static List<Answer> Answers(MapReader map, FileBinder binder)
    {
        List<Answer> answers = [];
        foreach (YamlEntry entry in binder.Entries(map, "answers"))
        {
            if (entry.Value is YamlMap)
            {
                MapReader inner = new((YamlMap)entry.Value, "an answer", binder.Problems);
                answers.Add(new(entry.Key.Text, inner.NeedText("text"), binder.Share(inner, "usual")) { Grid = Shapes(inner, binder) });
                inner.Done();
            }
            else if (ValueReader.Scalar(entry.Value, entry.Key.Text, binder.Problems) is { } text)
            {
                answers.Add(new(entry.Key.Text, text.Text));
            }
        }

        if (answers.Count < 2)
        {
            binder.Problems.Add(Messages.TooFewAnswers(map.PlaceOf("answers"), "answers"));
        }

        return answers;
    }

    private static List<GridShape> Shapes(MapReader map, FileBinder binder)
    {
        List<GridShape> shapes = [];
        foreach (YamlScalar scalar in map.Scalars("grid"))
        {
            if (ValueReader.OneOf(scalar, "grid", Words.GridShapes, binder.Problems, out GridShape shape))
            {
                shapes.Add(shape);
            }
        }

        return shapes;
    }

    private static List<string> Spoils(MapReader map, IReadOnlyList<Answer> answers, FileBinder binder)
    {
        List<string> found = [];
        foreach (YamlScalar scalar in map.Scalars("spoils_round"))
        {
            if (answers.Any(answer => answer.Id == scalar.Text))
            {
                found.Add(scalar.Text);
            }
            else
            {
                binder.Problems.Add(Messages.UnknownAnswer(scalar.Place, scalar.Text, "this observation", answers.Select(answer => answer.Id)));
            }
        }

        return found;
    }
}
