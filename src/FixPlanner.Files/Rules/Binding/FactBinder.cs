using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads the questions about the car and the body templates.</summary>
internal static class FactBinder
{
    public static readonly IReadOnlyDictionary<string, (string Name, PackUnit Unit, double Scale)> TemplateKeys = new Dictionary<string, (string, PackUnit, double)>
    {
        ["width"] = ("width_m", new("m", UnitKind.Length), 1),
        ["height"] = ("height_m", new("m", UnitKind.Length), 1),
        ["mass"] = ("mass_kg", new("kg", UnitKind.Mass), 1),
        ["frontal_area_factor"] = ("frontal_area_factor", PackUnit.Percent, 0.01),
        ["drag_coefficient"] = ("drag_coefficient", PackUnit.DragCoefficient, 1),
        ["wheelbase"] = ("wheelbase_m", new("m", UnitKind.Length), 1),
        ["rear_glass_width"] = ("rear_glass_width_m", new("m", UnitKind.Length), 1),
        ["rear_glass_height"] = ("rear_glass_height_m", new("m", UnitKind.Length), 1),
        ["front_lift_coefficient"] = ("front_lift_coefficient", PackUnit.LiftCoefficient, 1),
        ["rear_lift_coefficient"] = ("rear_lift_coefficient", PackUnit.LiftCoefficient, 1),
        ["front_side_glass_width"] = ("front_side_glass_width_m", new("m", UnitKind.Length), 1),
        ["front_side_glass_height"] = ("front_side_glass_height_m", new("m", UnitKind.Length), 1),
    };

    public static void BindFacts(MapReader root, FileBinder binder)
    {
        // What is refused as a slip of the pen is a figure too.
        _ = binder.NeedBasis(root, "basis", "the ranges");
        foreach (MapReader map in root.Inners("facts", "a fact"))
        {
            binder.Bound.Facts.Add(Fact(map, binder));
            map.Done();
        }
    }

    public static void BindTemplates(MapReader root, FileBinder binder)
    {
        foreach (MapReader map in root.Inners("templates", "a body template"))
        {
            YamlScalar? style = map.NeedScalar("body_style");
            if (style is not null)
            {
                _ = ConditionBinder.FactValue(style, Comparison.Is, "body_style", binder);
            }

            Dictionary<string, Triangle> ranges = [];
            foreach ((string key, (string name, PackUnit unit, double scale)) in TemplateKeys)
            {
                if (map.Inner(key, key) is { } range)
                {
                    ranges[name] = binder.NeedTriangle(range, key, unit).Scaled(scale);
                    range.Done();
                }
            }

            binder.Bound.Templates.Add(new(style?.Text ?? "", ranges, binder.NeedBasis(map, "basis", "the template")));
            map.Done();
        }
    }

    private static Fact Fact(MapReader map, FileBinder binder)
    {
        string id = binder.ListedId(map, RuleKind.Fact);
        FactKind kind = map.NeedOneOf("kind", Words.FactKinds, FactKind.Choice);
        string unit = kind == FactKind.Number ? map.NeedText("unit") : "";
        (FactMoment moment, int? opening, string? zone) = Asked(map, binder);
        IReadOnlyList<string> choices = kind == FactKind.Choice ? map.TextList("choices") : [];
        if (kind == FactKind.Choice && choices.Count < 2)
        {
            binder.Problems.Add(Messages.TooFewAnswers(map.PlaceOf("choices"), "choices"));
        }

        if (kind == FactKind.Number && unit.Length > 0 && PackUnit.OfFact(unit) is null)
        {
            binder.Problems.Add(Messages.UnknownUnit(map.PlaceOf("unit"), unit));
        }

        return new(id, map.NeedText("title"), kind, unit, map.NeedOneOf("scope", Words.Scopes, FactScope.Vehicle), moment)
        {
            Choices = choices,
            OpeningQuestion = opening,
            Ask = map.NeedText("ask"),
            Why = map.NeedText("why"),
            How = map.NeedText("how"),
            Zone = zone,
            ThenAsk = ThenAsk(map, binder),
            Range = Range(map, kind, unit, binder),
            FillFromTemplate = map.YesNo("fill_from_template"),
            FillsIn = FillsIn(map, choices, binder),
            Derived = map.Text("worked_out"),
            Aliases = map.Aliases(),
        };
    }

