using FixPlanner.Files.Problems;
using FixPlanner.Files.Writing;
using FixPlanner.Tests.Files.Texts;

namespace FixPlanner.Tests.Files.Writing;

/// <summary>
/// One session with a logbook, ended at every call that it makes on the disk: by a kill before, in the middle of and
/// after the call, with and without a power cut, and by failures of the disk. Whatever was called kept is there at the
/// next start, the file is one of the states of the session and never a part of one, and at most the answer in hand
/// at the kill is there in addition.
/// </summary>
public class LogbookKillTests
{
    private const string Name = "car.logbook.yaml";
    private const string Old = "logbook: 1  # mine\ncar: {width: 1.62 m}\n";
    private const int MoreCallsThanASession = 150;

    private static readonly LockHolder Me = new(1, 1, "garage");

    // Each step and the text of the file after it.
    private static readonly (Func<LogbookFile, ProblemList, bool> Do, string Text)[] Session = WithTexts(
        (logbook, problems) => logbook.Apply("width: 1.6 m", [new(YamlPath.Parse("car.width")!, YamlValue.Of("1.6 m"))], problems),
        (logbook, problems) => logbook.Apply("cowl: no", [new(YamlPath.Parse("rounds[id=before].findings[observation=cowl].answer")!, YamlValue.Of("no"))], problems),
        (logbook, problems) => logbook.Undo(problems),
        (logbook, problems) => logbook.Redo(problems),
        (logbook, problems) => logbook.Apply("cowl: yes", [new(YamlPath.Parse("rounds[id=before].findings[observation=cowl].answer")!, YamlValue.Of("yes"))], problems));

    [Theory]
    [InlineData(KilledWhen.Before, false)]
    [InlineData(KilledWhen.Halfway, false)]
    [InlineData(KilledWhen.After, false)]
    [InlineData(KilledWhen.Before, true)]
    [InlineData(KilledWhen.Halfway, true)]
    [InlineData(KilledWhen.After, true)]
    public void Session_KilledAtAnyCall_LosesNothingKept(KilledWhen when, bool powerCut)
    {
        int killAt = 0;
        bool killed = true;
        while (killed)
        {
            killAt++;
            var disk = new MemoryFiles { KillAt = killAt, KilledWhen = when, [Name] = Old };
            (int kept, killed) = Run(disk, Session.Length);

            AssertNothingLost(disk.Restart(powerCut), kept, $"killed at call {killAt}");
        }

        Assert.InRange(killAt, 30, MoreCallsThanASession);
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Recovery_KilledAtAnyCallAsWell_LosesNothingKept(bool powerCut)
    {
        for (int killAt = 1; killAt < 60; killAt++)
        {
            var disk = new MemoryFiles { KillAt = killAt, KilledWhen = KilledWhen.Halfway, [Name] = Old };
            int kept = Run(disk, Session.Length).Kept;
            bool killed = true;
            for (int again = 1; killed; again++)
            {
                MemoryFiles next = disk.Restart(powerCut, again, KilledWhen.Halfway);
                killed = Run(next, 0).Killed;
                AssertNothingLost(next.Restart(powerCut), kept, $"killed at call {killAt}, then at {again}");
            }
        }
    }

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    [InlineData(true, true)]
    public void Session_AnyCallFails_LosesNothingKept(bool powerCut, bool halfway)
    {
        for (int failAt = 1; failAt < MoreCallsThanASession; failAt++)
        {
            foreach (int forHowLong in new[] { 1, 3, MoreCallsThanASession })
            {
                var disk = new MemoryFiles { Failure = call => call >= failAt && call < failAt + forHowLong ? new IOException("full", 28) : null, FailsHalfway = halfway, [Name] = Old };
                string? last = RunOn(disk);

                MemoryFiles next = disk.Restart(powerCut);
                using LogbookFile? logbook = Open(next, new ProblemList());

                // What a person saw as kept last is what the next start shows.
                Assert.NotNull(logbook);
                Assert.False(logbook.Recovery.NeedsChoice, $"failed from call {failAt} for {forHowLong}: {logbook.Recovery}");
                Assert.True(last is null || logbook.Text == last, $"failed from call {failAt} for {forHowLong}\nwas kept:\n{last}\nfound:\n{logbook.Text}");
                Assert.Equal(logbook.Text, next[Name]);
            }
        }
    }

    private static (Func<LogbookFile, ProblemList, bool> Do, string Text)[] WithTexts(params Func<LogbookFile, ProblemList, bool>[] steps)
    {
        var disk = new MemoryFiles { [Name] = Old };
        using LogbookFile logbook = Open(disk, new ProblemList())!;
        return [.. steps.Select(step => (step, step(logbook, new ProblemList()) ? disk[Name]! : throw new InvalidOperationException("a step was refused")))];
    }

    private static LogbookFile? Open(MemoryFiles disk, ProblemList problems) =>
        LogbookFile.Open(Name, "logbook: 1\n", TimeProvider.System, disk, Me, _ => false, problems);

    /// <summary>Opens the logbook and takes steps until killed; says how many were called kept.</summary>
    private static (int Kept, bool Killed) Run(MemoryFiles disk, int steps)
    {
        int kept = 0;
        try
        {
            LogbookFile logbook = Open(disk, new ProblemList())!;
            foreach ((Func<LogbookFile, ProblemList, bool> step, _) in Session.Take(steps))
            {
                Assert.True(step(logbook, new ProblemList()));
                kept++;
            }

            logbook.Dispose();
            return (kept, false);
        }
        catch (KilledException)
        {
            return (kept, true);
        }
    }

    /// <summary>Takes every step although some fail; says what the text was after the last that was called kept, if that was the last taken.</summary>
    private static string? RunOn(MemoryFiles disk)
    {
        var problems = new ProblemList();
        if (Open(disk, problems) is not LogbookFile logbook)
        {
            return null;
        }

        bool lastWasKept = true;
        foreach ((Func<LogbookFile, ProblemList, bool> step, _) in Session)
        {
            lastWasKept = step(logbook, problems);
        }

        // Without Dispose: the program ends here, its lock stays.
        return lastWasKept ? logbook.Text : null;
    }

    private static void AssertNothingLost(MemoryFiles disk, int kept, string where)
    {
        string[] states = [Old, .. Session.Select(step => step.Text)];
        Assert.Contains(disk[Name], states);
        using LogbookFile? logbook = Open(disk, new ProblemList());

        Assert.True(logbook is not null, where);
        Assert.False(logbook.Recovery.NeedsChoice, $"{where}: {logbook.Recovery}");
        Assert.True(
            logbook.Text == states[kept] || (kept < Session.Length && logbook.Text == states[kept + 1]),
            $"{where}: {kept} steps were kept, but found\n{logbook.Text}");
        Assert.Equal(logbook.Text, disk[Name]);
    }
}
