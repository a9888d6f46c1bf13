using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Files.Rules.Binding;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Cases;

/// <summary>Reads situations. They are read with the pack when it is checked, not when it is used.</summary>
internal static class CaseBinder
{
    private const double UsualBudgetEur = 600;
    private const double UsualHours = 30;

    public static void Bind(MapReader root, FileBinder binder)
    {
        foreach (MapReader map in root.Inners("cases", "a case"))
        {
            binder.Bound.Cases.Add(new(
                map.NeedText("case"),
                map.Place,
                Given(map, binder),
                Outcome(map.Inner("expect", "expect"), binder),
                Outcome(map.Inner("expect_not", "expect_not"), binder)));
            map.Done();
        }
    }

    private static CaseGiven Given(MapReader map, FileBinder binder)
    {
        Dictionary<string, FactValue> facts = [];
        Dictionary<string, string> seen = [];
        Dictionary<string, double> aims = [];
        if (map.Inner("given", "given") is not { } given)
        {
            return new(facts, seen, aims, UsualBudgetEur, UsualHours, [], [], []);
        }

        foreach (YamlEntry entry in binder.Entries(given, "facts"))
        {
            if (binder.Named(entry.Key, RuleKind.Fact) is { } id && Value(entry, id, binder) is { } value)
            {
                facts[id] = value;
            }
        }

        foreach ((string observation, string answer) in binder.Answers(given, "seen"))
        {
            seen[observation] = answer;
        }

        foreach (YamlEntry entry in binder.Entries(given, "aims"))
        {
            if (ValueReader.Scalar(entry.Value, entry.Key.Text, binder.Problems) is { } weight)
            {
                aims[entry.Key.Text] = ValueReader.Number(weight, entry.Key.Text, 0, 3, binder.Problems) ?? 0;
            }
        }

        double budget = binder.FigureIn(given, "budget", PackUnit.Euros) ?? UsualBudgetEur;
        double hours = binder.FigureIn(given, "hours", PackUnit.Hours) ?? UsualHours;
        CaseGiven all = new(facts, seen, aims, budget, hours, binder.NamedList(given, "planned", RuleKind.Fix), binder.NamedList(given, "runs", RuleKind.Run), SignedOff(given, binder))
        {
            Never = binder.NamedList(given, "never", RuleKind.Fix),
        };
        given.Done();
        return all;
    }

    private static FactValue? Value(YamlEntry entry, string id, FileBinder binder)
    {
        if (ValueReader.Scalar(entry.Value, id, binder.Problems) is not { } scalar
            || ConditionBinder.FactValue(scalar, Comparison.Is, id, binder) is not { } text
            || !binder.Context.Facts.TryGetValue(id, out Fact? fact))
        {
            return null;
        }

        return fact.Kind switch
        {
            FactKind.YesNo => FactValue.YesNo(text == "yes"),
            FactKind.Number => FactValue.Of(double.Parse(text)),
            FactKind.Year => ValueReader.Integer(scalar, id, 1880, 2200, binder.Problems) is { } year ? FactValue.Year(year) : null,
            _ => FactValue.Choice(text),
        };
    }

    private static List<(string Gate, string Kind)> SignedOff(MapReader given, FileBinder binder)
    {
        List<(string, string)> found = [];
        foreach (YamlEntry entry in binder.Entries(given, "signed_off"))
        {
            if (binder.Named(entry.Key, RuleKind.Gate) is { } gate && ValueReader.Scalar(entry.Value, gate, binder.Problems) is { } kind)
            {
                found.Add((gate, kind.Text));
            }
        }

        return found;
    }

    private static CaseOutcome Outcome(MapReader? map, FileBinder binder)
    {
        Dictionary<string, IReadOnlyList<string>> gates = [];
        if (map is null)
        {
            return new([], [], [], [], [], [], [], gates);
        }

        if (map.Inner("gates", "gates") is { } states)
        {
            foreach (string state in CaseOutcome.GateStates)
            {
                gates[state] = binder.NamedList(states, state, RuleKind.Gate);
            }

            states.Done();
        }

        CaseOutcome outcome = new(
            binder.NamedList(map, "likely", RuleKind.Mechanism),
            binder.NamedList(map, "near_top", RuleKind.Mechanism),
            binder.NamedList(map, "doubted", RuleKind.Mechanism),
            binder.NamedList(map, "plan", RuleKind.Fix),
            binder.NamedList(map, "held", RuleKind.Fix),
            binder.NamedList(map, "open", RuleKind.Fix),
            binder.NamedList(map, "left_out", RuleKind.Fix),
            gates);
        map.Done();
        return outcome;
    }
}
