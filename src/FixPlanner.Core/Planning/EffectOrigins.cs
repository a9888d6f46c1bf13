using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning;

/// <summary>What stands behind an effect that rests on the pack's figures: the fix's own triple, and how sure its causes are.</summary>
internal static class EffectOrigins
{
    private const string Formula = "as believed = chance that the cause is there x what the fix takes away of it; if the cause is there = the fix's own range";

    /// <summary>Origin of one effect of one fix, and which input makes its range wide.</summary>
    public static (FigureOrigin Origin, string? MattersMost) Of(KnowledgePack pack, Fix fix, EffectSpread effect, Func<string, double> belief)
    {
        List<FigureInput> inputs = [];
        if (fix.Effects.FirstOrDefault(e => e.On == effect.On) is { } stated)
        {
            inputs.Add(new("stated_effect", $"{EffectNames.Title(effect.On)} when the cause is there, as the rule pack states it", effect.On == EffectOn.Drag ? "%" : EffectNames.Unit(effect.On), stated.Range, fix.EffectsBasis.Text, false));
        }

        foreach (string cause in fix.ActsOn.Keys.Order(StringComparer.Ordinal))
        {
            inputs.Add(new($"chance_of_{cause}", $"chance of: {pack.Mechanism(cause)?.Title ?? cause}", "", Triangle.Certain(belief(cause)), "beliefs after your answers", true));
        }

        // The variance of 'as believed' is that of the effect where the cause is there, and that of whether it is there.
        double chance = fix.ActsOn.Keys.Select(belief).DefaultIfEmpty(0).Max();
        double ofEffect = chance * Math.Pow((effect.IfCause.High - effect.IfCause.Low) / 3.29, 2);
        double ofBelief = chance * (1 - chance) * effect.IfCause.Likely * effect.IfCause.Likely;
        string? most = ofEffect + ofBelief == 0 ? null : ofEffect >= ofBelief ? "stated_effect" : $"chance_of_{fix.ActsOn.Keys.MaxBy(belief)}";
        return (new("rule pack", Formula, fix.EffectsBasis.Text, "on the car as it is, one fix at a time", inputs), most);
    }

    /// <summary>Origin of an effect of the whole set.</summary>
    public static FigureOrigin OfSet(IReadOnlyList<Fix> set, EffectOn on) => new(
        "rule pack", "fixes on one cause leave the product of what each leaves; noise adds as energy; drag as drag area on the car as it is", "the fixes named beside it", "the whole set together",
        [.. set.SelectMany(f => f.Effects.Where(e => e.On == on).Select(e => new FigureInput(f.Id, f.Title, on == EffectOn.Drag ? "%" : EffectNames.Unit(on), e.Range, f.EffectsBasis.Text, false)))]);

    /// <summary>The fix whose range is the widest.</summary>
    public static string? Widest(FigureOrigin origin) => origin.Inputs.Count == 0 ? null : origin.Inputs.MaxBy(i => i.Range.High - i.Range.Low)!.Name;
}
