using System.Runtime.CompilerServices;
using Terminal.Gui.App;

namespace FixPlanner.Terminal;

/// <summary>Runs a stage on the terminal, from taking it over to giving it back.</summary>
internal static class WizardHost
{
    /// <param name="build">Makes the window; called when the library is loaded.</param>
    /// <param name="save">Writes out what is not on disk yet; may be called on another thread.</param>
    /// <returns>The exit code: 0, 70 for our own fault, 128 + n when signal n ended it.</returns>
    public static int Run(Func<IApplication, IStage> build, Action save)
    {
        if (OperatingSystem.IsWindows())
        {
            return Guarded(() => LibraryLoop.Run(build, save));
        }
        UnixTerminal terminal = new();
        return Guarded(() =>
        {
            // From here on no signal ends the program in the middle of something; loading the library takes a while.
            using TerminalGuard guard = new(terminal, save);
            ScreenLibrary.Load();
            RunOwnLoop(build, terminal, guard);
            return guard.ExitCode;
        });
    }

    private static int Guarded(Func<int> run)
    {
        try
        {
            return run();
        }
        catch (Exception e)
        {
            // Only now is the person's own screen back, where this can be read.
            FaultNotice.Print(e);
            return TerminalGuard.OwnFault;
        }
    }

    // Nothing of the library may be touched before it is loaded, so what touches it stands in a method of its own.
    [MethodImpl(MethodImplOptions.NoInlining)]
    private static void RunOwnLoop(Func<IApplication, IStage> build, UnixTerminal terminal, TerminalGuard guard)
    {
        using Timings timings = Timings.FromEnvironment();
        using IApplication app = Application.Create();
        app.Init("ansi");
        bool ascii = !PlainCharacters.LocaleIsUtf8(Environment.GetEnvironmentVariable);
        new EventLoop(terminal, guard, build(app), app, ascii, timings).Run();
    }
}
