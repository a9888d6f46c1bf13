using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Measurement.Coasting;

public sealed class SessionAnalysisTests
{
    private static SimulatedDay Day(string order = "ABBABAAB", double change = -0.05, SimulatedWeather? weather = null, ulong seed = 11) =>
        new() { Seed = seed, Weather = weather ?? SimulatedWeather.Calm, Order = order, Change = change };

    private static SessionAnalysis Analyse(SimulatedDay day, Func<List<CoastDownRun>, IEnumerable<CoastDownRun>>? change = null) =>
        SessionAnalysis.Of([.. (change ?? (runs => runs))(day.Runs())], day.Choices());

    private static CoastDownRun Altered(CoastDownRun run, Func<int, RunSample, RunSample?> alter) =>
        run with { Samples = [.. run.Samples.Select((sample, i) => alter(i, sample)).OfType<RunSample>()] };

    [Fact]
    public void Of_StillDayAndPerfectLogger_FindsTheTruthToAThousandth()
    {
        SimulatedDay day = new() { Seed = 1, Weather = SimulatedWeather.Still, Order = "ABBA", Change = -0.05, FilteredLogger = false };
        SessionAnalysis analysis = Analyse(day);
        Assert.All(analysis.Pairs, pair => Assert.Equal(pair.Configuration == "before" ? 0.8 : 0.75, pair.DragArea.SquareMetres, 1e-3));
        Assert.All(analysis.Pairs, pair => Assert.Equal(pair.Configuration == "before" ? 0.8 : 0.75, pair.TwoSpeedDragArea.SquareMetres, 4e-3));
        Assert.All(analysis.Pairs, pair => Assert.Equal(0.0135, pair.FreeRollingCoefficient, 2e-5));
        Assert.Equal(-0.05, analysis.Comparisons[0].SquareMetres.Estimate, 1e-3);
    }

    [Fact]
    public void Of_SteadyWindAndGrade_AreFoundAndCancel()
    {
        SimulatedWeather weather = SimulatedWeather.Still with { MeanWind = 2 };
        SimulatedDay day = new() { Seed = 4, Weather = weather, Order = "ABBA", Change = -0.05, FilteredLogger = false };
        SessionAnalysis windy = Analyse(day);
        Assert.Equal(-0.05, windy.Comparisons[0].SquareMetres.Estimate, 2e-3);
        Assert.All(windy.Pairs, pair => Assert.InRange(Math.Abs(pair.Wind.MetresPerSecond), 0, 2.1));
        SessionAnalysis sloped = Analyse(new() { Seed = 4, Weather = SimulatedWeather.Still with { GradeSpread = 0.003 }, Order = "ABBA", Change = -0.05, FilteredLogger = false });
        Assert.Equal(-0.05, sloped.Comparisons[0].SquareMetres.Estimate, 2e-3);
        Assert.Equal(sloped.Pairs[0].Grade, sloped.Pairs[3].Grade, 1e-4);
    }

    [Fact]
    public void Of_BrakeTouched_LeavesOutTheRunAndItsPartner()
    {
        SessionAnalysis analysis = Analyse(Day(), runs =>
        {
            runs[4] = Altered(runs[4], (i, sample) => sample with { Speed = RoadSpeed.FromMetresPerSecond(sample.Speed.MetresPerSecond - (0.9 * Math.Clamp(i - 20, 0, 4))) });
            return runs;
        });
        Assert.Contains("brake", analysis.Runs[4].Reason, StringComparison.Ordinal);
        Assert.Contains("run 5", analysis.Runs[5].Reason, StringComparison.Ordinal);
        Assert.Equal(14, analysis.Runs.Count(run => run.Used));
    }

