using System.CommandLine;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Runs;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Runs;

namespace FixPlanner.Commands;

/// <summary><c>fixplanner runs FILE...</c>: reads coast-downs and, with two configurations, compares them.</summary>
internal static class RunsCommand
{
    private const string CannotOpen = "FP4001";

    /// <summary>Builds the command.</summary>
    /// <returns>The command.</returns>
    public static Command Build()
    {
        RunsArguments arguments = new();
        arguments.Format.AcceptOnlyFromAmong("text", "markdown", "html", "json");
        Command command = new("runs", """
            Read coast-down runs and say whether a change is real.

            Examples:
              fixplanner runs roof-lip.csv --mass "900 kg"
              fixplanner runs before.gpx after.gpx --logbook my-car.logbook.yaml --planned "3 %"
              fixplanner runs roof-lip.csv --logbook my-car.logbook.yaml --fix add-roof-lip --keep
              fixplanner runs log.csv --mass "900 kg" --map speed="GPS Speed" --speed-unit km/h --format json
            """)
        {
            arguments.Files, arguments.Logbook, arguments.Format, arguments.Out, arguments.Mass, arguments.MassAfter, arguments.Rotating, arguments.FrontalArea,
            arguments.AirTemperature, arguments.AirPressure, arguments.Planned, arguments.Band, arguments.Map, arguments.SpeedUnit, arguments.SameDay,
            arguments.ChangesRolling, arguments.IgnoreChecksum, arguments.Rename, arguments.Keep, arguments.Fix, arguments.Date, arguments.Rules,
        };
        command.SetAction(parsed => Run(parsed, arguments));
        return command;
    }

    private static int Run(ParseResult parsed, RunsArguments arguments)
    {
        TextWriter output = parsed.InvocationConfiguration.Output;
        TextWriter error = parsed.InvocationConfiguration.Error;
        string? logbook = parsed.GetValue(arguments.Logbook);
        KnowledgePack? pack = null;
        KnownCar? car = null;
        if (logbook is not null)
        {
            (pack, car, int exit) = ReadCar(logbook, parsed.GetValue(arguments.Rules) ?? [], error);
            if (car is null)
            {
                return exit;
            }
        }

        RunReadingOptions reading = arguments.Reading(parsed);
        IReadOnlyDictionary<string, string> names = arguments.NewNames(parsed);
        AnalysisChoices? choices = arguments.Choices(parsed, car);
        if (parsed.GetValue(arguments.Keep) && logbook is null)
        {
            arguments.Usage.Add("--keep: name the logbook that keeps it: --logbook my-car.logbook.yaml");
            choices = null;
        }

        if (choices is null)
        {
            arguments.Usage.ForEach(line => error.WriteLine($"fixplanner runs: {line}"));
            return ExitCode.WrongUsage;
        }

        RunFile file = RunFileReader.Read(arguments.FilesOf(parsed), reading);
        Tell(error, file.Problems);
        if (file.Problems.Any(problem => problem.Code == CannotOpen))
        {
            return ExitCode.CannotReadOrWrite;
        }

        IReadOnlyList<CoastDownRun> runs = [.. file.Runs.Select(run => run with { Configuration = names.GetValueOrDefault(run.Configuration, run.Configuration) })];
        RunsReading result = new(Analyse(runs, choices, arguments.PlannedShare), choices, [.. file.Problems.Select(Shown)]);
        string text = parsed.GetValue(arguments.Format) switch
        {
            "json" => RunsJson.Write(result),
            "html" => HtmlWriting.Write(RunsDocument.Of(result)),
            "markdown" => MarkdownWriting.Write(RunsDocument.Of(result)),
            _ => TextWriting.Write(RunsDocument.Of(result)),
        };
        int? undelivered = Deliver(text, parsed.GetValue(arguments.Out), output, error);
        if (undelivered is null && parsed.GetValue(arguments.Keep) && RunsKeeping.Keep(logbook!, pack!, result.Analysis, arguments.FilesOf(parsed), parsed.GetValue(arguments.Fix), parsed.GetValue(arguments.Date), error) is var kept and not ExitCode.Done)
        {
            return kept;
        }

        return undelivered ?? (file.HasErrors || result.Analysis.Pairs.Count == 0 ? ExitCode.WrongInput : ExitCode.Done);
    }

    private static (KnowledgePack? Pack, KnownCar? Car, int Exit) ReadCar(string logbook, IReadOnlyList<string> rules, TextWriter error)
    {
        (KnowledgePack? pack, int exit) = Desk.Pack(rules);
        if (pack is null)
        {
            return (null, null, exit);
        }

        LogbookReading read = LogbookReader.ReadFile(logbook, pack);
        Tell(error, read.Problems);
        return read.IsSound
            ? (pack, KnownCar.Of(Situation.Of(pack, read.Logbook!, Desk.Today(null, read.Logbook))), ExitCode.Done)
            : (pack, null, File.Exists(logbook) ? ExitCode.WrongInput : ExitCode.CannotReadOrWrite);
    }

    // A change sought in per cent needs the drag area before, which only a first look at the runs gives.
    private static SessionAnalysis Analyse(IReadOnlyList<CoastDownRun> runs, AnalysisChoices choices, double? plannedShare)
    {
        SessionAnalysis analysis = SessionAnalysis.Of(runs, choices);
        return plannedShare is > 0 and { } share && analysis.Comparisons.Count > 0
            ? SessionAnalysis.Of(runs, choices with { Planned = DragAreaChange.FromSquareMetres(share * analysis.Comparisons[0].Values.Before.Mean) })
            : analysis;
    }

    private static int? Deliver(string text, string? path, TextWriter output, TextWriter error)
    {
        if (path is null)
        {
            output.Write(text);
            return null;
        }

        try
        {
            File.WriteAllText(path, text);
            error.WriteLine($"wrote {path}");
            return null;
        }
        catch (Exception reason) when (reason is IOException or UnauthorizedAccessException)
        {
            error.WriteLine($"fixplanner runs: {path} cannot be written: {reason.Message}");
            return ExitCode.CannotReadOrWrite;
        }
    }

    private static void Tell(TextWriter error, IReadOnlyList<Problem> problems)
    {
        foreach (Problem problem in problems)
        {
            error.WriteLine(problem);
        }
    }

    private static ShownProblem Shown(Problem problem) => new(
        problem.Code, problem.Severity.ToString().ToLowerInvariant(), problem.Place.File, problem.Place.Line, problem.Place.Column, problem.What, problem.Why, problem.Mend);
}
