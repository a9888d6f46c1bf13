using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Problems;
using FixPlanner.Report.Plans;

namespace FixPlanner.Commands;

/// <summary>Keeps the comparison of runs in the logbook and says what follows from it.</summary>
internal static class RunsKeeping
{
    /// <summary>Keeps it.</summary>
    /// <returns>The exit code.</returns>
    public static int Keep(string path, KnowledgePack pack, SessionAnalysis analysis, IReadOnlyList<string> files, string? fix, DateOnly? date, TextWriter error)
    {
        if (analysis.Comparisons.Count != 1)
        {
            error.WriteLine("fixplanner runs: --keep: nothing is kept: a comparison needs two configurations with two pairs each");
            return ExitCode.WrongInput;
        }

        using OpenLogbook? book = OpenLogbook.Open(path, pack, out IReadOnlyList<Problem> problems);
        Tell(error, problems);
        if (book is null || book.Waiting.Count > 0)
        {
            error.WriteLine($"fixplanner runs: --keep: nothing is kept; open it first: fixplanner {path}");
            return ExitCode.WrongInput;
        }

        if (FixOf(book.Logbook, pack, fix, error) is not { } about)
        {
            return ExitCode.WrongUsage;
        }

        DateOnly day = date ?? DayOf(analysis) ?? Desk.Today(null, book.Logbook);
        Assessor assessor = new(pack);
        Assessment before = assessor.Assess(book.Logbook, day, PlanDepth.Quick);
        Reading reading = Proving.OfRuns(book.Logbook, analysis.Comparisons[0], [.. files.Select(file => Beside(path, file))], about, day);
        (bool kept, IReadOnlyList<Problem> said) = book.Keep(Proving.Keep(pack, book.Logbook, reading, day));
        Tell(error, said);
        if (!kept)
        {
            return ExitCode.CannotReadOrWrite;
        }

        error.WriteLine($"kept in {path}: {reading.Id}, {reading.Result!.Verdict}");
        Assessment after = assessor.Assess(book.Logbook, day, PlanDepth.Quick);
        foreach (string line in after.Learned.Where(x => x.Measured.Fix.Id == about).SelectMany(LearnedPart.Sentences).Concat(ChangeSummary.Between(before, after)))
        {
            error.WriteLine($"  {Prose.Plain(line)}");
        }

        error.WriteLine($"next: fixplanner plan {path}");
        return ExitCode.Done;
    }

    private static string? FixOf(Logbook logbook, KnowledgePack pack, string? said, TextWriter error)
    {
        if (said is not null)
        {
            if (pack.Fix(said)?.Id is { } known)
            {
                return known;
            }

            string near = NearestWord.To(said, pack.Fixes.Select(f => f.Id)) is { } word ? $"; did you mean '{word}'?" : "";
            error.WriteLine($"fixplanner runs: --fix {said}: there is no such fix in the rule pack{near}");
            return null;
        }

        if (Proving.OnlyFix(logbook) is { } only)
        {
            return only;
        }

        IReadOnlyList<string> fixes = Proving.Fixes(logbook);
        error.WriteLine($"fixplanner runs: --keep: say which fix makes the difference: --fix ID{(fixes.Count > 0 ? $", in work are: {string.Join(", ", fixes)}" : "; the job cards of the plan name them")}");
        return null;
    }

    // One day for all runs is the day of the reading.
    private static DateOnly? DayOf(SessionAnalysis analysis)
    {
        string[] days = [.. analysis.Runs.Where(run => run.Used).Select(run => run.Run.Conditions.Day ?? "").Distinct()];
        return days.Length == 1 ? Dates.Of(days[0]) : null;
    }

    // Files are named as seen from the logbook, so that a folder can be moved as a whole.
    private static string Beside(string logbook, string file) =>
        Path.GetRelativePath(Path.GetDirectoryName(Path.GetFullPath(logbook))!, Path.GetFullPath(file)).Replace('\\', '/');

    private static void Tell(TextWriter error, IEnumerable<Problem> problems)
    {
        foreach (Problem problem in problems)
        {
            error.WriteLine(problem);
        }
    }
}