    [Fact]
    public void Of_ThrottleTouched_LeavesItOut()
    {
        SessionAnalysis analysis = Analyse(Day(), runs =>
        {
            runs[4] = Altered(runs[4], (i, sample) => sample with { Speed = RoadSpeed.FromMetresPerSecond(sample.Speed.MetresPerSecond + (0.55 * Math.Clamp(i - 15, 0, 8))) });
            return runs;
        });
        Assert.Contains("throttle", analysis.Runs[4].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_CutRunGapAndCurve_AreLeftOutWithTheirReasons()
    {
        SessionAnalysis analysis = Analyse(Day(), runs =>
        {
            runs[0] = Altered(runs[0], (i, sample) => i < 30 ? sample : null);
            runs[4] = Altered(runs[4], (i, sample) => i is > 12 and < 24 ? null : sample);
            runs[8] = runs[8] with { HeadingChangeDegrees = 40 };
            return runs;
        });
        Assert.StartsWith("cut", analysis.Runs[0].Reason, StringComparison.Ordinal);
        Assert.Contains("gap", analysis.Runs[4].Reason, StringComparison.Ordinal);
        Assert.Contains("turns", analysis.Runs[8].Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_SpikesAndNumbersThatAreNone_DoNotMoveTheResult()
    {
        double clean = Analyse(Day()).Comparisons[0].SquareMetres.Estimate;
        double dirty = Analyse(Day(), runs => runs.Select(run => Altered(run, (i, sample) => i % 17 == 9 ? sample with { Speed = RoadSpeed.FromMetresPerSecond(sample.Speed.MetresPerSecond + 6) } : sample))).Comparisons[0].SquareMetres.Estimate;
        Assert.Equal(clean, dirty, 0.006);
    }

    [Fact]
    public void Of_RunRepeatedAtOnce_TakesTheGoodOne()
    {
        SessionAnalysis analysis = Analyse(Day("ABBA"), runs =>
        {
            CoastDownRun bad = Altered(runs[0], (i, sample) => i < 20 ? sample : null) with { Name = "bad" };
            return runs.Prepend(bad);
        });
        Assert.False(analysis.Runs[0].Used);
        Assert.Equal(["1", "2"], analysis.Pairs[0].Runs);
        Assert.Equal(4, analysis.Pairs.Count);
    }

    [Fact]
    public void Of_TwoBlocksWithColdTyres_WarnsAndDoesNotCryShown()
    {
        SimulatedDay day = new() { Seed = 21, Weather = SimulatedWeather.Calm, Order = "AAAABBBB", ColdTyres = 0.15 };
        DragComparison comparison = Analyse(day).Comparisons[0];
        Assert.Contains(comparison.Warnings, warning => warning.Contains("drift", StringComparison.Ordinal) && warning.Contains("AAAABBBB", StringComparison.Ordinal));
        Assert.Equal(ComparisonMethod.DriftCorrected, comparison.Values.Method);
        Assert.DoesNotContain(comparison.Values.Verdict, new[] { Verdict.ShownBetter, Verdict.ShownWorse });
    }

    [Fact]
    public void Of_ColdTyresInGoodOrder_AreToldAndCancel()
    {
        SimulatedDay day = new() { Seed = 22, Weather = SimulatedWeather.Calm, Order = "ABBABAAB", ColdTyres = 0.15, Change = -0.05 };
        SessionAnalysis analysis = Analyse(day);
        Assert.Contains(analysis.Warnings, warning => warning.Contains("cold tyres", StringComparison.Ordinal));
        Assert.True(analysis.Comparisons[0].SquareMetres.Low < -0.05 && analysis.Comparisons[0].SquareMetres.High > -0.05);
    }

    [Fact]
    public void Of_BrakeThatDragsInOnePair_IsTold()
    {
        SimulatedDay dragging = new() { Seed = 11, Weather = SimulatedWeather.Calm, Order = "ABBABAAB", Change = -0.05, Rolling = 0.0235 };
        SessionAnalysis analysis = Analyse(Day(), runs => [.. runs.Take(4), .. dragging.Runs().Skip(4).Take(2), .. runs.Skip(6)]);
        Assert.Contains(analysis.Warnings, warning => warning.StartsWith("pair 5 and 6 rolls", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_WindNotedOverTheLimit_Warns()
    {
        SessionAnalysis analysis = Analyse(Day("ABBA"), runs => runs.Select(run => run with { Conditions = new(Wind: AirSpeed.FromMetresPerSecond(4)) }));
        Assert.Contains(analysis.Warnings, warning => warning.StartsWith("wind over the limit", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_TyresChangedWithThePart_IsSeen()
    {
        SimulatedDay before = new() { Seed = 31, Weather = SimulatedWeather.Calm, Order = "AAAA" };
        SimulatedDay after = new() { Seed = 32, Weather = SimulatedWeather.Calm, Order = "BBBB", Rolling = 0.018 };
        SessionAnalysis analysis = SessionAnalysis.Of([.. before.Runs(), .. after.Runs()], before.Choices());
        string found = string.Join(' ', analysis.Pairs.Select(pair => $"{pair.Configuration} {pair.FreeRollingCoefficient:0.0000}"));
        Assert.True(analysis.Warnings.Any(warning => warning.StartsWith("the rolling resistance differs", StringComparison.Ordinal)), found);
    }

    [Fact]
    public void Of_DifferentDays_NeverShareARollingResistance()
    {
        SimulatedDay first = new() { Seed = 41, Weather = SimulatedWeather.Calm, Order = "AAAA" };
        SimulatedDay second = new() { Seed = 42, Weather = SimulatedWeather.Calm, Order = "BBBB", Rolling = 0.0145 };
        IEnumerable<CoastDownRun> dated = first.Runs().Select(run => run with { Conditions = new(Day: "2025-05-03") }).Concat(second.Runs().Select(run => run with { Conditions = new(Day: "2025-05-04") }));
        SessionAnalysis analysis = SessionAnalysis.Of([.. dated], first.Choices());
        Assert.Empty(analysis.SharedRolling);
        Assert.Contains(analysis.Warnings, warning => warning.Contains("different days", StringComparison.Ordinal));
        Assert.False(analysis.Comparisons[0].Values.Verdict is Verdict.ShownBetter or Verdict.ShownWorse);
        IEnumerable<CoastDownRun> files = first.Runs().Select(run => run with { Source = "a" }).Concat(second.Runs().Select(run => run with { Source = "b" }));
        Assert.Empty(SessionAnalysis.Of([.. files], first.Choices()).SharedRolling);
        Assert.NotEmpty(SessionAnalysis.Of([.. files], first.Choices() with { SameDay = true }).SharedRolling);
    }

    [Fact]
    public void Of_TwoDaysWithBothOnEach_ComparesWithinDays()
    {
        SimulatedDay first = new() { Seed = 51, Weather = SimulatedWeather.Calm, Order = "ABBA", Change = -0.05 };
        SimulatedDay second = new() { Seed = 52, Weather = SimulatedWeather.Calm, Order = "BAAB", Change = -0.05, Rolling = 0.0150 };
        IEnumerable<CoastDownRun> dated = first.Runs().Select(run => run with { Conditions = new(Day: "1") }).Concat(second.Runs().Select(run => run with { Conditions = new(Day: "2") }));
        DragComparison comparison = SessionAnalysis.Of([.. dated], first.Choices()).Comparisons[0];
        Assert.Equal(ComparisonMethod.WithinDays, comparison.Values.Method);
        Assert.True(comparison.SquareMetres.Low < -0.05 && comparison.SquareMetres.High > -0.05);
    }

    [Fact]
    public void Of_NoRunsAndOneRun_SayNothingAndDoNotFail()
    {
        SimulatedDay day = Day("A");
        Assert.Empty(SessionAnalysis.Of([], day.Choices()).Pairs);
        SessionAnalysis one = SessionAnalysis.Of([day.Runs()[0]], day.Choices());
        Assert.Empty(one.Comparisons);
        Assert.Contains(one.Warnings, warning => warning.StartsWith("only one direction", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_ThreeConfigurations_ComparesEachWithTheFirstAtASharperLevel()
    {
        List<CoastDownRun> runs = [.. Day("ABBABAAB").Runs()];
        List<CoastDownRun> all = [.. runs.Select((run, i) => i >= 8 && run.Configuration == "after" ? run with { Configuration = "other" } : run)];
        SessionAnalysis analysis = SessionAnalysis.Of(all, Day().Choices());
        Assert.Equal(["after", "other"], analysis.Comparisons.Select(comparison => comparison.After));
        Assert.All(analysis.Comparisons, comparison => Assert.Equal(2, comparison.Values.Rules.Looks));
    }

    [Fact]
    public void Of_OnePairEach_GivesTheSpreadThatGustsAloneExplain()
    {
        SessionAnalysis one = SessionAnalysis.Of(Day("AB").Runs(), Day().Choices());
        Assert.All(one.Pairs, pair => Assert.InRange(pair.WithGusts!.Value.HalfWidth, 0.0005, 0.05));
        Assert.All(Analyse(Day("ABBA")).Pairs, pair => Assert.Null(pair.WithGusts));
    }
}
