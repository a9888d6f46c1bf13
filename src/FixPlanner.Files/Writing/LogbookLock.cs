using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;

namespace FixPlanner.Files.Writing;

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
