using System.Diagnostics;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;

namespace FixPlanner.Files.Writing;

/// <summary>Who holds a logbook open: a process of a machine, told from a later one with the same number by its start.</summary>
/// <param name="Process">Its number.</param>
/// <param name="Started">When it started, in ticks.</param>
/// <param name="Machine">On which machine.</param>
internal sealed record LockHolder(int Process, long Started, string Machine)
{
    public static LockHolder Me { get; } = new(Environment.ProcessId, StartOf(System.Diagnostics.Process.GetCurrentProcess()), Environment.MachineName);

    /// <summary>Whether the holder still runs; of another machine that cannot be known, so it counts as running.</summary>
    public bool Runs()
    {
        if (Machine != Environment.MachineName)
        {
            return true;
        }

        try
        {
            using var process = System.Diagnostics.Process.GetProcessById(Process);
            return StartOf(process) == Started;
        }
        catch (ArgumentException)
        {
            return false;
        }
        catch (Exception failure) when (failure is InvalidOperationException or System.ComponentModel.Win32Exception)
        {
            // It runs, but the system does not say since when.
            return true;
        }
    }

    public override string ToString() => $"{Process} {Started} {Machine}\n";

    public static LockHolder? Parse(string text) => text.Trim().Split(' ', 3) is [string process, string started, string machine]
        && int.TryParse(process, out int number) && long.TryParse(started, out long ticks)
        ? new LockHolder(number, ticks, machine)
        : null;

    // Whole seconds: the same start read twice differs by parts of one on some systems.
    private static long StartOf(Process process) => process.StartTime.ToUniversalTime().Ticks / TimeSpan.TicksPerSecond;
}

/// <summary>Keeps a second wizard away from a logbook. A lock left behind by a process that is gone is taken over.</summary>
internal sealed class LogbookLock
{
    private const int MostBytes = 1000;
    private readonly string file;
    private readonly LockHolder holder;
    private readonly IFileCalls calls;

    private LogbookLock(string file, LockHolder holder, IFileCalls calls)
    {
        this.file = file;
        this.holder = holder;
        this.calls = calls;
    }

    public static string NameFor(string logbook) => logbook + ".lock";

    /// <summary>Takes the lock of a logbook; null, with the reason, when another holds it or none can be written.</summary>
    public static LogbookLock? Take(string logbook, LockHolder me, Func<LockHolder, bool> runs, IFileCalls calls, ProblemList problems)
    {
        string file = NameFor(logbook);
        try
        {
            if (calls.IsFile(file))
            {
                string? text = TextFile.Read(file, calls, new ProblemList(), MostBytes);
                LockHolder? other = text is null ? null : LockHolder.Parse(text);
                if (other is not null && runs(other))
                {
                    problems.Add(Messages.OpenElsewhere(logbook, file, other));
                    return null;
                }

                calls.Delete(file);
            }

            calls.WriteNew(file, TextFile.Encode(me.ToString()), like: null);
            return new LogbookLock(file, me, calls);
        }
        catch (Exception failure) when (FileFailure.IsOne(failure))
        {
            problems.Add(Messages.Unwritable(logbook, failure));
            return null;
        }
    }

    /// <summary>Whether the lock is still ours: it may have been taken over by hand, or by another start in the same moment.</summary>
    public bool IsOurs() => TextFile.Read(file, calls, new ProblemList(), MostBytes) == holder.ToString();

    public void Release()
    {
        try
        {
            if (IsOurs())
            {
                calls.Delete(file);
            }
        }
        catch (Exception failure) when (FileFailure.IsOne(failure))
        {
            // A lock that stays behind names a process that is gone by then, so the next start takes it over.
            return;
        }
    }
}
