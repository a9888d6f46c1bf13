using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>What the effects of a fix say.</summary>
internal sealed record EffectsReading(IReadOnlyList<Effect> Effects, Basis Basis, string Confidence);

/// <summary>Reads effects: for each quantity worst, likely and best from the owner's point of view.</summary>
internal static class EffectsBinder
{
    public static PackUnit UnitOf(EffectOn quantity) => quantity switch
    {
        EffectOn.Drag or EffectOn.GlassLoad => PackUnit.Percent,
        EffectOn.FrontLift or EffectOn.RearLift => PackUnit.LiftCoefficient,
        EffectOn.Noise => PackUnit.Decibels,
        _ => PackUnit.Steps,
    };

    /// <summary>True where a smaller value is better for the owner.</summary>
    public static bool LessIsBetter(EffectOn quantity) =>
        quantity is EffectOn.Drag or EffectOn.FrontLift or EffectOn.RearLift or EffectOn.Noise or EffectOn.GlassLoad;

    public static EffectsReading Read(MapReader map, FileBinder binder)
    {
        if (map.NeedInner("effects", "effects") is not { } inner)
        {
            return new([], BasisText.None, "low");
        }

        List<Effect> effects = [];
        foreach ((string word, EffectOn quantity) in Words.Quantities)
        {
            if (inner.Inner(word, word) is { } one)
            {
                if (One(one, word, quantity, binder) is { } effect)
                {
                    effects.Add(effect);
                }

                one.Done();
            }
        }

        string confidence = inner.NeedOneOf("confidence", Words.Confidence, "low");
        Basis basis = binder.NeedBasis(inner, "basis", "the effects");
        inner.Done();
        return new(effects, basis, confidence);
    }

    private static Effect? One(MapReader map, string word, EffectOn quantity, FileBinder binder)
    {
        PackUnit unit = UnitOf(quantity);
        double? worst = binder.NeedFigure(map, "worst", unit);
        double? likely = binder.NeedFigure(map, "likely", unit);
        double? best = binder.NeedFigure(map, "best", unit);
        if (worst is not { } w || likely is not { } l || best is not { } b)
        {
            return null;
        }

        if (LessIsBetter(quantity) ? w >= l && l >= b : w <= l && l <= b)
        {
            return new(quantity, w, l, b);
        }

        binder.Problems.Add(Messages.EffectOutOfOrder(map.Place, word, LessIsBetter(quantity)));
        return null;
    }
}
