using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Pictures.Charts;

/// <summary>Flow through each opening of the cabin by speed: above zero it takes in, below it lets out.</summary>
internal static class VentChart
{
    private static readonly (string Id, string Opening, string Name)[] Shown =
    [
        ("cabin-inlet", OldCarVents.CabinIn, "cabin inlet"),
        ("cabin-outlet", OldCarVents.CabinOut, "cabin outlet"),
        ("door-seals", OldCarVents.DoorSeals, "door seals"),
        ("bulkhead", OldCarVents.Bulkhead, "engine bay into cabin"),
    ];

    public static ChartSeries Of(CarInputs car)
    {
        UncertainNetwork network = car.Vents.Network();
        var lines = Shown.Where(x => network.Openings.Any(o => o.Likely.Id == x.Opening)).Select(x => (x.Id, x.Name, Points: new List<ChartPoint>(), x.Opening)).ToArray();
        foreach (double kmh in CarCharts.SpeedsKmh(car).Where((_, i) => i % 2 == 0))
        {
            AirOnCar air = AirWays.Day with { Speed = RoadSpeed.FromKilometresPerHour(kmh) };
            SolvedDraws solved = SolvedDraws.Of(network, air, car.Vents.Networks.Draws);
            foreach (var line in lines)
            {
                int place = network.Likely.PlaceOf(line.Opening);
                Spread s = DrawnOutput.Range(SolvedDraws.Each(draw => 1000 * solved.Flow(draw, place) / air.Density.KilogramsPerCubicMetre));
                line.Points.Add(new(kmh, s.Low, s.Likely, s.High));
            }
        }

        return new(
            "vent-flow-by-speed", "Air through the openings of the cabin by speed: above zero in, below zero out", new("speed", "km/h"), new("flow, in positive", "l/s"),
            [.. lines.Select(l => new ChartLine(l.Id, l.Name, l.Points))], [], CarCharts.SpeedMarks(car),
            $"Windows shut, fan off, no natural wind; pressures from memory. Where a range reaches across zero the direction is not sure: a strip of paper at the vent settles it.{CarCharts.Unsaid(car.Vents.Unknown)}");
    }
}
