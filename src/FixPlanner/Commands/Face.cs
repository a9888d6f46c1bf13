using System.Runtime.CompilerServices;
using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Problems;
using FixPlanner.Terminal;
using FixPlanner.Wizard;
using FixPlanner.Wizard.Shell;
using FixPlanner.Wizard.Side;

namespace FixPlanner.Commands;

/// <summary>Which face the person gets: the full-screen wizard, or numbered lines.</summary>
internal static class Face
{
    /// <summary>True when a full-screen terminal is there and the person did not ask for lines.</summary>
    public static bool CanBeFullScreen => Suitability.HasTerminal() && Environment.GetEnvironmentVariable("ACCESSIBLE") is null or "" or "0";

    /// <summary>Opens the wizard.</summary>
    public static int Wizard(string? file, IReadOnlyList<string> rules, DateOnly? date)
    {
        (KnowledgePack? pack, int exit) = Desk.Pack(rules);
        if (pack is null)
        {
            return exit;
        }

        string path = file ?? "car.logbook.yaml";
        OpenLogbook? book = OpenLogbook.Open(path, pack, out IReadOnlyList<Problem> problems);
        Desk.Say(problems);
        if (book is null)
        {
            return problems.Any(p => p.Place.Line > 0) ? ExitCode.WrongInput : ExitCode.CannotReadOrWrite;
        }

        using (book)
        {
            if (book.Waiting.Count > 0)
            {
                Choose(book);
            }

            WizardProgram program = new(book, pack, date ?? DateOnly.FromDateTime(DateTime.Now));
            int ended = Screens(program, path);
            if (ended == ExitCode.Done)
            {
                Console.Error.WriteLine($"Kept in {path}. The plan: fixplanner plan {path}   On paper: fixplanner plan {path} --format html --out plan.html");
            }

            return ended;
        }
    }

    /// <summary>The logbook and its journal both moved on: the owner chooses before anything is written.</summary>
    public static void Choose(OpenLogbook book)
    {
        Console.Error.WriteLine(book.Recovered);
        foreach (string waiting in book.Waiting)
        {
            Console.Error.WriteLine($"  {waiting}");
        }

        Console.Error.WriteLine("Type 1 to put these answers into the file as it is now, 2 to leave the file as it is, then Enter:");
        Desk.Say(book.Settle(Console.In.ReadLine()?.Trim() == "1"));
    }

    // The screen library is first touched here, so that other commands start without it.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static int Screens(WizardProgram program, string path)
    {
        ShellWindow? window = null;
        int ended = WizardHost.Run(app => window = new ShellWindow(app, program, $"fixplanner --plain {path}", SideScreens.Views()), () => { });
        window?.KeepDraft();
        return ended;
    }
}
