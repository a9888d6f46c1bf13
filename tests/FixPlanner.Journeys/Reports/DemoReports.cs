using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Planning;
using FixPlanner.Files.Logbooks;
using FixPlanner.Journeys.Jobs;

namespace FixPlanner.Journeys.Reports;

/// <summary>The invented cars, worked out in full once for all tests of reports.</summary>
internal static class DemoReports
{
    private static readonly ConcurrentDictionary<string, Lazy<Assessment>> Known = new();
    private static readonly Lazy<Assessor> Assessor = new(() => new(JobFiles.Pack));

    public static Assessment Of(string car) => Known.GetOrAdd(car, c => new(() => Assess(File.ReadAllText(JobFiles.Demo(c))))).Value;

    public static Assessment Assess(string logbook, PlanDepth depth = PlanDepth.Full)
    {
        using JobFiles files = new();
        string path = files.New("car.logbook.yaml");
        File.WriteAllText(path, logbook);
        LogbookReading reading = LogbookReader.ReadFile(path, JobFiles.Pack);
        Assert.True(reading.IsSound, string.Join('\n', reading.Problems));
        return Assessor.Value.Assess(reading.Logbook!, JobFiles.Today, depth);
    }

    /// <summary>A file of the repository.</summary>
    public static string Repository(string path, [CallerFilePath] string here = "") => Path.Combine(Path.GetDirectoryName(here)!, "..", "..", "..", path);
}
