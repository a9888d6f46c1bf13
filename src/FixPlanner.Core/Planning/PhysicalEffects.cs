using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.RoadLoad;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety.Figures;

namespace FixPlanner.Core.Planning;

/// <summary>
/// Effects on this car in physical units: what a change of drag area, of a lift coefficient or of cooling comes to in force, power, fuel, top speed,
/// axle load and kelvins.
/// </summary>
/// <param name="car">The car.</param>
/// <param name="dragAreas">Its drag area in each draw, m2: the same draws from which the change was made.</param>
/// <uncertainty>The draws of the change times draws of the car's own factors; a factor that is known is multiplied exactly.</uncertainty>
internal sealed class PhysicalEffects(CarInputs car, double[] dragAreas)
{
    private const double SpeedMs = 100 / 3.6;

    private static readonly Factor Driveline = new(new("driveline_efficiency", "power at the wheels over power at the crankshaft", "", new(0.88, RoadLoadSum.UsualDrivelineEfficiency, 0.94), "manual gearbox, from memory", false));

    private static readonly Factor FuelSlope = new(new("fuel_slope_l_per_kwh", "fuel for each kilowatt-hour more", "l/kWh", new(0.30, 0.31, 0.33), "carburettor engine, from memory", false));

    private static readonly Factor Step = new(new("rise_share_for_a_step", "share of the rise over the air that one step of cooling takes away", "", CoolingFigures.RiseShareForAStep, "judgement", false));

    // Factors of the car, drawn and ranked once for all lines.
    private readonly Lazy<Factor> dragArea = new(() => new(Input("drag_area_m2", "drag area of the car", "m2", car.DragArea), dragAreas));
    private readonly Lazy<Factor> mass = new(() => new(Input("mass_kg", "mass as driven", "kg", car.Mass)));
    private readonly Lazy<Factor> rolling = new(() => new(Input("rolling_state", "rolling of the tyres over that of sound radials", "", car.Shared()["rolling_state"])));
    private readonly Lazy<Factor> frontalArea = new(() => new(Input("frontal_area_m2", "frontal area", "m2", car.FrontalArea)));
    private readonly Lazy<(CoolingSituationOfCar Situation, Factor Rise)[]> rises = new(() => Rises(car));

    // A plan is written several times while its draws go on: what follows from an effect is worked out once.
    private readonly Dictionary<EffectSpread, PlannedEffect[]> made = new(ReferenceEqualityComparer.Instance);

    /// <summary>The effect itself and what follows from it.</summary>
    public IEnumerable<PlannedEffect> Of(EffectSpread effect, FigureOrigin? origin, string? mattersMost)
    {
        PlannedEffect own = new(EffectNames.Key(effect.On), EffectNames.Title(effect.On), EffectNames.Unit(effect.On), effect.AsBelieved, effect.IfCause) { Origin = origin, MattersMost = mattersMost };
        return [own, .. Following(effect, own)];
    }

    /// <summary>What follows from an effect; nothing where no model of this car says more than the effect itself.</summary>
    public IReadOnlyList<PlannedEffect> Following(EffectSpread effect) => Following(effect, new(EffectNames.Key(effect.On), EffectNames.Title(effect.On), EffectNames.Unit(effect.On), effect.AsBelieved, effect.IfCause));

    private PlannedEffect[] Following(EffectSpread effect, PlannedEffect own)
    {
        if (effect.BelievedDraws.Length == 0)
        {
            return [];
        }

        if (!made.TryGetValue(effect, out PlannedEffect[]? known))
        {
            Product of = new(effect, own);
            made[effect] = known =
            [
                .. effect.On switch
                {
                    EffectOn.Drag => OfDrag(of),
                    EffectOn.FrontLift => [OfLift(of, "front")],
                    EffectOn.RearLift => [OfLift(of, "rear")],
                    EffectOn.Cooling => OfCooling(of),
                    _ => Array.Empty<PlannedEffect>(),
                },
            ];
        }

        return known;
    }

    private IEnumerable<PlannedEffect> OfDrag(Product drag)
    {
        const double newtons = EffectNames.NewtonsPerSquareMetreAt100;
        yield return drag.Times(newtons, "drag-saving", "drag_force_change_at_100_kmh_n", "drag at 100 km/h", "N");
        yield return drag.Times(d => newtons * SpeedMs / 1000 / Driveline[d], "drag-saving", "drag_power_change_at_100_kmh_kw", "power at the crankshaft at 100 km/h", "kW", Driveline);
        double Fuel(int d) => newtons / 36 * FuelSlope[d] / Driveline[d];
        yield return drag.Times(Fuel, "drag-saving", "fuel_change_at_100_kmh_l_per_100km", "fuel at a steady 100 km/h", "l/100km", Driveline, FuelSlope);
        yield return drag.Times(d => Fuel(d) * FuelLine.PetrolGramsPerLitre / 100, "drag-saving", "carbon_dioxide_change_at_100_kmh_g_per_km", "carbon dioxide at a steady 100 km/h", "g/km", Driveline, FuelSlope);
        if (car.NowKmh is { } kmh && kmh > 0)
        {
            yield return OfTopSpeed(drag, kmh);
        }
    }

