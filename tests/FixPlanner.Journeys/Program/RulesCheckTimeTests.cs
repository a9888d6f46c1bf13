using System.Diagnostics;
using FixPlanner.Journeys.Jobs;

namespace FixPlanner.Journeys.Program;

/// <summary>Who writes rules checks them after every line: that must not make anybody wait.</summary>
public sealed class RulesCheckTimeTests : IDisposable
{
    private readonly JobFiles files = new();

    public void Dispose() => files.Dispose();

    [Fact]
    public void RulesCheck_OfTheShippedPack_TakesUnderASecond()
    {
        // The whole process, start of the runtime and all; the quickest of five, because others work on this machine as well.
        TimeSpan quickest = Enumerable.Range(0, 5).Min(_ =>
        {
            long start = Stopwatch.GetTimestamp();
            Ran ran = Ran.In(files.Folder, "", "rules", "check");
            Assert.True(ran.Exit == 0, ran.Output);
            return Stopwatch.GetElapsedTime(start);
        });

        Assert.InRange(quickest.TotalSeconds, 0, 1);
    }
}