    private static (FactMoment Moment, int? Opening, string? Zone) Asked(MapReader map, FileBinder binder)
    {
        if (map.NeedScalar("asked") is not { } asked)
        {
            return (FactMoment.WorkedOut, null, null);
        }

        switch (asked.Text.Split(' '))
        {
            case ["opening", var number] when int.TryParse(number, out int n):
                return (FactMoment.Opening, n, null);
            case ["with", "opening", var number] when int.TryParse(number, out int n):
                return (FactMoment.WithOpening, n, null);
            case ["in", "zone", var zone]:
                binder.Bound.Mentions.Add(new(RuleKind.Zone, zone, asked.Place));
                return (FactMoment.InZone, null, zone);
            case ["before", "you", "drive"]:
                return (FactMoment.BeforeYouDrive, null, null);
            case ["with", "fix"]:
                return (FactMoment.WithFix, null, null);
            case ["with", "run"]:
                return (FactMoment.WithRun, null, null);
            case ["worked", "out"]:
                return (FactMoment.WorkedOut, null, null);
            default:
                binder.Problems.Add(Messages.NotAmong(asked, "asked", ["opening 1", "with opening 1", "before you drive", "in zone roof", "with fix", "with run", "worked out"]));
                return (FactMoment.WorkedOut, null, null);
        }
    }

    // A fact or an observation: facts are written with underscores or as one word, and are known already.
    private static List<string> ThenAsk(MapReader map, FileBinder binder)
    {
        List<string> found = [];
        foreach (YamlScalar scalar in map.Scalars("then_ask"))
        {
            RuleKind kind = scalar.Text.Contains('_') ? RuleKind.Fact : RuleKind.Observation;
            if (binder.Named(scalar, kind) is { } id)
            {
                found.Add(id);
            }
        }

        return found;
    }

    private static (double Low, double High)? Range(MapReader map, FactKind kind, string unit, FileBinder binder)
    {
        if (map.Inner("range", "the range") is not { } range)
        {
            return null;
        }

        double? low, high;
        if (kind == FactKind.Year)
        {
            low = range.NeedInteger("low", 1880, 2200);
            high = range.NeedInteger("high", 1880, 2200);
        }
        else
        {
            PackUnit known = PackUnit.OfFact(unit) ?? PackUnit.Steps;
            low = binder.NeedFigure(range, "low", known);
            high = binder.NeedFigure(range, "high", known);
        }

        range.Done();
        if (low >= high)
        {
            binder.Problems.Add(Messages.RangeOutOfOrder(range.Place, "the range", "low", "high"));
        }

        return low is { } l && high is { } h ? (l, h) : null;
    }

    private static FactFillsIn? FillsIn(MapReader map, IReadOnlyList<string> choices, FileBinder binder)
    {
        if (map.Inner("fills_in", "fills_in") is not { } inner)
        {
            return null;
        }

        YamlScalar? observation = inner.NeedScalar("observation");
        string? id = observation is null ? null : binder.Named(observation, RuleKind.Observation);
        Dictionary<string, string> answers = [];
        foreach (YamlEntry entry in binder.Entries(inner, "answers"))
        {
            if (!choices.Contains(entry.Key.Text))
            {
                binder.Problems.Add(Messages.NotAmong(entry.Key, "a choice", choices));
            }

            if (ValueReader.Scalar(entry.Value, entry.Key.Text, binder.Problems) is { } answer && id is not null)
            {
                binder.Bound.AnswerMentions.Add(new(id, answer.Text, answer.Place));
                answers[entry.Key.Text] = answer.Text;
            }
        }

        inner.Done();
        return id is null ? null : new(id, answers);
    }
}
