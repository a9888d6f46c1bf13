using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning;

/// <summary>Sums of a plan, and effects as they are shown.</summary>
internal static class PlanSums
{
    public static PlanTotals Of(PlanModel model, Choice choice, PlanDrawing? drawing, ISetPhysics? physics)
    {
        int[] all = [.. choice.SafetyNumbers, .. choice.Chosen];
        double cost = all.Sum(i => model.Cost[i].Likely);
        double hours = all.Sum(i => model.Hours[i].Likely);
        double? budget = choice.Situation.Logbook.Limits.BudgetEur;
        MoneyDraws money = drawing?.Money ?? MoneyDraws.Of(model.Draws, all, model.Cost, model.Hours, budget - choice.Spent);
        return new(
            money.CostEur,
            cost,
            money.Hours,
            hours,
            choice.Spent,
            choice.SafetyEur,
            budget is { } limit ? Math.Max(0, choice.SafetyEur + choice.Spent - limit) : 0,
            budget,
            choice.Situation.Logbook.Limits.Hours,
            choice.Answer.Points,
            drawing is null ? null : money.Overrun,
            drawing is null ? [] : Shown(Recomputed(drawing.Whole, choice, [.. all.Select(i => model.Fixes[i])], physics)));
    }

    /// <summary>Effects in the order of quantities; drag also as force.</summary>
    public static IReadOnlyList<PlannedEffect> Shown(IReadOnlyList<EffectSpread> effects) => [.. effects.SelectMany(Shown)];

    private static IEnumerable<PlannedEffect> Shown(EffectSpread effect)
    {
        yield return new(EffectNames.Key(effect.On), EffectNames.Title(effect.On), EffectNames.Unit(effect.On), effect.AsBelieved, effect.IfCause);
        if (effect.On == EffectOn.Drag)
        {
            yield return new("drag_force_change_at_100_kmh_n", "drag at 100 km/h", "N", Force(effect.AsBelieved), Force(effect.IfCause));
        }
    }

    private static Spread Force(Spread dragArea) => dragArea.Scaled(EffectNames.NewtonsPerSquareMetreAt100);

    /// <summary>Sums with what physics says of the set instead, where it can.</summary>
    public static IReadOnlyList<EffectSpread> Recomputed(IReadOnlyList<EffectSpread> sums, Choice choice, IReadOnlyList<Fix> set, ISetPhysics? physics)
    {
        IReadOnlyDictionary<EffectOn, Spread>? computed = physics?.Changes(choice.Situation, set);
        return computed is null ? sums : [.. sums.Select(e => computed.TryGetValue(e.On, out Spread spread) ? e with { AsBelieved = spread, IfCause = spread } : e)];
    }
}
