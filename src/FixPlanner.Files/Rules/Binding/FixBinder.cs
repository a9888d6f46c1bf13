using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads a fix.</summary>
internal static class FixBinder
{
    public static void Bind(MapReader map, FileBinder binder)
    {
        string id = binder.OwnId(map, RuleKind.Fix);
        (Triangle cost, Basis? costBasis) = Range(map, "cost", PackUnit.Euros, binder);
        (Triangle hours, Basis? hoursBasis) = Range(map, "hours", PackUnit.Hours, binder);
        EffectsReading effects = EffectsBinder.Read(map, binder);
        MapReader? gates = map.Inner("gates", "gates");
        Fix fix = new(id, map.NeedText("title"), binder.File.ZoneFolder, map.NeedText("what"), cost, hours, ActsOn(map, binder), effects.Effects, effects.Basis)
        {
            CostBasis = costBasis,
            HoursBasis = hoursBasis,
            Materials = map.NeedText("materials"),
            Tools = map.NeedText("tools"),
            Skill = map.NeedOneOf("skill", Words.Skills, Skill.Professional),
            Reversible = map.NeedOneOf("reversible", Words.Reversible, Reversible.No),
            ReversibleNote = map.Text("reversible_note") ?? "",
            Trial = Trial(map, binder),
            NoTrialWhy = map.Text("no_trial"),
            Confidence = effects.Confidence,
            SideEffects = map.Text("risk") ?? "",
            Conflicts = Conflicts(map, binder),
            GoesWellWith = GoesWellWith(map, binder),
            Prerequisites = map.Text("beforehand") ?? "",
            Requires = [.. map.Inners("requires", "a prerequisite").Select(inner => RequirementBinder.Read(inner, binder)).OfType<Requirement>()],
            Before = gates is null ? [] : binder.NamedList(gates, "before", RuleKind.Gate),
            WithTheWork = gates is null ? [] : binder.NamedList(gates, "with_the_work", RuleKind.Gate),
            BeforeFastUse = gates is null ? [] : binder.NamedList(gates, "before_fast_use", RuleKind.Gate),
            SafetyNote = map.Text("caution") ?? "",
            LegalNote = map.Text("legal") ?? "",
            Verify = [.. binder.Answers(map, "verify").Select(look => new Verification(look.Observation, look.Answer))],
            SignOff = map.NeedText("sign_off"),
            AppliesWhen = ConditionBinder.Read(map, "applies_when", binder),
            SealsCabin = map.YesNo("seals_cabin"),
            AirWays = AirWaysBinder.Read(map, binder),
            SealingExemption = map.Text("sealing_exempt"),
            Maturity = map.NeedOneOf("maturity", Words.Maturity, Maturity.Draft),
            Aliases = map.Aliases(),
        };
        gates?.Done();
        binder.Bound.Fixes.Add(fix);
    }

    private static (Triangle Range, Basis? Basis) Range(MapReader map, string key, PackUnit unit, FileBinder binder)
    {
        if (map.NeedInner(key, "the " + key) is not { } inner)
        {
            return (default, null);
        }

        Triangle range = binder.NeedTriangle(inner, "the " + key, unit, least: 0);
        Basis basis = binder.NeedBasis(inner, "basis", "the " + key);
        inner.Done();
        return (range, basis);
    }

    private static Dictionary<string, FixAction> ActsOn(MapReader map, FileBinder binder)
    {
        Dictionary<string, FixAction> found = [];
        foreach (YamlEntry entry in binder.Entries(map, "acts_on"))
        {
            if (ValueReader.Scalar(entry.Value, entry.Key.Text, binder.Problems) is { } word
                && ValueReader.OneOf(word, "what it does", Words.Actions, binder.Problems, out FixAction action)
                && binder.Named(entry.Key, RuleKind.Mechanism) is { } cause)
            {
                found[cause] = action;
            }
        }

        return found;
    }

    private static Trial? Trial(MapReader map, FileBinder binder)
    {
        if (map.Inner("trial", "the trial") is not { } inner)
        {
            return null;
        }

        EffectOn? shows = null;
        if (inner.Scalar("shows") is { } word && ValueReader.OneOf(word, "shows", Words.Quantities, binder.Problems, out EffectOn on))
        {
            shows = on;
        }

        Trial trial = new(
            inner.NeedText("do"),
            binder.NeedFigure(inner, "cost", PackUnit.Euros) ?? 0,
            binder.NeedFigure(inner, "hours", PackUnit.Hours) ?? 0,
            shows,
            shows is { } quantity ? binder.FigureIn(inner, "se", EffectsBinder.UnitOf(quantity)) : null)
        {
            Basis = binder.NeedBasis(inner, "basis", "the trial"),
        };
        inner.Done();
        return trial;
    }

    private static List<Conflict> Conflicts(MapReader map, FileBinder binder)
    {
        List<Conflict> found = [];
        foreach (YamlEntry entry in binder.Entries(map, "conflicts"))
        {
            if (MapReader.Of(entry.Value, "a conflict", binder.Problems) is not { } inner)
            {
                continue;
            }

            ConflictKind kind = inner.NeedOneOf("kind", Words.Conflicts, ConflictKind.Watch);
            string why = inner.NeedText("why");
            inner.Done();
            if (binder.Named(entry.Key, RuleKind.Fix) is { } other)
            {
                found.Add(new(other, kind, why));
            }
        }

        return found;
    }

    private static List<(string Fix, string Why)> GoesWellWith(MapReader map, FileBinder binder)
    {
        List<(string, string)> found = [];
        foreach (YamlEntry entry in binder.Entries(map, "goes_well_with"))
        {
            if (ValueReader.Scalar(entry.Value, entry.Key.Text, binder.Problems) is { } why && binder.Named(entry.Key, RuleKind.Fix) is { } other)
            {
                found.Add((other, why.Text));
            }
        }

        return found;
    }
}
