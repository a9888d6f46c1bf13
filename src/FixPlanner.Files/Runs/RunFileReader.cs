using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Runs;

/// <summary>Reads run files of any of the known formats; what they are is seen from their content, not their name.</summary>
public static class RunFileReader
{
    /// <summary>Reads files from disk, in the order given.</summary>
    /// <param name="paths">At least one path.</param>
    /// <param name="options">What the person says about them.</param>
    /// <returns>Every usable run and every mistake.</returns>
    public static RunFile Read(IReadOnlyList<string> paths, RunReadingOptions options)
    {
        ArgumentNullException.ThrowIfNull(paths);
        List<RunFile> files = [];
        foreach (string path in paths)
        {
            try
            {
                files.Add(ReadBytes(path, File.ReadAllBytes(path), options));
            }
            catch (Exception reason) when (reason is IOException or UnauthorizedAccessException)
            {
                files.Add(new([], [RunMessages.CannotOpen(path, Reason(path, reason))]));
            }
        }

        return Joined(files, paths.Count > 1);
    }

    /// <summary>Reads one file that is already in memory.</summary>
    /// <param name="name">As the person named it; it stands in messages.</param>
    /// <param name="bytes">Its content.</param>
    /// <param name="options">What the person says about it.</param>
    /// <returns>Every usable run and every mistake.</returns>
    public static RunFile ReadBytes(string name, byte[] bytes, RunReadingOptions options)
    {
        ArgumentNullException.ThrowIfNull(bytes);
        ArgumentNullException.ThrowIfNull(options);
        LimitedProblems problems = new(name);
        string text = RunText.Decode(bytes, problems);
        List<CoastDownRun> runs = [];
        if (string.IsNullOrWhiteSpace(text))
        {
            problems.Add(RunMessages.Empty(name));
        }
        else
        {
            (List<LoggedPoint> points, bool hasRuns) = GpxRunReader.Looks(text) ? (GpxRunReader.Read(text, options, problems), false)
                : NmeaRunReader.Looks(text) ? (NmeaRunReader.Read(text, options, problems), false)
                : CsvRunReader.Read(text, options, problems);
            runs = RunAssembler.Assemble(points, hasRuns, problems);
            if (runs.Count == 0 && !problems.HasErrors)
            {
                problems.Add(RunMessages.Empty(name));
            }
        }

        ProblemList all = new();
        all.AddRange(problems.All());
        return new(runs, all.InOrder());
    }

    private static RunFile Joined(List<RunFile> files, bool several)
    {
        ProblemList problems = new();
        List<CoastDownRun> runs = [];
        foreach (RunFile file in files)
        {
            problems.AddRange(file.Problems);
            runs.AddRange(several ? file.Runs.Select(run => run with { Name = $"{Path.GetFileNameWithoutExtension(run.Source)}:{run.Name}" }) : file.Runs);
        }

        if (runs.Count == 1)
        {
            problems.Add(RunMessages.OneRun(runs[0].Source));
        }

        return new(runs, problems.InOrder());
    }

    private static string Reason(string path, Exception reason) => reason switch
    {
        FileNotFoundException or DirectoryNotFoundException => "there is no such file",
        UnauthorizedAccessException when Directory.Exists(path) => "it is a folder",
        UnauthorizedAccessException => "you may not read it",
        _ => reason.Message,
    };
}
