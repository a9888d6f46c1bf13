using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Pictures.Charts;
using FixPlanner.Core.Planning;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Pictures.Charts;

/// <summary>Charts of the demo cars as data. No printed source shows such a car: the tests hold shape, order and agreement with the models.</summary>
public sealed class CarChartsTests
{
    private static readonly Lazy<IReadOnlyList<ChartSeries>> Lindle = new(() => Charts("lindle"));

    [Fact]
    public void Of_Lindle_HasEveryChartWithPointsInOrder()
    {
        Assert.Equal(["drag-by-speed", "power-by-speed", "glass-pull-by-speed", "vent-flow-by-speed", "noise-bands"], Lindle.Value.Select(c => c.Id));
        foreach (ChartSeries chart in Lindle.Value)
        {
            Assert.NotEmpty(chart.Reason);
            Assert.All(chart.Bands, b => Assert.True(b.Low <= b.Likely && b.Likely <= b.High, $"{chart.Id} {b}"));
            foreach (ChartLine line in chart.Lines)
            {
                Assert.True(line.Points.Count > 4);
                Assert.All(line.Points, p => Assert.True(p.Low <= p.Likely && p.Likely <= p.High, $"{chart.Id} {line.Id} {p}"));
                Assert.Equal(line.Points.Select(p => p.X).Order(), line.Points.Select(p => p.X));
            }
        }
    }

    [Fact]
    public void DragBySpeed_DoublesItsSpeed_QuadruplesItsForce()
    {
        ChartLine before = Lindle.Value[0].Lines.Single(l => l.Id == "before");
        double At(double kmh) => before.Points.Single(p => p.X == kmh).Likely;

        Assert.Equal(4, At(140) / At(70), 9);
    }

    [Fact]
    public void Marks_Lindle_ShowSpeedNowAndPlanned()
    {
        ChartSeries glass = Chart("glass-pull-by-speed");

        Assert.Equal([("now", 140.0), ("planned", 175.0)], glass.Marks.Select(m => (m.Id, m.X)));
        Assert.Contains(glass.Bands, b => b.Id == "hold");
    }

    [Fact]
    public void GlassPull_RisesWithSpeed() =>
        Assert.All(Chart("glass-pull-by-speed").Lines, line => Assert.Equal(line.Points.Select(p => p.Likely).Order(), line.Points.Select(p => p.Likely)));

    [Fact]
    public void NoiseBands_Lindle_MarksWhereTheOwnerHearsIt() => Assert.Contains(Chart("noise-bands").Marks, m => m.Id == "heard" && m.X == 85);

    [Fact]
    public void Of_NothingKnown_StillDrawsAndSaysWhatIsNotKnown()
    {
        Situation s = Situation.Of(ShippedPack.Pack, new Logbook(), new(2026, 6, 1));
        IReadOnlyList<ChartSeries> charts = CarCharts.Of(s, ShippedPack.Planner.Make(s, BeliefNetwork.Of(ShippedPack.Pack).Infer(s), PlanDepth.Quick).Plan);

        Assert.Contains("how tight the door seals are", charts.Single(c => c.Id == "glass-pull-by-speed").Reason);
        Assert.Contains("mass", charts[0].Reason);
    }

    private static ChartSeries Chart(string id) => Lindle.Value.Single(c => c.Id == id);

    private static IReadOnlyList<ChartSeries> Charts(string car)
    {
        Situation s = ShippedPack.Demo(car);
        return CarCharts.Of(s, ShippedPack.Planner.Make(s, BeliefNetwork.Of(ShippedPack.Pack).Infer(s), PlanDepth.Full).Plan);
    }
}
