using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules;

namespace FixPlanner.Commands;

/// <summary>What every command needs at the edge: the pack, the logbook, the day, and where talk and results go.</summary>
internal static class Desk
{
    /// <summary>Reads the shipped pack with the user's layers over it; says on standard error what is wrong.</summary>
    /// <returns>The pack, or null with the exit code.</returns>
    public static (KnowledgePack? Pack, int Exit) Pack(IReadOnlyList<string> layers)
    {
        foreach (string layer in layers.Where(l => !Directory.Exists(l)))
        {
            Console.Error.WriteLine($"{layer}: error: there is no such folder of rules");
            Console.Error.WriteLine("  mend: name a folder laid out like the shipped rules, for example: --rules my-rules");
            return (null, ExitCode.CannotReadOrWrite);
        }

        RulePackReading reading = RulePackReader.Read([Path.Combine(AppContext.BaseDirectory, RulePackReader.ShippedFolder), .. layers]);
        Say(reading.Problems.Where(p => p.Severity == Severity.Error));
        return reading.Pack is null ? (null, ExitCode.WrongInput) : (reading.Pack, ExitCode.Done);
    }

    /// <summary>Reads a logbook; says on standard error what is wrong.</summary>
    /// <returns>The logbook, or null with the exit code.</returns>
    public static (Logbook? Logbook, int Exit) Read(string file, KnowledgePack pack)
    {
        LogbookReading reading = LogbookReader.ReadFile(file, pack);
        Say(reading.Problems);
        return reading.IsSound ? (reading.Logbook, ExitCode.Done)
            : (null, reading.Problems.Any(p => p.Place.Line > 0) ? ExitCode.WrongInput : ExitCode.CannotReadOrWrite);
    }

    /// <summary>The day of the plan: as said, else the logbook's last, else today.</summary>
    public static DateOnly Today(DateOnly? said, Logbook? logbook) => said ?? logbook?.LastDate ?? DateOnly.FromDateTime(DateTime.Now);

    /// <summary>Says problems on standard error, each once.</summary>
    public static void Say(IEnumerable<Problem> problems)
    {
        foreach (Problem problem in problems)
        {
            Console.Error.WriteLine(problem);
        }
    }

    /// <summary>Gives the result: to standard output, or to a file.</summary>
    /// <returns>The exit code.</returns>
    public static int Give(string result, string? file)
    {
        try
        {
            if (file is null)
            {
                using Stream output = Console.OpenStandardOutput();
                output.Write(System.Text.Encoding.UTF8.GetBytes(result));
                return ExitCode.Done;
            }

            File.WriteAllText(file, result);
            Console.Error.WriteLine($"written: {file}");
            return ExitCode.Done;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"{file ?? "standard output"}: error: cannot be written: {e.Message}");
            return ExitCode.CannotReadOrWrite;
        }
    }

    /// <summary>Gives several results as files of one folder, which is made where it is missing.</summary>
    /// <returns>The exit code.</returns>
    public static int GiveAll(IReadOnlyList<(string File, string Text)> results, string folder)
    {
        try
        {
            foreach ((string file, string text) in results)
            {
                string path = Path.Combine(folder, file);
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
                File.WriteAllText(path, text);
            }

            Console.Error.WriteLine($"written: {results.Count} files in {folder}");
            return ExitCode.Done;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"{folder}: error: cannot be written: {e.Message}");
            return ExitCode.CannotReadOrWrite;
        }
    }
}
