using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Glass;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning.Recomputing;

/// <summary>The vent network, and with it the pull on the rear glass and the fresh air, computed anew for a whole set of fixes.</summary>
/// <uncertainty>2,000 seeded draws; the same draws before and after, so the change is surer than the level.</uncertainty>
public sealed class CarSetPhysics : ISetPhysics
{
    internal const string PullKey = "rear_glass_pull_change_n";

    private int Draws { get; init; } = MonteCarlo.DrawCount;

    /// <inheritdoc/>
    public ISetPhysics AtOnce => new CarSetPhysics { Draws = WhatIf.Draws };

    /// <inheritdoc/>
    public IReadOnlyDictionary<EffectOn, Spread> Changes(Situation situation, IReadOnlyList<Fix> set)
    {
        ArgumentNullException.ThrowIfNull(set);
        if (!TouchesAir(set))
        {
            return new Dictionary<EffectOn, Spread>();
        }

        // Of the load that the gate reckons with: the computed pull of a leaky car may be about nothing, and a share of nothing says nothing.
        CarInputs car = CarInputs.Of(situation);
        GlassAtSpeed glass = Glass(car, set);
        Spread share = glass.AcrossChange.Scaled(1 / PaneInNetwork.ForGate(glass.AcrossBefore, null, car.Glass.MeasuredAcross));

        // Parts that change the pressure outside the glass are not in the network: the pack's figures for them are added.
        Triangle[] outside = [.. set.Where(f => f.AirWays.Count == 0).SelectMany(f => f.Effects).Where(e => e.On == EffectOn.GlassLoad).Select(e => e.Range)];
        double mean = outside.Sum(t => t.Mean), half = 1.645 * Math.Sqrt(outside.Sum(t => t.Variance));
        Spread network = share.Scaled(100);
        return new Dictionary<EffectOn, Spread>
        {
            [EffectOn.GlassLoad] = new(
                network.Likely + mean - Root(network.Likely - network.Low, half), network.Likely + mean, network.Likely + mean + Root(network.High - network.Likely, half)),
        };
    }

    /// <inheritdoc/>
    public IReadOnlyList<PlannedEffect> InUnits(Situation situation, IReadOnlyList<Fix> set)
    {
        ArgumentNullException.ThrowIfNull(set);
        CarInputs car = CarInputs.Of(situation);
        List<PlannedEffect> effects = [];
        if (TouchesAir(set))
        {
            GlassAtSpeed glass = Glass(car, set);
            Spread pull = glass.ChangeNewtons;
            effects.Add(new(PullKey, $"pull on the rear glass at {glass.Speed.KilometresPerHour:0} km/h in a gust", "N", pull, pull) { Origin = car.Vents.Origin("sealing-and-glass"), MattersMost = glass.MattersMost, Before = glass.PullNewtonsBefore });
            effects.Add(FreshAir(car, set));
        }

        return [.. effects, .. CoolingOfSet.Changes(car, set, Draws)];
    }

    /// <inheritdoc/>
    public Func<IReadOnlyList<Fix>, IReadOnlyList<MarginBreak>> Margins(Situation situation) => new CarMargins(situation).BrokenBy;

    private static bool TouchesAir(IReadOnlyList<Fix> set) => set.Any(f => f.AirWays.Count > 0);

    private static double Root(double one, double other) => Math.Sqrt((one * one) + (other * other));

    private static UncertainNetwork With(CarInputs car, IReadOnlyList<Fix> set) => car.Vents.Networks.With(AirWays.Of(set));

    private GlassAtSpeed Glass(CarInputs car, IReadOnlyList<Fix> set) =>
        car.Vents.Networks.Glass(With(car, set), PaneInNetwork.RearGlass(car.Glass.Pane, car.Vents.Facts.Tail), car.SpeedsKmh[^1], Draws);

    private PlannedEffect FreshAir(CarInputs car, IReadOnlyList<Fix> set)
    {
        Triangle volume = car.BodyStyle == "forward-control van" ? new(4, 5.5, 7.5) : new(2.2, 2.8, 3.6);
        PropagatedOutput change = car.Vents.Networks.FreshAir(With(car, set), volume, Draws);
        Spread perHour = change.Spread ?? default;
        FigureInput cabin = new("cabin_volume_m3", "volume of the cabin", "m3", volume, "usual for such a body, from memory", false);
        return new("air_changes_change_at_80_kmh_per_h", "air changes of the cabin at 80 km/h, windows shut", "1/h", perHour, perHour) { Origin = car.Vents.Origin("cabin-vents", cabin), MattersMost = change.MattersMost, Before = car.Vents.Networks.AirChanges(volume, Draws) };
    }
}
