using System.Collections.Concurrent;
using System.Drawing;
using Terminal.Gui.App;

namespace FixPlanner.Terminal;

/// <summary>Runs the wizard's window: waits for something to happen, lets the window take it, draws, sends what changed.</summary>
/// <remarks>
/// The library's own loop polls keys every 20 ms, sends bytes for ever when idle, ends on escape sequences it does not
/// know and cannot be left after a hang-up. This one sleeps until there is something to do.
/// </remarks>
internal sealed class EventLoop : IStageHand
{
    // A terminal sends the bytes of one key together; a person cannot type the next key so soon after Esc.
    private static readonly TimeSpan EscapeWait = TimeSpan.FromMilliseconds(50);
    private static readonly TimeSpan SequenceWait = TimeSpan.FromSeconds(1);
    private static readonly TimeSpan Forever = TimeSpan.FromMilliseconds(-1);

    private readonly BlockingCollection<Event> events = [];
    private readonly ITerminal terminal;
    private readonly IStage stage;
    private readonly IApplication app;
    private readonly KeyDecoder decoder = new();
    private readonly Painter painter;
    private readonly Timings timings;
    private readonly TerminalGuard guard;
    private long? read;
    private long? taken;

    public EventLoop(ITerminal terminal, TerminalGuard guard, IStage stage, IApplication app, bool ascii, Timings timings)
    {
        (this.terminal, this.guard, this.stage, this.app, this.timings) = (terminal, guard, stage, app, timings);
        painter = new Painter(ascii);
        guard.Listen(demand => events.TryAdd(new Event(Demand: demand)));
    }

    public void Post(Action action) => events.TryAdd(new Event(Action: action));

    public void Suspend() => Post(() => Stop(wholeJob: true));

    /// <summary>Runs until the stage is over or a signal asks for the end.</summary>
    public void Run()
    {
        terminal.Enter();
        FitToWindow();
        SessionToken session = app.Begin(stage.Window) ?? throw new InvalidOperationException("The window refused to open.");
        stage.Attach(this);
        new Thread(ReadKeys) { IsBackground = true, Name = "keys" }.Start();
        Draw();
        while (!stage.Over && guard.ExitCode == 0)
        {
            Turn();
        }
        app.End(session);
    }

    private void Turn()
    {
        TimeSpan wait = decoder.EscapeWaits ? EscapeWait : decoder.Unfinished ? SequenceWait : Forever;
        (read, taken) = (null, null);
        if (!events.TryTake(out Event happened, wait))
        {
            Deliver(decoder.Settle());
        }
        else
        {
            do
            {
                Take(happened);
            }
            while (!stage.Over && guard.ExitCode == 0 && events.TryTake(out happened));
        }
        app.TimedEvents?.RunTimers();
        if (!stage.Over && guard.ExitCode == 0)
        {
            Draw();
        }
    }

    private void Take(Event happened)
    {
        happened.Action?.Invoke();
        if (happened.Bytes is { } bytes)
        {
            read ??= happened.Read;
            taken ??= Timings.Now;
            Deliver(decoder.Take(bytes));
        }
        switch (happened.Demand)
        {
            case Demand.Stop: Stop(wholeJob: false); break;
            case Demand.Resume: Resume(); break;
            case Demand.Resize: FitToWindow(); break;
            default: break;
        }
    }

    private void Deliver(IReadOnlyList<Typed> typed)
    {
        foreach (Typed one in typed)
        {
            if (one.Key is not null)
            {
                app.Keyboard.RaiseKeyDownEvent(one.Key);
            }
            else if (one.Paste is { } text)
            {
                stage.Paste(text);
            }
        }
    }

    private void Stop(bool wholeJob)
    {
        guard.Stop(wholeJob);
        Resume();
    }

    private void Resume()
    {
        // The shell may have changed the terminal's mode while it had it: leaving and entering sets all of it again.
        terminal.Leave();
        terminal.Enter();
        painter.Forget();
        FitToWindow();
    }

    private void FitToWindow()
    {
        (int width, int height) = terminal.Size;
        if (app.Driver!.Screen.Size != new Size(width, height))
        {
            app.Driver.SetScreenSize(width, height);
        }
    }

    private void Draw()
    {
        app.LayoutAndDraw();
        byte[] bytes = painter.Paint(app.Driver!.Contents!, stage.CursorAt);
        if (bytes.Length == 0)
        {
            return;
        }
        try
        {
            terminal.Write(bytes);
            timings.FrameSent(read, taken);
        }
        catch (IOException)
        {
            guard.HungUp();
        }
    }

    private void ReadKeys()
    {
        byte[] buffer = new byte[1024];
        while (true)
        {
            int count = terminal.Read(buffer);
            if (count == 0)
            {
                guard.HungUp();
                return;
            }
            events.Add(new Event(Bytes: buffer[..count], Read: Timings.Now));
        }
    }

    private readonly record struct Event(byte[]? Bytes = null, long? Read = null, Demand? Demand = null, Action? Action = null);
}
