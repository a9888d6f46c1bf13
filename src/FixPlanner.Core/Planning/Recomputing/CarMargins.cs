using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Glass;
using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;
using FixPlanner.Core.Safety.Figures;

namespace FixPlanner.Core.Planning.Recomputing;

/// <summary>
/// The margins of one car, at likely values of the network but with the gate's own coefficient and the low end of the hold, so that many sets can be
/// asked for between two keys. A set breaks a margin when it takes the car over a limit, or makes worse what lies over it already.
/// </summary>
internal sealed class CarMargins
{
    /// <summary>Changes of the coefficient across the glass under this are within what two days of readings differ by.</summary>
    private const double NoticedCoefficient = 0.02;

    /// <summary>More of the cabin's air out of the engine bay than this, in percent points, counts as a new way for fumes.</summary>
    private const double NoticedBayAirPercent = 3;

    private readonly CarInputs car;
    private readonly UncertainNetwork network;
    private readonly AirOnCar fast;
    private readonly Lazy<(double Cabin, double BayAir)> now;
    private readonly Lazy<bool> glassIsHeld;
    private readonly bool glassWasSeen;
    private readonly bool neverHot;

    public CarMargins(Situation situation)
    {
        car = CarInputs.Of(situation);
        network = car.Vents.Network();
        fast = AirWays.Day with { Speed = RoadSpeed.FromKilometresPerHour(car.NowKmh ?? 100) };
        now = new(() => Solve(network));
        glassIsHeld = new(() => GateCheck.All(situation, PlannedUse.Of(situation)).Any(g => g.Gate.IsGlass && g.FixesLifted));

        // Glass that nobody looked at is the gate's to hold: then the fix stays in the plan with what to look at first.
        glassWasSeen = car.Glass.Glazing != Glazing.NotKnown && (car.Glass.Condition != RubberCondition.NotKnown || car.Glass.Push != PushTest.NotDone || car.Glass.RubberAgeYears is not null);

        // What the gauge showed with the power of today says nothing of an engine that is still to come.
        bool morePower = car.PowerPlanned?.Range.Likely > car.PowerNow?.Range.Likely;
        neverHot = !morePower && (situation.Answer("heat-when") == "never" || situation.Answer("rear-engine-heat") == "never");
    }

    /// <summary>The margins that a set breaks.</summary>
    public IReadOnlyList<MarginBreak> BrokenBy(IReadOnlyList<Fix> set)
    {
        if (set.All(f => f.AirWays.Count == 0))
        {
            return [];
        }

        (double cabin, double bayAir) = Solve(AirWays.With(network, AirWays.Of(set)));
        return [.. new[] { Glass(cabin), Fumes(bayAir), Cooling(set) }.OfType<MarginBreak>()];
    }

    private MarginBreak? Glass(double cabin)
    {
        double rise = cabin - now.Value.Cabin;
        if (rise <= NoticedCoefficient || car.NowKmh is null || !glassWasSeen || glassIsHeld.Value)
        {
            return null;
        }

        // The gate's own rule: at least 0.7 across until a manometer has read less, and a rise by the work on top.
        double across = (car.Glass.MeasuredAcross ?? PaneInNetwork.UnmeasuredFloor) + rise;
        double advised = AdvisorySpeed.Limit(car.Glass.Pane, car.Glass.Hold.Low, across, new LoadAir(default)).KilometresPerHour;
        return advised < fast.Speed.KilometresPerHour
            ? new("rear-glass", $"cabin pressure rises by {100 * rise:0} % of the dynamic pressure; the rear glass would then be advised for {5 * Math.Floor(advised / 5):0} km/h, and the car does {fast.Speed.KilometresPerHour:0} km/h: glass or an outlet first")
            : null;
    }

    private MarginBreak? Fumes(double bayAir)
    {
        double rise = bayAir - now.Value.BayAir;
        return rise > NoticedBayAirPercent
            ? new("fumes", $"{bayAir:0} % of the cabin's air would come through the engine bay, {rise:0} points more than now: close the bulkhead first")
            : null;
    }

    private MarginBreak? Cooling(IReadOnlyList<Fix> set)
    {
        double open = CoolingOfSet.LeftOpen(set);
        if (open >= 1 || car.AirCooled != false || car.PowerPlanned is null || neverHot)
        {
            return null;
        }

        double before = MarginKelvins(1), after = MarginKelvins(open);
        return after < 0 && after < before - 2
            ? new("cooling", $"blanking would leave {after:0} K at {car.SpeedsKmh[^1]:0} km/h with all the power, {before - after:0} K less than open: it overheats on a hot day")
            : null;
    }

    private double MarginKelvins(double open)
    {
        Dictionary<string, GivenInput> given = CoolingFigures.Given(car, air: false, car.SpeedsKmh[^1], car.PowerPlanned!.Value);
        PhysicsModel model = ModelCatalogue.Find("water-cooling")!;
        Dictionary<string, Triangle> likely = given.ToDictionary(g => g.Key, g => Triangle.Certain(g.Value.Range.Likely));
        foreach (ModelInput input in model.Inputs.Where(i => i.Default is not null && !likely.ContainsKey(i.Name)))
        {
            likely[input.Name] = Triangle.Certain(input.Default!.Value.Likely);
        }

        likely["blanked_percent"] = Triangle.Certain(100 * (1 - open));
        return ModelRun.Of(model, likely).Answer?.Numbers.GetValueOrDefault("margin_k") ?? double.PositiveInfinity;
    }

    private (double Cabin, double BayAir) Solve(UncertainNetwork solved)
    {
        double cabin = VentSolver.Solve(solved.Likely, fast).PressureIn(Compartment.Cabin, Length.FromMetres(1)).Pascals / fast.DynamicPressure.Pascals;
        return (cabin, 100 * FumesPath.Trace(VentSolver.Solve(solved.Likely, CarNetworks.UsualAir), null, null).ShareOfCabinAir);
    }
}
