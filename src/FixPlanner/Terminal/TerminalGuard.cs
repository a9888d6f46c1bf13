using System.Runtime.InteropServices;
using System.Runtime.Versioning;

namespace FixPlanner.Terminal;

/// <summary>What a signal asks the loop to do.</summary>
internal enum Demand
{
    /// <summary>End, with the guard's exit code.</summary>
    End,

    /// <summary>Give the terminal back and stop until continued.</summary>
    Stop,

    /// <summary>The process runs again after a stop: take the terminal and draw everything.</summary>
    Resume,

    /// <summary>The window may have another size.</summary>
    Resize,
}

/// <summary>Sees to it that the terminal comes back as it was, however the wizard ends.</summary>
/// <remarks>
/// The runtime does not do this: a signal ends a .NET program at once, with the terminal as it stands. Signals are turned
/// into demands on the loop, which ends in good order; if the loop does not answer, the guard restores the terminal and
/// exits by itself. Nothing can be done about a kill that cannot be caught, which is why every answer is on disk first.
/// </remarks>
internal sealed class TerminalGuard : IDisposable
{
    /// <summary>Our own fault.</summary>
    public const int OwnFault = 70;

    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(1.5);

    private readonly ITerminal terminal;
    private readonly Action save;
    private readonly PosixSignalRegistration[] signals;
    private readonly ManualResetEventSlim loopEnded = new();
    private readonly AutoResetEvent continued = new(false);
    private readonly AutoResetEvent jobAsked = new(false);
    private volatile Action<Demand>? listener;
    private volatile bool askingJob;
    private int exitCode;

    /// <param name="terminal">The terminal to give back.</param>
    /// <param name="save">Writes out what is not on disk yet; called on another thread, so it must only flush.</param>
    public TerminalGuard(ITerminal terminal, Action save)
    {
        (this.terminal, this.save) = (terminal, save);
        AppDomain.CurrentDomain.UnhandledException += OnUnhandled;
        AppDomain.CurrentDomain.ProcessExit += OnProcessExit;
        signals = [.. Ending(), .. OperatingSystem.IsWindows() ? [] : Job()];
    }

    /// <summary>0, or 128 + n when signal n asked for the end, or 70.</summary>
    public int ExitCode => Volatile.Read(ref exitCode);

    /// <summary>From now on a loop obeys; before that, a signal ends the program at once.</summary>
    public void Listen(Action<Demand> demand) => listener = demand;

    /// <summary>The terminal has gone away without a signal: as if it had sent the hang-up itself.</summary>
    public void HungUp() => AskForEnd(128 + 1);

    /// <summary>Stops the process, with the terminal given back; returns when the process runs again.</summary>
    /// <param name="wholeJob">True when the person asked from the keyboard: the programs that started this one stop as well.</param>
    public void Stop(bool wholeJob)
    {
        terminal.Leave();
        if (wholeJob)
        {
            // The request comes to this process too, and must not make it stop a second time when it continues.
            askingJob = true;
            terminal.AskJobToStop();
            jobAsked.WaitOne(TimeSpan.FromMilliseconds(300));
            askingJob = false;
        }
        continued.Reset();
        terminal.StopProcess();
        // The stop may take hold a moment after the call returns; only the continue signal says that it is over.
        continued.WaitOne(Patience);
    }

    public void Dispose()
    {
        terminal.Leave();
        loopEnded.Set();
        foreach (PosixSignalRegistration signal in signals)
        {
            signal.Dispose();
        }
        AppDomain.CurrentDomain.UnhandledException -= OnUnhandled;
        AppDomain.CurrentDomain.ProcessExit -= OnProcessExit;
        continued.Dispose();
    }

    private IEnumerable<PosixSignalRegistration> Ending() =>
    [
        On(PosixSignal.SIGHUP, () => AskForEnd(128 + 1)),
        On(PosixSignal.SIGINT, () => AskForEnd(128 + 2)),
        On(PosixSignal.SIGQUIT, () => AskForEnd(128 + 3)),
        On(PosixSignal.SIGTERM, () => AskForEnd(128 + 15)),
    ];

    // Windows has no such signals.
    [UnsupportedOSPlatform("windows")]
    private IEnumerable<PosixSignalRegistration> Job() =>
    [
        On(PosixSignal.SIGTSTP, AskForStop),
        On(PosixSignal.SIGCONT, () =>
        {
            continued.Set();
            listener?.Invoke(Demand.Resume);
        }),
        On(PosixSignal.SIGWINCH, () => listener?.Invoke(Demand.Resize)),
    ];

    private static PosixSignalRegistration On(PosixSignal signal, Action act) => PosixSignalRegistration.Create(signal, context =>
    {
        context.Cancel = true;
        act();
    });

    private void AskForStop()
    {
        if (askingJob)
        {
            jobAsked.Set();
        }
        else
        {
            listener?.Invoke(Demand.Stop);
        }
    }

    private void AskForEnd(int code)
    {
        if (Interlocked.CompareExchange(ref exitCode, code, 0) != 0)
        {
            return;
        }
        Thread last = new(() => EndWithoutLoop(code)) { IsBackground = true, Name = "last resort" };
        last.Start();
        listener?.Invoke(Demand.End);
    }

    private void EndWithoutLoop(int code)
    {
        save();
        if (listener is null || !loopEnded.Wait(Patience))
        {
            terminal.LeaveForGood();
            Environment.Exit(code);
        }
    }

    private void OnUnhandled(object sender, UnhandledExceptionEventArgs e)
    {
        Interlocked.CompareExchange(ref exitCode, OwnFault, 0);
        terminal.Leave();
        FaultNotice.Print(e.ExceptionObject);
        Environment.Exit(OwnFault);
    }

    private void OnProcessExit(object? sender, EventArgs e) => terminal.LeaveForGood();
}
