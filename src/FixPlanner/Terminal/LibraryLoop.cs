using Terminal.Gui.App;

namespace FixPlanner.Terminal;

/// <summary>Windows: the library drives the console itself, with its own loop.</summary>
internal static class LibraryLoop
{
    public static int Run(Func<IApplication, IStage> build, Action save)
    {
        using IApplication app = Application.Create();
        app.Init("ansi");
        Application.MaximumIterationsPerSecond = 60;
        IStage stage = build(app);
        using TerminalGuard guard = new(new Leaving(app.Dispose), save);
        guard.Listen(demand => Obey(app, stage, demand));
        stage.Attach(new Hand(app));
        app.Driver!.Paste += (_, text) => stage.Paste(text);
        app.Run(stage.Window);
        return guard.ExitCode;
    }

    private static void Obey(IApplication app, IStage stage, Demand demand)
    {
        if (demand == Demand.End)
        {
            app.Invoke(() => app.RequestStop(stage.Window));
        }
    }

    private sealed class Hand(IApplication app) : IStageHand
    {
        public void Post(Action action) => app.AddTimeout(TimeSpan.Zero, () =>
        {
            action();
            return false;
        });

        // The Windows console has no jobs to come back to.
        public void Suspend()
        {
        }
    }

    private sealed class Leaving(Action leave) : ITerminal
    {
        public (int Width, int Height) Size => (Console.WindowWidth, Console.WindowHeight);

        public void Enter()
        {
        }

        public void Leave() => leave();

        public void Write(ReadOnlySpan<byte> bytes)
        {
        }

        public int Read(byte[] buffer) => 0;

        public void AskJobToStop()
        {
        }

        public void StopProcess()
        {
        }
    }
}
