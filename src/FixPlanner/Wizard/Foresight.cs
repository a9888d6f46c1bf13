using System.Runtime.ExceptionServices;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard;

/// <summary>More of what follows from the logbook is finished.</summary>
internal sealed record Foreseen(Assessment Assessment) : Message;

/// <summary>The work beside the keys met a fault of ours.</summary>
internal sealed record ForesightFailed(ExceptionDispatchInfo Fault) : Message;

/// <summary>
/// What follows from the logbook: gates, beliefs and the best set at once, on the way of the key; what each question is worth and all
/// draws beside it, told as messages when they are finished. No key ever waits for them.
/// </summary>
/// <remarks>Until a loop is attached there is nowhere to tell results: then what is needed is worked out at once.</remarks>
internal sealed class Foresight(Assessor assessor, DateOnly today)
{
    /// <summary>After this the best question found so far is told, and its proof follows later.</summary>
    private static readonly TimeSpan QuestionsWithin = TimeSpan.FromMilliseconds(100);

    /// <summary>Questions that nobody waits for begin when the keys have rested for so long: a key held down repeats itself faster.</summary>
    private static readonly TimeSpan QuestionsAfter = TimeSpan.FromMilliseconds(40);

    /// <summary>The draws begin when the keys have rested for so long: they would take from the next answer what nobody has time to read.</summary>
    private static readonly TimeSpan DrawsAfter = TimeSpan.FromMilliseconds(60);

    private readonly NewestOnly plans = new();
    private readonly NewestOnly others = new();
    private TaskCompletionSource questionsAwaited = new();
    private Action<Message>? tell;
    private Action giveUp = () => { };
    private Assessment? known;

    /// <summary>Gives results to a loop from now on.</summary>
    /// <param name="loop">Takes a message to the loop's thread; may be called from any thread.</param>
    public void Attach(Action<Message> loop)
    {
        tell = loop;
        if (known is { Plan.Depth: < PlanDepth.Full })
        {
            Begin(known);
        }
    }

    /// <summary>What is finished for a logbook; never less than gates, beliefs and the best set.</summary>
    /// <param name="logbook">The logbook.</param>
    /// <param name="wanted">What the caller would like to show; with a loop attached it may come later, as a message.</param>
    public Assessment Of(Logbook logbook, PlanDepth wanted = PlanDepth.Quick)
    {
        bool sameLogbook = ReferenceEquals(known?.Situation.Logbook, logbook);
        if (!sameLogbook || (tell is null && known!.Plan.Depth < wanted))
        {
            known = assessor.Assess(logbook, today, tell is null ? wanted : PlanDepth.Quick);
            questionsAwaited = new();
            Begin(known);
        }

        if (wanted >= PlanDepth.WithQuestions)
        {
            questionsAwaited.TrySetResult();
        }

        return known!;
    }

    /// <summary>Takes a result.</summary>
    /// <returns>False when it is of a logbook that has changed since: it is dropped.</returns>
    public bool Take(Foreseen result)
    {
        bool current = ReferenceEquals(known?.Situation.Logbook, result.Assessment.Situation.Logbook);
        known = current ? result.Assessment : known;
        return current;
    }

    /// <summary>Gives up what is still being worked out.</summary>
    public void Stop() => giveUp();

    /// <summary>Works something else out beside the keys and tells it; only the newest of what was asked for.</summary>
    /// <returns>False when there is no loop to tell it to.</returns>
    public bool Beside(Func<Message> work)
    {
        if (tell is not { } loop)
        {
            return false;
        }

        others.Do(() => Guarded(loop, () => loop(work())));
        return true;
    }

    // A fault on a thread of its own would end the program without giving the terminal back: the loop throws it.
    private static void Guarded(Action<Message> loop, Action work)
    {
        try
        {
            work();
        }
        catch (Exception fault)
        {
            loop(new ForesightFailed(ExceptionDispatchInfo.Capture(fault)));
        }
    }

    private void Begin(Assessment quick)
    {
        Stop();
        if (tell is { } loop)
        {
            CancellationTokenSource stop = new();
            giveUp = stop.Cancel;
            Task awaited = questionsAwaited.Task;
            plans.Do(() => Guarded(loop, () => Work(quick, loop, awaited, stop.Token)));
        }
    }

    private void Work(Assessment quick, Action<Message> loop, Task awaited, CancellationToken stop)
    {
        Task.WhenAny(awaited, Task.Delay(QuestionsAfter, stop)).Wait(CancellationToken.None);
        if (stop.IsCancellationRequested)
        {
            return;
        }

        using CancellationTokenSource hurry = CancellationTokenSource.CreateLinkedTokenSource(stop);
        hurry.CancelAfter(QuestionsWithin);
        foreach (Assessment step in assessor.InSteps(quick, hurry.Token, stop))
        {
            loop(new Foreseen(step));
            if (step.Plan is { DrawsFinished: 0, QuestionsProven: true } && stop.WaitHandle.WaitOne(DrawsAfter))
            {
                return;
            }
        }
    }
}
