using System.Diagnostics;

namespace FixPlanner.Journeys.Program;

/// <summary>What a run of the real program gave: its exit code, its result and its talk.</summary>
/// <param name="Exit">Exit code.</param>
/// <param name="Output">Standard output.</param>
/// <param name="Talk">Standard error.</param>
internal sealed record Ran(int Exit, string Output, string Talk)
{
    private static string ProgramFile => Path.Combine(AppContext.BaseDirectory, "fixplanner.dll");

    /// <summary>Runs it to its end in a folder; what is given on standard input ends there.</summary>
    public static Ran In(string folder, string input, params string[] arguments) => In(folder, input, new Dictionary<string, string>(), arguments);

    /// <summary>The same with variables of the environment.</summary>
    public static Ran In(string folder, string input, IReadOnlyDictionary<string, string> environment, params string[] arguments)
    {
        using Process process = Start(folder, environment, arguments);
        Task<string> output = process.StandardOutput.ReadToEndAsync();
        Task<string> talk = process.StandardError.ReadToEndAsync();
        try
        {
            process.StandardInput.Write(input);
            process.StandardInput.Close();
        }
        catch (IOException)
        {
            // It ended without reading all of it.
        }

        if (!process.WaitForExit(TimeSpan.FromMinutes(2)))
        {
            process.Kill();
            throw new TimeoutException($"fixplanner {string.Join(' ', arguments)} did not end");
        }

        return new(process.ExitCode, output.Result, talk.Result);
    }

    /// <summary>Starts it with pipes at all three ends.</summary>
    public static Process Start(string folder, IReadOnlyDictionary<string, string> environment, params string[] arguments)
    {
        ProcessStartInfo start = new("dotnet")
        {
            WorkingDirectory = folder,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach ((string name, string value) in environment)
        {
            start.Environment[name] = value;
        }

        start.ArgumentList.Add(ProgramFile);
        foreach (string argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        return Process.Start(start)!;
    }
}
