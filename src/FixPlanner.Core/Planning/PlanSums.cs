using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Planning.Recomputing;
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
            drawing is null ? [] : OfSet(choice, drawing.Whole, [.. all.Select(i => model.Fixes[i])], withPhysics ? model.Physics : null, withPhysics ? drawing.CoolingBeside : Cooling(drawing.Whole)));
    }

    /// <summary>The steps of cooling among some effects; null for none.</summary>
    public static EffectSpread? Cooling(IReadOnlyList<EffectSpread> effects) => effects.FirstOrDefault(e => e.On == EffectOn.Cooling);

    /// <summary>Effects of one line in the units of this car, each with what stands behind it.</summary>
    public static IReadOnlyList<PlannedEffect> OfLine(PlanModel model, Choice choice, IReadOnlyList<EffectSpread> effects, Fix fix, bool withPhysics)
    {
        double Belief(string cause) => model.Effects.CauseNumber(model.Pack.Mechanism(cause)?.Id ?? cause) is var c and >= 0 ? choice.Belief[c] : 0;
        EffectSpread? cooling = withPhysics && CoolingOfSet.Computes(choice.Inputs, fix) ? null : Cooling(effects);
        return InUnits(choice, withPhysics ? model.Physics : null, [fix], effects, cooling, e => EffectOrigins.Of(model.Pack, fix, e, Belief));
    }

    /// <summary>Effects of a whole set in the units of this car.</summary>
    /// <param name="choice">The car.</param>
    /// <param name="effects">Sums of the set.</param>
    /// <param name="set">The set.</param>
    /// <param name="physics">What computes whole sets; null where a key waits.</param>
    /// <param name="cooling">Steps of cooling that no model of the bay computes; null for none.</param>
    public static IReadOnlyList<PlannedEffect> OfSet(Choice choice, IReadOnlyList<EffectSpread> effects, IReadOnlyList<Fix> set, ISetPhysics? physics, EffectSpread? cooling) =>
        InUnits(choice, physics, set, effects, cooling, e =>
        {
            FigureOrigin origin = EffectOrigins.OfSet(set, e.On);
            return (origin, EffectOrigins.Widest(origin));
        });

    private static IReadOnlyList<PlannedEffect> InUnits(
        Choice choice, ISetPhysics? physics, IReadOnlyList<Fix> set, IReadOnlyList<EffectSpread> effects, EffectSpread? cooling, Func<EffectSpread, (FigureOrigin Origin, string? MattersMost)> origin)
    {
        IReadOnlyList<PlannedEffect> computed = physics?.InUnits(choice.Situation, set) ?? [];
        PlannedEffect? pull = computed.FirstOrDefault(e => e.Key == CarSetPhysics.PullKey);
        IReadOnlyDictionary<EffectOn, Spread> instead = physics?.Changes(choice.Situation, set) ?? new Dictionary<EffectOn, Spread>();
        IEnumerable<EffectSpread> sums = effects.Where(e => !instead.ContainsKey(e.On)).Concat(instead.Select(c => new EffectSpread(c.Key, c.Value, c.Value))).OrderBy(e => e.On);
        IEnumerable<PlannedEffect> told = sums.SelectMany(e =>
        {
            (FigureOrigin of, string? most) = instead.ContainsKey(e.On) && pull?.Origin is { } network ? (network, pull.MattersMost) : origin(e);
            IEnumerable<PlannedEffect> both = choice.Units.Of(e, of, most);
            return e.On == EffectOn.Cooling ? both.Take(1) : both;
        });
        return [.. told, .. Together([.. computed, .. cooling is null ? [] : choice.Units.Following(cooling)])];
    }

    /// <summary>Changes of one margin by the model of the bay and by the pack's steps, added as independent ranges.</summary>
    private static IEnumerable<PlannedEffect> Together(IReadOnlyList<PlannedEffect> effects) => effects.GroupBy(e => e.Key).Select(g => g.Aggregate((one, other) => one with
    {
        AsBelieved = Sum(one.AsBelieved, other.AsBelieved),
        IfCause = Sum(one.IfCause, other.IfCause),
        Origin = one.Origin! with { Inputs = [.. one.Origin.Inputs, .. other.Origin!.Inputs] },
        MattersMost = one.IfCause.High - one.IfCause.Low >= other.IfCause.High - other.IfCause.Low ? one.MattersMost : other.MattersMost,
    }));

    private static Spread Sum(Spread one, Spread other)
    {
        static double Root(double a, double b) => Math.Sqrt((a * a) + (b * b));
        double likely = one.Likely + other.Likely;
        return new(likely - Root(one.Likely - one.Low, other.Likely - other.Low), likely, likely + Root(one.High - one.Likely, other.High - other.Likely));
    }
}
