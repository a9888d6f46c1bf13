using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Planning.Recomputing;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Planning;

/// <summary>Sums of a set.</summary>
/// <param name="Points">Expected points for the owner's aims.</param>
/// <param name="CostEur">Likely cost, safety items included, in EUR.</param>
/// <param name="Hours">Likely hours of the owner, safety items included.</param>
public sealed record SetSums(double Points, double CostEur, double Hours);

/// <summary>What two sets do to one quantity, as believed now.</summary>
/// <param name="Key">Key with its unit.</param>
/// <param name="Title">Name as shown.</param>
/// <param name="Unit">Unit as shown.</param>
/// <param name="Now">The car as it is, where that is known; else null.</param>
/// <param name="Proposed">Change by the proposed set.</param>
/// <param name="Ticked">Change by the ticked set.</param>
public sealed record WhatIfChange(string Key, string Title, string Unit, Spread? Now, Spread Proposed, Spread Ticked);

/// <summary>What a set that the owner ticked brings, beside the proposed one; worked out at once.</summary>
/// <param name="Fixes">The ticked set, by id.</param>
/// <param name="Best">The best set within the limits as supposed.</param>
/// <param name="Ticked">Sums of the ticked set.</param>
/// <param name="Proposed">Sums of the proposed set, for the same aims.</param>
/// <param name="BestPoints">Points of the best set within the limits as supposed.</param>
/// <param name="ComesIn">Fixes that the ticked set has and the proposed one has not.</param>
/// <param name="GoesOut">Fixes that the proposed set has and the ticked one has not.</param>
/// <param name="Changes">What both do to each quantity.</param>
/// <param name="Against">What stands against the ticked set, in words; empty when nothing does.</param>
/// <param name="Gates">Every gate as it stands with the ticked set planned.</param>
public sealed record WhatIf(
    IReadOnlyList<string> Fixes,
    IReadOnlyList<string> Best,
    SetSums Ticked,
    SetSums Proposed,
    double BestPoints,
    IReadOnlyList<Fix> ComesIn,
    IReadOnlyList<Fix> GoesOut,
    IReadOnlyList<WhatIfChange> Changes,
    IReadOnlyList<string> Against,
    IReadOnlyList<GateStatus> Gates)
{
    /// <summary>True when the models of the car have computed both sets; until then the pack's sums stand.</summary>
    public bool WithModels { get; init; }

    /// <summary>Draws behind the ranges here: the first of those behind the plan's, so that no key waits.</summary>
    public const int Draws = 250;

    internal static WhatIf Of(PlanModel model, Choice choice, Beliefs beliefs, IReadOnlyList<int> ticked, IReadOnlyList<int> proposed, bool withModels)
    {
        bool[] mine = model.Flags(ticked.Where(i => !choice.Fitted[i]));
        bool[] theirs = model.Flags(proposed.Where(i => !choice.Fitted[i]));
        HashSet<string> planned = [.. Names(model, mine), .. choice.Safety.Select(w => w.Fix.Id)];
        return new(
            Names(model, mine),
            Names(model, choice.Answer.Chosen),
            Sums(model, choice, mine),
            Sums(model, choice, theirs),
            choice.Answer.Points,
            [.. model.Fixes.Where((_, i) => mine[i] && !theirs[i])],
            [.. model.Fixes.Where((_, i) => theirs[i] && !mine[i])],
            Compared(model, choice, beliefs, mine, theirs, withModels ? model.Physics : null),
            [.. Standing.Against(model, choice, mine)],
            GateCheck.All(choice.Situation, PlannedUse.Of(choice.Situation, planned)))
        {
            WithModels = withModels,
        };
    }

    private static SetSums Sums(PlanModel model, Choice choice, bool[] set)
    {
        SetProblem p = choice.Problem.Problem;
        return new(p.Points(set), choice.SafetyEur + (p.CentsOf(set) / 100.0), choice.SafetyNumbers.Sum(i => model.Hours[i].Likely) + (p.MinutesOf(set) / 60.0));
    }

    // Somebody waits: the models compute both sets in the same first draws as everything else here.
    private static WhatIfChange[] Compared(PlanModel model, Choice choice, Beliefs beliefs, bool[] mine, bool[] theirs, ISetPhysics? physics)
    {
        bool[][] worlds = model.InOrder(beliefs.DrawWorlds(Draws, MonteCarlo.Seed));
        bool[] onTheCar = [.. model.Fixes.Select(f => choice.Situation.OnTheCar.Contains(f.Id))];
        int[][] sets = [.. new[] { theirs, mine }.Select(set => choice.SafetyNumbers.Concat(Enumerable.Range(0, set.Length).Where(i => set[i])).ToArray())];
        EffectDraws draws = new(model.Effects.Layout, model.Draws, worlds, onTheCar, choice.DragAreas);
        int[][] beside = [.. sets.Select(set => set.Where(i => physics is null || !CoolingOfSet.Computes(choice.Inputs, model.Fixes[i])).ToArray())];
        IReadOnlyList<EffectSpread>[] drawn = [.. draws.Of([.. sets, .. beside])];
        Dictionary<string, PlannedEffect>[] effects = [.. sets.Select((set, k) =>
            PlanSums.OfSet(choice, drawn[k], [.. set.Select(i => model.Fixes[i])], physics?.AtOnce, PlanSums.Cooling(drawn[sets.Length + k])).ToDictionary(e => e.Key))];
        Spread dragArea = choice.Car.DragAreaSquareMetres;
        List<WhatIfChange> changes = [];
        foreach (PlannedEffect e in effects[0].Values.Concat(effects[1].Values).DistinctBy(e => e.Key))
        {
            Spread Of(int set) => effects[set].GetValueOrDefault(e.Key)?.AsBelieved ?? default;
            Spread? now = e.Key == EffectNames.Key(EffectOn.Drag) ? dragArea : e.Key == "drag_force_change_at_100_kmh_n" ? dragArea.Scaled(EffectNames.NewtonsPerSquareMetreAt100) : e.Before;
            changes.Add(new(e.Key, e.Title, e.Unit, now, Of(0), Of(1)));
            if (e.Key == EffectNames.Key(EffectOn.Drag))
            {
                changes.Add(AirPower(choice.Situation, dragArea, Of(0), Of(1)));
            }
        }

        return [.. changes];
    }

    /// <summary>Power that the air takes at the fastest speed that is planned, else driven, else 100 km/h: half of density 1.2 kg/m3 times drag area times speed cubed.</summary>
    private static WhatIfChange AirPower(Situation s, Spread now, Spread proposed, Spread ticked)
    {
        double kmh = s.Number("top_speed_planned_kmh") ?? s.Number("top_speed_now_kmh") ?? 100;
        double kilowatts = EffectNames.NewtonsPerSquareMetreAt100 * (kmh / 100) * (kmh / 100) * (kmh / 3.6) / 1000;
        return new($"air_power_change_at_{kmh:0}_kmh_kw", $"power that the air takes at {kmh:0} km/h", "kW", now.Scaled(kilowatts), proposed.Scaled(kilowatts), ticked.Scaled(kilowatts));
    }

    private static string[] Names(PlanModel model, bool[] set) => [.. model.Fixes.Where((_, i) => set[i]).Select(f => f.Id)];
}
