using System.Diagnostics;
using System.Text;
using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Statistics;
using FixPlanner.Files.Runs;
using Xunit.Abstractions;

namespace FixPlanner.Tests.Measurement;

/// <summary>Runs by itself, after everything else: a figure taken beside other tests says nothing.</summary>
[CollectionDefinition(nameof(SpeedTests), DisableParallelization = true)]
public sealed class SpeedCollection;

/// <summary>How long reading and fitting take; the best of five, so that another program's burst does not count.</summary>
[Collection(nameof(SpeedTests))]
public sealed class SpeedTests(ITestOutputHelper output)
{
    [Fact]
    public void ReadAndFit_HundredThousandSamples_WithinTwoSeconds()
    {
        SimulatedDay day = new() { Seed = 7, Weather = SimulatedWeather.Calm, Order = "ABBABAABABBA", Change = -0.04, LoggerHertz = 10 };
        List<CoastDownRun> runs = day.Runs();
        int repeats = (100_000 / runs.Sum(run => run.Samples.Count)) + 1;
        StringBuilder text = new();
        for (int i = 0; i < repeats; i++)
        {
            text.Append(LogWriter.Csv(runs.Select(run => run with { Name = $"{i}-{run.Name}" }))[(i == 0 ? 0 : 45)..].TrimStart());
        }

        byte[] bytes = Encoding.UTF8.GetBytes(text.ToString());
        int samples = 0;
        double seconds = Best(() =>
        {
            RunFile file = RunFileReader.ReadBytes("long.csv", bytes, RunReadingOptions.None);
            samples = file.Runs.Sum(run => run.Samples.Count);
            Assert.Single(SessionAnalysis.Of(file.Runs, day.Choices()).Comparisons);
        });
        output.WriteLine($"{samples} samples read and fitted in {seconds:0.00} s");
        Assert.True(samples >= 100_000);
        Assert.True(seconds < 2, $"{seconds:0.00} s");
    }

    [Fact]
    public void Refit_ThousandTimes_WithinASecond()
    {
        SimulatedDay day = new() { Seed = 11, Weather = SimulatedWeather.Calm, Order = "A", Change = -0.05 };
        FitRun[] pair = [.. day.Runs().Select((run, i) => new FitRun(CoastPart.Of(RunCleaning.Clean(run.Samples).Trace, out _, out _)!, i == 0 ? 1 : -1, 1.2))];
        ConfidenceInterval area = default;
        double seconds = Best(() => area = RefitBootstrap.DragArea(pair, 750, 0.03, 0.0135, seed: 3, draws: 1000));
        output.WriteLine($"1,000 refits in {seconds:0.00} s");
        Assert.InRange(area.HalfWidth, 0.0005, 0.05);
        Assert.True(seconds < 1, $"{seconds:0.00} s");
    }

    private static double Best(Action work)
    {
        double best = double.PositiveInfinity;
        for (int i = 0; i < 5; i++)
        {
            Stopwatch watch = Stopwatch.StartNew();
            work();
            best = Math.Min(best, watch.Elapsed.TotalSeconds);
        }

        return best;
    }
}
