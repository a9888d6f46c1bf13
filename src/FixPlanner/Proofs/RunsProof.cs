using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Runs;

namespace FixPlanner.Proofs;

/// <summary>Reads the run files that a person names in the interview and compares what is in them. Both faces use it; files are seen from the logbook's folder.</summary>
internal static class RunsProof
{
    /// <summary>What a typed answer to the question about run files is.</summary>
    /// <param name="text">File names with blanks between them.</param>
    /// <param name="path">The logbook's file.</param>
    /// <param name="pack">The pack.</param>
    /// <param name="logbook">The logbook.</param>
    /// <param name="fix">The fix they are about.</param>
    /// <param name="today">The day.</param>
    /// <returns>The reading, or why there is none.</returns>
    public static (Given Given, Refusal? Refusal) Read(string text, string path, KnowledgePack pack, Logbook logbook, string fix, DateOnly today)
    {
        KnownCar car = KnownCar.Of(Situation.Of(pack, logbook, today));
        if (car.Mass is not { } mass)
        {
            return (new GivenText(text), new("the mass of the car is not known, and a coast-down turns into drag only with it", "answer the question about the mass first, in the part about the car"));
        }

        string folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        string[] names = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        RunFile file = RunFileReader.Read([.. names.Select(name => Path.Combine(folder, name))], RunReadingOptions.None);
        if (file.Problems.FirstOrDefault(p => p.Severity == Severity.Error) is { } problem)
        {
            return (new GivenText(text), new($"{Path.GetFileName(problem.Place.File)}: {problem.What}", $"{problem.Mend}; more can be said on the command line: fixplanner runs --help"));
        }

        SessionAnalysis analysis = SessionAnalysis.Of(file.Runs, new(mass, car.RotatingShare ?? 0.03, car.FrontalArea, RollingPrior: car.RollingCoefficient));
        return analysis.Comparisons.Count == 1
            ? (new GivenReading(Proving.OfRuns(logbook, analysis.Comparisons[0], names, fix, today)), null)
            : (new GivenText(text), new(
                analysis.Comparisons.Count == 0 ? $"nothing can be compared: {analysis.Pairs.Count} pairs, of {string.Join(" and ", analysis.Pairs.Select(p => p.Configuration).Distinct())}" : "more than two configurations are in these files",
                "two configurations with two pairs each are needed; look at them with: fixplanner runs"));
    }

    /// <summary>The verdict on a reading in a sentence, for the moment after it was kept.</summary>
    public static string Said(GivenReading read) => read.Reading.Result is { } result
        ? $"{result.Verdict}: {VerdictWords.Number(result.Estimate)} m2 (95 %: {VerdictWords.Number(result.Low)} to {VerdictWords.Number(result.High)})"
        : "";
}
