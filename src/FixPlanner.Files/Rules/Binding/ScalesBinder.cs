using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads pack.yaml and scales.yaml.</summary>
internal static class ScalesBinder
{
    public static void BindHead(MapReader map, FileBinder binder)
    {
        SealingRule sealing = new("", new(""), 0);
        if (map.NeedInner("sealing", "the sealing rule") is { } inner)
        {
            _ = inner.NeedText("why");
            _ = inner.NeedText("counted");
            string? gate = inner.NeedScalar("gate") is { } scalar ? binder.Named(scalar, RuleKind.Gate) : null;
            Requirement? outlet = inner.NeedInner("outlet", "the outlet") is { } first ? RequirementBinder.Read(first, binder) : null;
            sealing = new(gate ?? "", outlet ?? new(""), binder.NeedFigure(inner, "glass_load_worst", PackUnit.Percent) ?? 0);
            _ = binder.NeedBasis(inner, "basis", "the sealing rule");
            inner.Done();
        }

        binder.Bound.Head = new(map.NeedText("id"), map.NeedText("version"), map.NeedText("title"), map.NeedText("what"), map.NeedText("legal_note"), sealing, binder.NeedBasis(map, "sizes_basis", "the sizes in prose"));
    }

    public static void BindScales(MapReader map, FileBinder binder)
    {
        Dictionary<Strength, StrengthRatios> strengths = Strengths(map, binder);
        _ = binder.NeedBasis(map, "strengths_basis", "the strengths");
        double power = map.NeedNumber("same_group_power", 0, 1);
        _ = map.NeedText("same_group_rule");
        _ = map.NeedText("low_repeatability_rule");
        _ = map.NeedText("effect_order");
        _ = ReadPriors(map, binder);
        List<Aim> aims = [.. map.Inners("aims", "an aim").Select(inner => Aim(inner, binder))];
        Dictionary<EffectOn, double> steps = Steps(map, binder);
        _ = binder.NeedBasis(map, "worthwhile_steps_basis", "the worthwhile steps");
        binder.Bound.Scales = new(strengths, aims, steps, [], power, "", 0);
    }

    /// <summary>The words that stand for a prior. They must be known before any cause is read.</summary>
    public static IReadOnlyDictionary<string, double> PriorWords(MapReader map, FileBinder binder) => ReadPriors(map, binder);

    private static Dictionary<string, double> ReadPriors(MapReader map, FileBinder binder)
    {
        Dictionary<string, double> words = [];
        if (map.NeedInner("priors", "the priors") is not { } inner)
        {
            return words;
        }

        foreach (YamlEntry entry in binder.Entries(inner, "words"))
        {
            if (ValueReader.Scalar(entry.Value, entry.Key.Text, binder.Problems) is { } scalar && Figure.Share(scalar, entry.Key.Text, binder.Problems) is { } share)
            {
                words[entry.Key.Text] = share;
            }
        }

        _ = inner.NeedText("meaning");
        _ = inner.NeedText("order");
        _ = inner.NeedText("size");
        _ = inner.NeedText("no_double_count");
        _ = binder.NeedBasis(inner, "basis", "the priors");
        inner.Done();
        return words;
    }

    private static Dictionary<Strength, StrengthRatios> Strengths(MapReader map, FileBinder binder)
    {
        Dictionary<Strength, StrengthRatios> found = [];
        if (map.NeedInner("strengths", "the strengths") is not { } inner)
        {
            return found;
        }

        foreach ((string word, Strength strength) in Words.StrengthNames)
        {
            if (inner.NeedInner(word, word) is { } ratios)
            {
                found[strength] = new(ratios.NeedNumber("for", 1, 1000), ratios.NeedNumber("against", 0.001, 1));
                ratios.Done();
            }
        }

        inner.Done();
        return found;
    }

    private static Aim Aim(MapReader map, FileBinder binder)
    {
        List<EffectOn> quantities = [];
        foreach (YamlScalar scalar in map.NeedScalars("quantities"))
        {
            if (ValueReader.OneOf(scalar, "quantities", Words.Quantities, binder.Problems, out EffectOn quantity))
            {
                quantities.Add(quantity);
            }
        }

        Aim aim = new(map.NeedText("id"), map.NeedText("title"), quantities);
        map.Done();
        return aim;
    }

    private static Dictionary<EffectOn, double> Steps(MapReader map, FileBinder binder)
    {
        Dictionary<EffectOn, double> found = [];
        if (map.NeedInner("worthwhile_steps", "the worthwhile steps") is not { } inner)
        {
            return found;
        }

        foreach ((string word, EffectOn quantity) in Words.Quantities)
        {
            PackUnit unit = quantity == EffectOn.Drag ? PackUnit.SquareMetres : EffectsBinder.UnitOf(quantity);
            if (binder.NeedFigure(inner, word, unit) is { } step)
            {
                found[quantity] = step;
            }
        }

        inner.Done();
        return found;
    }
}
