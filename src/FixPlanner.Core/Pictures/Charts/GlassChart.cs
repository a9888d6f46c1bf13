using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Glass;
using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Pictures.Charts;

/// <summary>Pull on the rear glass by speed against what its edge is believed to hold; with the plan's seals and vents beside the car as it is.</summary>
internal static class GlassChart
{
    public static ChartSeries Of(CarInputs car, Plan plan)
    {
        UncertainNetwork before = car.Vents.Network();
        UncertainNetwork after = car.Vents.Networks.With(AirWays.Of(plan.Items.Select(i => i.Fix)));
        PaneInNetwork pane = PaneInNetwork.RearGlass(car.Glass.Pane, car.Vents.Facts.Tail);
        RoadSpeed[] speeds = [.. CarCharts.SpeedsKmh(car).Where((_, i) => i % 2 == 0).Select(RoadSpeed.FromKilometresPerHour)];
        IReadOnlyList<GlassAtSpeed> at = SealingAndGlass.Compare(before, after, pane, AirWays.Day, new LoadAir(default), speeds);
        ChartLine Line(string id, string name, Func<GlassAtSpeed, Spread> of) =>
            new(id, name, [.. at.Select(a => new ChartPoint(a.Speed.KilometresPerHour, of(a).Low, of(a).Likely, of(a).High))]);
        bool changes = !ReferenceEquals(before, after);
        ChartLine now = Line("before", "as the car is", a => a.PullNewtonsBefore);
        (Force low, Force middle, Force high) = car.Glass.Hold.AsPull(pane.Pane);
        return new(
            "glass-pull-by-speed", "Pull on the rear glass by speed, in a gust on a cold day", new("speed", "km/h"), new("outward pull", "N"),
            changes ? [now, Line("after", "with the plan's seals and vents", a => a.PullNewtonsAfter)] : [now],
            [new("hold", "what the edge is believed to hold", BandAlong.Y, low.Newtons, middle.Newtons, high.Newtons)],
            CarCharts.SpeedMarks(car),
            $"Windows shut; gust of 6 m/s, air at -10 degC; cabin pressure from the vent network, outside pressure from memory. A safety check reckons with more: at least 0.7 inside minus outside until a manometer has read less, and a margin of two. The hold: {car.Glass.Hold.Basis}. Advice, no certificate.{CarCharts.Unsaid(car.Vents.Unknown)}");
    }
}
