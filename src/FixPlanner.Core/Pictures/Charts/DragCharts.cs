using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.RoadLoad;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Pictures.Charts;

/// <summary>Drag, and power at the crankshaft, by speed: as the car is and with the whole plan.</summary>
internal static class DragCharts
{
    private const double AirDensityKgM3 = 1.2;

    public static IEnumerable<ChartSeries> Of(CarInputs car, Plan plan)
    {
        double[] speeds = CarCharts.SpeedsKmh(car);
        Spread? change = plan.Totals.Effects.Where(e => e.Key == "drag_area_change_m2").Select(e => (Spread?)e.AsBelieved).FirstOrDefault();
        Propagated drawn = Draws(car, change ?? default, speeds);
        ChartLine Line(int family, string id, string name) =>
            new(id, name, [.. speeds.Select((kmh, i) => drawn.Outputs[(family * speeds.Length) + i].Spread is { } s ? new ChartPoint(kmh, s.Low, s.Likely, s.High) : default)]);
        ChartLine[] Pair(int family) => change is null
            ? [Line(family, "before", "as the car is")]
            : [Line(family, "before", "as the car is"), Line(family + 1, "after", "with the whole plan, as believed now")];
        ChartMark[] marks = CarCharts.SpeedMarks(car);
        string unsaid = CarCharts.Unsaid(new[] { (car.DragArea, "drag area (coast-down)"), (car.FrontalArea, "frontal area"), (car.Mass, "mass") }.Where(x => !x.Item1.Known).Select(x => x.Item2));
        yield return new("drag-by-speed", "Drag of the air by speed", new("speed in still air", "km/h"), new("drag", "N"), Pair(0), [], marks,
            $"Half of air density 1.2 kg/m3 times drag area times speed squared.{unsaid}");
        ChartBand[] engine = [.. new (string Id, string Name, GivenInput? Power)[] { ("engine-now", "engine now", car.PowerNow), ("engine-planned", "engine planned", car.PowerPlanned == car.PowerNow ? null : car.PowerPlanned) }
            .Where(x => x.Power is not null).Select(x => new ChartBand(x.Id, x.Name, BandAlong.Y, x.Power!.Value.Range.Low, x.Power.Value.Range.Likely, x.Power.Value.Range.High))];
        ChartMark[] geared = car.GearedTopKmh is { } ends ? [.. marks, new ChartMark("geared", "end of the gearing", ends.Range.Likely)] : marks;
        string gearing = car.GearedTopKmh is null ? ", if the gearing allows it (not known: the speed in top gear at 3000 turns a minute and the highest turning speed would tell)" : ", or at the end of the gearing where that comes first";
        yield return new("power-by-speed", "Power at the crankshaft by speed, level road", new("speed in still air", "km/h"), new("power", "kW"), Pair(2), engine, geared,
            $"Drag and rolling of the tyres times speed, over the efficiency of the driveline (0.88 to 0.94, from memory). Where a line meets the engine's band the car is at its top speed{gearing}.{unsaid}");
    }

    private static Propagated Draws(CarInputs car, Spread change, double[] speeds)
    {
        UncertainInput[] inputs =
        [
            new("drag_area_m2", Uncertain.Triangular(car.DragArea.Range)),
            new("drag_area_change_m2", Uncertain.Triangular(new(change.Low, change.Likely, change.High))),
            new("mass_kg", Uncertain.Triangular(car.Mass.Range)),
            new("rolling_state", Uncertain.Triangular(car.Shared()["rolling_state"].Range)),
            new("driveline_efficiency", Uncertain.Triangular(new(0.88, RoadLoadSum.UsualDrivelineEfficiency, 0.94))),
        ];
        RoadDay day = RoadDay.Calm(AirDensity.FromKilogramsPerCubicMetre(AirDensityKgM3));
        return MonteCarlo.Propagate(inputs, 4 * speeds.Length, (values, outputs) =>
        {
            RoadCar before = new(Mass.FromKilograms(values[2]), DragArea.FromSquareMetres(values[0]), RollingResistance.Radial.Times(values[3]));
            RoadCar after = before.With(DragAreaChange.FromSquareMetres(Math.Max(values[1], -0.9 * values[0])));
            for (int i = 0; i < speeds.Length; i++)
            {
                RoadSpeed speed = RoadSpeed.FromKilometresPerHour(speeds[i]);
                (RoadForces old, RoadForces now) = (RoadLoadSum.At(before, day, speed), RoadLoadSum.At(after, day, speed));
                outputs[i] = old.Air.Newtons;
                outputs[speeds.Length + i] = now.Air.Newtons;
                outputs[(2 * speeds.Length) + i] = old.Total.Newtons * speed.MetresPerSecond / values[4] / 1000;
                outputs[(3 * speeds.Length) + i] = now.Total.Newtons * speed.MetresPerSecond / values[4] / 1000;
            }
        });
    }
}
