using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Sizing;
using FixPlanner.Core.Quantities;
using FixPlanner.Tests.Planning;
using Xunit.Abstractions;

namespace FixPlanner.Tests.Measurement;

/// <summary>The proof of the proof: many seeded days of which the truth is known.</summary>
public sealed class SimulatedDaysTests(ITestOutputHelper output)
{
    private const int Days = 400;

    // Seeded days are the same everywhere but for the last digit of a sine: two days of 400 may fall on the other side.
    private const double SameOnEveryMachine = 0.5;

    [Fact]
    public void Interval_FourHundredDays_HoldsTheTruthAsOftenAsItPromises()
    {
        DayResult[] days = Simulate(day => Mixed(day), "ABBABAAB", -0.04, 0.04);
        double held = days.Count(day => day.Holds(-0.04)) / (double)Days;
        output.WriteLine($"95 % interval holds the truth on {100 * held:0.0} % of {Days} days; mean error {days.Average(day => day.Change) + 0.04:0.0000} m2");
        Assert.InRange(held, 0.92, 0.98);
        Assert.Equal(Quoted("95 % interval holds the truth"), 100 * held, SameOnEveryMachine);
    }

    [Fact]
    public void Verdict_FourHundredDaysWithoutEffect_SeldomCriesShown()
    {
        DayResult[] days = Simulate(day => Mixed(day), "ABBABAAB", 0, 0.04);
        double alarms = days.Count(day => day.Verdict is Verdict.ShownBetter or Verdict.ShownWorse or Verdict.ShownSizeDoubtful) / (double)Days;
        output.WriteLine($"false alarms on {100 * alarms:0.0} % of {Days} days without effect");
        Assert.True(alarms <= 0.078, $"{alarms:0.000}");
        Assert.Equal(Quoted("any shown-* cried without effect"), 100 * alarms, SameOnEveryMachine);
    }

    [Theory]
    [InlineData(TestWeather.Calm)]
    [InlineData(TestWeather.Ordinary)]
    [InlineData(TestWeather.Gusty)]
    public void Verdict_ChangeOfThePlannedSize_IsSeenOnThreeDaysOfFour(TestWeather weather)
    {
        const string order = "ABBABAAB";
        double scatter = TestSize.ExpectedScatter(weather, DragArea.FromSquareMetres(0.8), RoadSpeed.FromKilometresPerHour(95), RoadSpeed.FromKilometresPerHour(45)).SquareMetres;
        double planned = PairsNeeded.SmallestShown(scatter, order.Length);
        DayResult[] days = Simulate(_ => Simulated(weather), order, -planned, planned);
        double seen = days.Count(day => day.Verdict is Verdict.ShownBetter or Verdict.ShownSizeDoubtful) / (double)Days;
        double sure = days.Count(day => day.Verdict is Verdict.ShownBetter) / (double)Days;
        output.WriteLine($"{weather}: a change of {planned:0.000} m2 is seen on {100 * seen:0.0} % of {Days} days, on {100 * sure:0.0} % with its size; scatter of a pair {Math.Sqrt(days.Average(day => day.Scatter * day.Scatter)):0.0000} m2");
        Assert.True(seen >= 0.75, $"{seen:0.000}");
        Assert.Equal(Quoted($"{weather.ToString().ToLowerInvariant()} ({planned:0.000} m²)"), 100 * seen, SameOnEveryMachine);
    }

    // The figure in per cent that the page of theory quotes in the row that says this.
    private static double Quoted(string says)
    {
        string[] cells = File.ReadAllLines(Path.Combine(ShippedPack.Root(), "docs", "theory", "measurement.md")).Single(line => line.StartsWith('|') && line.Contains(says, StringComparison.Ordinal)).Split('|', StringSplitOptions.TrimEntries);
        return double.Parse(cells[2].TrimEnd('%', ' '));
    }

    private static SimulatedWeather Simulated(TestWeather weather) => weather switch
    {
        TestWeather.Calm => SimulatedWeather.Calm,
        TestWeather.Ordinary => SimulatedWeather.Ordinary,
        _ => SimulatedWeather.Gusty,
    };

    private static SimulatedWeather Mixed(int day) => Simulated((TestWeather)(day % 3));

    private static DayResult[] Simulate(Func<int, SimulatedWeather> weather, string order, double change, double planned)
    {
        DayResult[] results = new DayResult[Days];
        Parallel.For(0, Days, new ParallelOptions { MaxDegreeOfParallelism = 2 }, day =>
        {
            SimulatedDay simulated = SimulatedDay.Drawn((ulong)day + 1, weather(day), order, change);
            SessionAnalysis analysis = SessionAnalysis.Of(simulated.Runs(), simulated.Choices(planned));
            ValueComparison values = Assert.Single(analysis.Comparisons).Values;
            results[day] = new(values.Decisive.Estimate, values.Decisive.Low, values.Decisive.High, values.Verdict, values.Scatter, analysis.Runs.Count(run => !run.Used));
        });
        return results;
    }

    private sealed record DayResult(double Change, double Low, double High, Verdict Verdict, double Scatter, int LeftOut)
    {
        public bool Holds(double truth) => Low <= truth && truth <= High;
    }
}