    private PlannedEffect OfTopSpeed(Product drag, double kmh)
    {
        (Factor area, Factor mass, Factor rolling) = (dragArea.Value, this.mass.Value, this.rolling.Value);
        RoadDay day = RoadDay.Calm(AirDensity.FromKilogramsPerCubicMetre(1.2));
        double PerSquareMetre(int d)
        {
            RoadCar at = new(Mass.FromKilograms(mass[d]), DragArea.FromSquareMetres(area[d]), RollingResistance.Radial.Times(rolling[d]));
            return -TopSpeed.Elasticity(at, day, RoadSpeed.FromKilometresPerHour(kmh)) * kmh / area[d];
        }

        if (car.GearedTopKmh is not { } ends)
        {
            return drag.Times(PerSquareMetre, "top-speed", "top_speed_change_kmh", "top speed by power (gearing not known)", "km/h", area, mass, rolling);
        }

        // Past the end of the gearing no power helps; a car that stands at it already gains nothing.
        Factor geared = new(Input("geared_top_speed_kmh", "speed at which the gearing ends", "km/h", ends));
        return drag.Times(PerSquareMetre, "top-speed", "top_speed_change_kmh", "top speed, by power and gearing", "km/h", (d, change) => Math.Min(change, Math.Max(0, geared[d] - kmh)), area, mass, rolling, geared);
    }

    private PlannedEffect OfLift(Product lift, string axle)
    {
        Factor area = frontalArea.Value;
        return lift.Times(d => -EffectNames.NewtonsPerSquareMetreAt100 * area[d], "axle-unloading", $"{axle}_axle_load_change_at_100_kmh_n", $"load on the {axle} axle at 100 km/h (plus presses down)", "N", area);
    }

    private IEnumerable<PlannedEffect> OfCooling(Product steps)
    {
        foreach ((CoolingSituationOfCar situation, Factor rise) in rises.Value)
        {
            yield return steps.Times(d => Step[d] * rise[d], situation.Model, situation.Key, situation.Title, "K", Step, rise);
        }
    }

    private static (CoolingSituationOfCar Situation, Factor Rise)[] Rises(CarInputs car) =>
    [
        .. CoolingFigures.Rises(car).Select(x => (x.Situation, new Factor(new($"rise_{x.Situation.Id}_k", $"rise of coolant or fins over the air, {x.Situation.Words}", "K", new(x.Rise.Low, x.Rise.Likely, x.Rise.High), $"calc {x.Situation.Model}", false)))),
    ];

    private static FigureInput Input(string name, string meaning, string unit, GivenInput given) => new(name, meaning, unit, given.Range, given.From, given.Known);

    /// <summary>A factor of the car with its draws.</summary>
    private sealed class Factor(FigureInput input, double[]? draws = null)
    {
        public FigureInput Input { get; } = input;

        public DrawnInput Drawn { get; } = draws is null ? DrawnInput.Of(new(input.Name, Uncertain.Triangular(input.Range))) : DrawnInput.Of(input.Name, draws);

        public double this[int draw] => Drawn.Values[draw];
    }

    /// <summary>An effect that is multiplied by factors of the car.</summary>
    private sealed class Product(EffectSpread effect, PlannedEffect own)
    {
        private readonly FigureInput change = new(own.Key, own.Title, own.Unit, new(own.IfCause.Low, own.IfCause.Likely, own.IfCause.High), "this plan's own range of it", true);
        private readonly DrawnInput drawn = DrawnInput.Of(own.Key, effect.IfCauseDraws);

        /// <summary>Times a number that is known.</summary>
        public PlannedEffect Times(double factor, string model, string key, string title, string unit) =>
            Made(model, key, title, unit, effect.AsBelieved.Scaled(factor), effect.IfCause.Scaled(factor), change.Name, []);

        /// <summary>Times a factor that has draws of its own.</summary>
        public PlannedEffect Times(Func<int, double> factor, string model, string key, string title, string unit, params Factor[] of) =>
            Times(factor, model, key, title, unit, (_, product) => product, of);

        /// <summary>The same, each product then held by a limit of its draw.</summary>
        public PlannedEffect Times(Func<int, double> factor, string model, string key, string title, string unit, Func<int, double, double> held, params Factor[] of)
        {
            double[] Drawn(double[] draws) => [.. draws.Select((draw, d) => held(d, draw * factor(d)))];
            double[] there = Drawn(effect.IfCauseDraws);
            string? most = there.Length == MonteCarlo.DrawCount ? DrawnOutput.Summed([drawn, .. of.Select(f => f.Drawn)], there).MattersMost : change.Name;
            return Made(model, key, title, unit, Spread.OfDraws(Drawn(effect.BelievedDraws)), Spread.OfDraws(there), most, [.. of.Select(f => f.Input)]);
        }

        private PlannedEffect Made(string name, string key, string title, string unit, Spread asBelieved, Spread ifCause, string? most, FigureInput[] inputs)
        {
            PhysicsModel model = ModelCatalogue.Find(name)!;
            return new(key, title, unit, asBelieved, ifCause) { Origin = new(model.Name, model.Formula, model.Source, model.Validity, [change, .. inputs]), MattersMost = most };
        }
    }
}
