using System.CommandLine;
using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Schemas;

namespace FixPlanner.Commands;

/// <summary>fixplanner demo: writes three invented cars, then opens the first on a terminal or prints its plan.</summary>
internal static class DemoCommand
{
    private static readonly string[] Cars = ["lindle.logbook.yaml", "marram.logbook.yaml", "pennock.logbook.yaml"];

    public static Command Build()
    {
        Option<string> to = new("--to") { Description = "folder to write into", DefaultValueFactory = _ => "fixplanner-demo" };
        Command command = new("demo", "Three invented cars to try everything on: writes their logbooks and run files, then opens the first.\n\nExamples:\n  fixplanner demo\n  fixplanner demo --to my-folder") { to };
        command.SetAction(r => Run(r.GetValue(to)!));
        return command;
    }

    public static int Run(string folder)
    {
        (KnowledgePack? pack, int exit) = Desk.Pack([]);
        if (pack is null)
        {
            return exit;
        }

        string shipped = Path.Combine(AppContext.BaseDirectory, "Demo");
        List<string> written = [];
        List<string> kept = [];
        try
        {
            foreach (string from in Directory.EnumerateFiles(shipped, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
            {
                string inside = Path.GetRelativePath(shipped, from);
                string to = Path.Combine(folder, inside.StartsWith("logbooks", StringComparison.Ordinal) ? Path.GetFileName(inside) : inside);
                Directory.CreateDirectory(Path.GetDirectoryName(to)!);

                // A demo car that somebody has worked on is theirs.
                if (File.Exists(to))
                {
                    kept.Add(to);
                    continue;
                }

                Copy(from, to);
                written.Add(to);
            }

            File.WriteAllText(Path.Combine(folder, LogbookSchema.FileName), LogbookSchema.Text(pack));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Console.Error.WriteLine($"{folder}: error: the demo cannot be written there: {e.Message}");
            Console.Error.WriteLine("  mend: name a folder that you may write to: fixplanner demo --to my-folder");
            return ExitCode.CannotReadOrWrite;
        }

        if (written.Count > 0)
        {
            Console.Error.WriteLine($"written to {folder}: {string.Join(", ", written.Select(f => Path.GetRelativePath(folder, f)))}");
        }

        if (kept.Count > 0)
        {
            Console.Error.WriteLine($"kept as they were: {kept.Count} files that were there already");
        }

        string first = Path.Combine(folder, Cars[0]);
        if (Face.CanBeFullScreen)
        {
            return Face.Wizard(first, [], null);
        }

        exit = PlanCommand.Run(first, null, null, [], "text", null);
        Console.Error.WriteLine("next:");
        foreach (string car in Cars)
        {
            Console.Error.WriteLine($"  fixplanner {Path.Combine(folder, car)}");
        }

        Console.Error.WriteLine($"  fixplanner plan {Path.Combine(folder, Cars[1])} --format html --out plan.html");
        Console.Error.WriteLine($"  fixplanner --plain {Path.Combine(folder, Cars[2])}");
        Console.Error.WriteLine($"  fixplanner runs {Path.Combine(folder, "runs", "lindle-roof-lip.csv")} --logbook {first} --fix roof-tail-lip --planned \"0.03 m2\" --keep");
        return exit;
    }

    // The first line of a logbook names the schema that is written beside it, for editors.
    private static void Copy(string from, string to)
    {
        if (from.EndsWith(".logbook.yaml", StringComparison.Ordinal))
        {
            File.WriteAllText(to, $"{LogbookSchema.FirstLine}\n{File.ReadAllText(from)}");
        }
        else
        {
            File.Copy(from, to);
        }
    }
}
