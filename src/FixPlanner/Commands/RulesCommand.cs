using System.CommandLine;
using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules;

namespace FixPlanner.Commands;

/// <summary><c>fixplanner rules check [DIR]...</c>: every problem of a pack, each once at its place.</summary>
internal static class RulesCommand
{
    private const int Success = 0;
    private const int WrongInput = 1;
    private const int CannotRead = 3;

    private static readonly Argument<string[]> Folders = new("DIR")
    {
        Arity = ArgumentArity.ZeroOrMore,
        Description = "A whole pack (a folder with pack.yaml), or folders of your own that are laid over the shipped pack file by file. Without DIR the shipped pack is checked.",
    };

    /// <summary>Builds the command.</summary>
    /// <returns>The command.</returns>
    public static Command Build()
    {
        Command check = new("check", "Read a pack of rules and report every problem: fixplanner rules check my-rules") { Folders };
        check.SetAction(parsed => Check(parsed.GetValue(Folders) ?? [], AppContext.BaseDirectory, parsed.InvocationConfiguration.Output));
        return new("rules", "Check the rules that the plan is made from, or your own over them.") { check, RuleDocsCommand.Build(), RuleSchemasCommand.Build() };
    }

    /// <summary>The layers that the named folders stand for: a folder with pack.yaml comes first, else the shipped pack does.</summary>
    internal static IReadOnlyList<string> Layers(IReadOnlyList<string> folders, string programFolder) =>
        folders.Count > 0 && File.Exists(Path.Combine(folders[0], "pack.yaml"))
            ? folders
            : [Path.Combine(programFolder, RulePackReader.ShippedFolder), .. folders];

    internal static int Check(IReadOnlyList<string> folders, string programFolder, TextWriter output)
    {
        RulePackReading reading = RulePackChecks.Check(Layers(folders, programFolder));
        foreach (Problem problem in reading.Problems)
        {
            output.WriteLine(problem);
        }

        foreach (LayerChange change in reading.Changes)
        {
            output.WriteLine($"{Word(change.Kind)} {change.Path}");
        }

        output.WriteLine(Summary(reading));
        bool unreadable = reading.Problems.Any(problem => problem.Code is "FP2001" or "FP1001" or "FP1003" or "FP1004");
        return unreadable ? CannotRead : reading.Pack is null ? WrongInput : Success;
    }

    private static string Summary(RulePackReading reading)
    {
        string counts = string.Join(", ", [
            Counted(reading, Severity.Error, "error"),
            Counted(reading, Severity.Warning, "warning"),
            Counted(reading, Severity.Note, "note"),
        ]);
        return reading.Pack is not { } pack ? $"{counts}; the pack cannot be used" : $"{Size(pack)}: {counts}";
    }

    private static string Size(KnowledgePack pack) =>
        $"{pack.Zones.Count} zones, {pack.Observations.Count} observations, {pack.Mechanisms.Count} causes, {pack.Fixes.Count} fixes, {pack.Gates.Count} gates, {pack.Sources.Count} sources";

    private static string Counted(RulePackReading reading, Severity severity, string word)
    {
        int count = reading.Problems.Count(problem => problem.Severity == severity);
        return $"{count} {word}{(count == 1 ? "" : "s")}";
    }

    private static string Word(LayerChangeKind kind) => kind switch
    {
        LayerChangeKind.Added => "added   ",
        LayerChangeKind.Replaced => "replaced",
        _ => "retired ",
    };
}
