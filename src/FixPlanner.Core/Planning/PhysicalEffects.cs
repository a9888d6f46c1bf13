using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.RoadLoad;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning;

/// <summary>Effects on this car in physical units: what a change of drag area or lift coefficient comes to in force, power, fuel, top speed and axle load.</summary>
/// <uncertainty>The change itself, drawn; the factors of the car widen its ends by their own ends, which is more than their draws would.</uncertainty>
internal sealed class PhysicalEffects(CarInputs car)
{
    private const double SpeedMs = 100 / 3.6;

    private static readonly Triangle Driveline = new(0.88, RoadLoadSum.UsualDrivelineEfficiency, 0.94);

    private static readonly Triangle FuelSlope = new(0.30, 0.31, 0.33);

    /// <summary>The effect itself and what follows from it.</summary>
    public IEnumerable<PlannedEffect> Of(EffectSpread effect, FigureOrigin? origin, string? mattersMost)
    {
        PlannedEffect own = new(EffectNames.Key(effect.On), EffectNames.Title(effect.On), EffectNames.Unit(effect.On), effect.AsBelieved, effect.IfCause) { Origin = origin, MattersMost = mattersMost };
        yield return own;
        IEnumerable<PlannedEffect> more = effect.On switch
        {
            EffectOn.Drag => OfDrag(own),
            EffectOn.FrontLift => [OfLift(own, "front")],
            EffectOn.RearLift => [OfLift(own, "rear")],
            _ => [],
        };
        foreach (PlannedEffect follows in more)
        {
            yield return follows;
        }
    }

    private IEnumerable<PlannedEffect> OfDrag(PlannedEffect drag)
    {
        const double newtons = EffectNames.NewtonsPerSquareMetreAt100;
        yield return Times(drag, "drag_force_change_at_100_kmh_n", "drag at 100 km/h", "N", Triangle.Certain(newtons), []);
        Triangle power = new(newtons * SpeedMs / 1000 / Driveline.High, newtons * SpeedMs / 1000 / Driveline.Likely, newtons * SpeedMs / 1000 / Driveline.Low);
        FigureInput driveline = new("driveline_efficiency", "power at the wheels over power at the crankshaft", "", Driveline, "manual gearbox, from memory", false);
        yield return Times(drag, "drag_power_change_at_100_kmh_kw", "power at the crankshaft at 100 km/h", "kW", power, [driveline]);
        Triangle fuel = new(newtons / 36 * FuelSlope.Low / Driveline.High, newtons / 36 * FuelSlope.Likely / Driveline.Likely, newtons / 36 * FuelSlope.High / Driveline.Low);
        FigureInput slope = new("fuel_slope_l_per_kwh", "fuel for each kilowatt-hour more", "l/kWh", FuelSlope, "carburettor engine, from memory", false);
        yield return Times(drag, "fuel_change_at_100_kmh_l_per_100km", "fuel at a steady 100 km/h", "l/100km", fuel, [driveline, slope]);
        yield return Times(drag, "carbon_dioxide_change_at_100_kmh_g_per_km", "carbon dioxide at a steady 100 km/h", "g/km", fuel.Scaled(FuelLine.PetrolGramsPerLitre / 100), [driveline, slope]);
        if (TopSpeedPerSquareMetre() is { } perSquareMetre)
        {
            yield return Times(drag, "top_speed_change_kmh", "top speed, if power and gearing are there", "km/h", perSquareMetre,
                [new("drag_area_m2", "drag area of the car", "m2", car.DragArea.Range, car.DragArea.From, car.DragArea.Known)]);
        }
    }

    private PlannedEffect OfLift(PlannedEffect lift, string axle)
    {
        Triangle area = car.FrontalArea.Range;
        double pressure = EffectNames.NewtonsPerSquareMetreAt100;
        return Times(lift, $"{axle}_axle_load_change_at_100_kmh_n", $"load on the {axle} axle at 100 km/h (plus presses down)", "N", area.Scaled(-pressure),
            [new("frontal_area_m2", "frontal area", "m2", area, car.FrontalArea.From, car.FrontalArea.Known)]);
    }

    /// <summary>Change of top speed for each m2 of drag area, km/h: below zero; null when no top speed was said.</summary>
    private Triangle? TopSpeedPerSquareMetre()
    {
        if (car.NowKmh is not { } kmh || !(kmh > 0))
        {
            return null;
        }

        RoadDay day = RoadDay.Calm(AirDensity.FromKilogramsPerCubicMetre(1.2));
        double For(double dragArea)
        {
            RoadCar at = new(Mass.FromKilograms(car.Mass.Range.Likely), DragArea.FromSquareMetres(dragArea), RollingResistance.Radial);
            return -TopSpeed.Elasticity(at, day, RoadSpeed.FromKilometresPerHour(kmh)) * kmh / dragArea;
        }

        return Triangle.Between(For(car.DragArea.Range.Low), For(car.DragArea.Range.Likely), For(car.DragArea.Range.High));
    }

    private static PlannedEffect Times(PlannedEffect of, string key, string title, string unit, Triangle factor, FigureInput[] inputs)
    {
        FigureInput change = new(of.Key, of.Title, of.Unit, new(of.IfCause.Low, of.IfCause.Likely, of.IfCause.High), "this plan's own range of it", true);
        PhysicsModel model = ModelCatalogue.Find(key.Contains("axle") ? "axle-unloading" : key.StartsWith("top_speed", StringComparison.Ordinal) ? "top-speed" : "drag-saving")!;
        return new(key, title, unit, Product(of.AsBelieved, factor), Product(of.IfCause, factor))
        {
            Origin = new(model.Name, model.Formula, model.Source, model.Validity, [change, .. inputs]),
            MattersMost = inputs.Prepend(change).MaxBy(RelativeWidth)!.Name,
        };
    }

    private static double RelativeWidth(FigureInput input) => (input.Range.High - input.Range.Low) / Math.Max(Math.Abs(input.Range.Likely), 1e-9);

    private static Spread Product(Spread of, Triangle factor)
    {
        double[] corners = [of.Low * factor.Low, of.Low * factor.High, of.High * factor.Low, of.High * factor.High];
        double likely = of.Likely * factor.Likely;
        return new(Math.Min(corners.Min(), likely), likely, Math.Max(corners.Max(), likely));
    }
}
