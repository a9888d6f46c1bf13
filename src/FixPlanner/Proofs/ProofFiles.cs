using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Runs;

namespace FixPlanner.Proofs;

/// <summary>Reads the files that a person names in the interview: runs, which it compares, and frame counts of tufts. Both faces use it; files are seen from the logbook's folder.</summary>
internal static class ProofFiles
{
    /// <summary>What a typed answer is once the files named in it were read.</summary>
    /// <param name="key">The question.</param>
    /// <param name="given">As typed.</param>
    /// <param name="path">The logbook's file.</param>
    /// <param name="pack">The pack.</param>
    /// <param name="logbook">The logbook.</param>
    /// <param name="today">The day.</param>
    /// <returns>The answer, and why it cannot be taken; answers that name no file as they are.</returns>
    public static (Given Given, Refusal? Refusal) Read(QuestionKey key, Given given, string path, KnowledgePack pack, Logbook logbook, DateOnly today) => (key.Kind, given) switch
    {
        (QuestionKind.ProofRuns, GivenText text) => Runs(text.Text, path, pack, logbook, key.Id, today),
        (QuestionKind.TuftStart, GivenText text) when text.Text.TrimEnd().EndsWith(".csv", StringComparison.OrdinalIgnoreCase) => Counts(text.Text, path),
        _ => (given, null),
    };

    /// <summary>What was read, in a sentence for the moment after it was kept; empty for other answers.</summary>
    public static string Said(Given given) => given is GivenReading { Reading.Result: { } result }
        ? $"{result.Verdict}: {VerdictWords.Number(result.Estimate)} m2 (95 %: {VerdictWords.Number(result.Low)} to {VerdictWords.Number(result.High)}). "
        : "";

    // The last of the parts between commas is the file of counts.
    private static (Given Given, Refusal? Refusal) Counts(string text, string path)
    {
        int comma = text.LastIndexOf(',');
        string name = text[(comma + 1)..].Trim();
        string file = Path.Combine(Folder(path), name);
        if (!File.Exists(file))
        {
            return (new GivenText(text), new($"there is no file {name} beside the logbook", "name it as seen from the folder of the logbook"));
        }

        FrameCountFile read = FrameCountReader.ReadBytes(name, File.ReadAllBytes(file));
        return read.Problems.FirstOrDefault(p => p.Severity == Severity.Error) is { } problem
            ? (new GivenText(text), new($"{problem.Place}: {problem.What}", problem.Mend))
            : (new GivenCounts(comma < 0 ? "" : text[..comma], name, read.Counts), null);
    }

    private static string Folder(string path) => Path.GetDirectoryName(Path.GetFullPath(path))!;

    private static (Given Given, Refusal? Refusal) Runs(string text, string path, KnowledgePack pack, Logbook logbook, string fix, DateOnly today)
    {
        KnownCar car = KnownCar.Of(Situation.Of(pack, logbook, today));
        if (car.Mass is not { } mass)
        {
            return (new GivenText(text), new("the mass of the car is not known, and a coast-down turns into drag only with it", "answer the question about the mass first, in the part about the car"));
        }

        string[] names = text.Split(' ', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        RunFile file = RunFileReader.Read([.. names.Select(name => Path.Combine(Folder(path), name))], RunReadingOptions.None);
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
}
