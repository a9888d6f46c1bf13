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
    private static readonly TimeSpan DrawsAfter = TimeSpan.FromMilliseconds(250);

    private readonly Lock access = new();
    private TaskCompletionSource questionsAwaited = new();
    private (Assessment Quick, Task Awaited, CancellationToken Stop)? waiting;
    private bool working;
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

    private void Begin(Assessment quick)
    {
        Stop();
        if (tell is { } loop)
        {
            CancellationTokenSource stop = new();
            giveUp = stop.Cancel;
            lock (access)
            {
                waiting = (quick, questionsAwaited.Task, stop.Token);
                if (working)
                {
                    return;
                }

                working = true;
            }

            _ = Task.Run(() => WorkOff(loop), CancellationToken.None);
        }
    }

    // What is given up may take a moment to notice it: one thing at a time, the newest next, so that the keys keep a core of their own.
    private void WorkOff(Action<Message> loop)
    {
        while (true)
        {
            (Assessment Quick, Task Awaited, CancellationToken Stop) next;
            lock (access)
            {
                if (waiting is not { } wanted)
                {
                    working = false;
                    return;
                }

                (next, waiting) = (wanted, null);
            }

            Work(next.Quick, loop, next.Awaited, next.Stop);
        }
    }

    private void Work(Assessment quick, Action<Message> loop, Task awaited, CancellationToken stop)
    {
        try
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
        catch (Exception fault)
        {
            // A fault on a thread of its own would end the program without giving the terminal back: the loop throws it.
            loop(new ForesightFailed(ExceptionDispatchInfo.Capture(fault)));
        }
    }
}
