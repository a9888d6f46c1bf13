using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning;

/// <summary>Sums of a plan, and effects as they are shown.</summary>
internal static class PlanSums
{
    public static PlanTotals Of(PlanModel model, Choice choice, PlanDrawing? drawing, bool withPhysics)
    {
        int[] all = [.. choice.SafetyNumbers, .. choice.Chosen];
        double cost = all.Sum(i => model.Cost[i].Likely);
        double hours = all.Sum(i => model.Hours[i].Likely);
        double? budget = choice.Situation.Logbook.Limits.BudgetEur;
        MoneyDraws money = drawing?.Money ?? MoneyDraws.Of([.. all.Select(model.Money)], budget - choice.Spent);
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
            drawing is null ? [] : OfSet(model, choice, drawing.Whole, [.. all.Select(i => model.Fixes[i])], withPhysics));
    }

    /// <summary>Effects of one line in the units of this car, each with what stands behind it.</summary>
    public static IReadOnlyList<PlannedEffect> OfLine(PlanModel model, Choice choice, IReadOnlyList<EffectSpread> effects, Fix fix, bool withPhysics)
    {
        PhysicalEffects units = new(choice.Inputs);
        double Belief(string cause) => model.Effects.CauseNumber(model.Pack.Mechanism(cause)?.Id ?? cause) is var c and >= 0 ? choice.Belief[c] : 0;
        IReadOnlyList<EffectSpread> computed = withPhysics ? Recomputed(effects, choice, [fix], model.Physics) : effects;
        return
        [
            .. computed.SelectMany(e =>
            {
                (FigureOrigin origin, string? most) = EffectOrigins.Of(model.Pack, fix, e, Belief);
                return units.Of(e, origin, most);
            }),
            .. withPhysics ? model.Physics?.InUnits(choice.Situation, [fix]) ?? [] : [],
        ];
    }

    /// <summary>Effects of a whole set in the units of this car.</summary>
    public static IReadOnlyList<PlannedEffect> OfSet(PlanModel model, Choice choice, IReadOnlyList<EffectSpread> effects, IReadOnlyList<Fix> set, bool withPhysics)
    {
        PhysicalEffects units = new(choice.Inputs);
        IReadOnlyList<EffectSpread> computed = withPhysics ? Recomputed(effects, choice, set, model.Physics) : effects;
        return
        [
            .. computed.SelectMany(e =>
            {
                FigureOrigin origin = EffectOrigins.OfSet(set, e.On);
                return units.Of(e, origin, EffectOrigins.Widest(origin));
            }),
            .. withPhysics ? model.Physics?.InUnits(choice.Situation, set) ?? [] : [],
        ];
    }

    /// <summary>Sums with what physics says of the set instead, where it can.</summary>
    public static IReadOnlyList<EffectSpread> Recomputed(IReadOnlyList<EffectSpread> sums, Choice choice, IReadOnlyList<Fix> set, ISetPhysics? physics)
    {
        IReadOnlyDictionary<EffectOn, Spread>? computed = physics?.Changes(choice.Situation, set);
        return computed is null or { Count: 0 } ? sums
            : [.. sums.Where(e => !computed.ContainsKey(e.On)).Concat(computed.Select(c => new EffectSpread(c.Key, c.Value, c.Value))).OrderBy(e => e.On)];
    }
}
