using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Planning;

namespace FixPlanner.Core.Pictures.Charts;

/// <summary>The charts of one car and plan.</summary>
public static class CarCharts
{
    /// <summary>Works them out; takes a good part of a second, so not between two keys.</summary>
    /// <param name="situation">What is known.</param>
    /// <param name="plan">The plan, fully worked out: what the whole set does to drag and glass is drawn beside the car as it is.</param>
    /// <returns>The charts that can be drawn for this car, in order.</returns>
    public static IReadOnlyList<ChartSeries> Of(Situation situation, Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        CarInputs car = CarInputs.Of(situation);
        return [.. DragCharts.Of(car, plan), GlassChart.Of(car, plan), VentChart.Of(car), .. NoiseChart.Of(situation, car)];
    }

    /// <summary>Speeds of a chart: from 40 km/h in steps of 10 to a step beyond the fastest speed that was said, at least 130 km/h.</summary>
    internal static double[] SpeedsKmh(CarInputs car)
    {
        double top = Math.Clamp(Math.Max(130, (10 * Math.Ceiling(car.SpeedsKmh[^1] / 10)) + 10), 130, 260);
        return [.. Enumerable.Range(4, (int)(top / 10) - 3).Select(tens => 10.0 * tens)];
    }

    /// <summary>Marks at the speeds that the owner said.</summary>
    internal static ChartMark[] SpeedMarks(CarInputs car) =>
    [
        .. car.NowKmh is { } now ? [new ChartMark("now", "fastest now", now)] : Array.Empty<ChartMark>(),
        .. car.PlannedKmh is { } planned && planned != car.NowKmh ? [new ChartMark("planned", "planned", planned)] : Array.Empty<ChartMark>(),
    ];

    /// <summary>Says what was filled in.</summary>
    internal static string Unsaid(IEnumerable<string> unknown) => string.Join("; ", unknown) is { Length: > 0 } list ? $" Not known, and so taken wide: {list}." : "";
}
