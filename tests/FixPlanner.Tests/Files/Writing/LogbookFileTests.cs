using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;
using FixPlanner.Files.Writing;
using FixPlanner.Tests.Files.Texts;

namespace FixPlanner.Tests.Files.Writing;

public class LogbookFileTests
{
    private const string Name = "car.logbook.yaml";
    private const string Start = "logbook: 1\n";
    private const string Old = "logbook: 1  # mine\ncar: {width: 1.62 m}\n";

    private static readonly LockHolder Me = new(1, 1, "garage");
    private static readonly LockHolder Other = new(2, 1, "garage");

    private readonly ProblemList problems = new();

    private string[] Codes => [.. problems.InOrder().Select(problem => problem.Code)];

    private LogbookFile Open(MemoryFiles disk) => OpenOrNot(disk) ?? throw new InvalidOperationException(string.Join('\n', problems.InOrder()));

    private LogbookFile? OpenOrNot(MemoryFiles disk, bool otherRuns = false) =>
        LogbookFile.Open(Name, Start, TimeProvider.System, disk, Me, _ => otherRuns, problems);

    private bool Answer(LogbookFile logbook, string observation, string answer) => logbook.Apply(
        $"{observation}: {answer}",
        [new YamlEdit(YamlPath.Parse($"rounds[id=before].findings[observation={observation}].answer")!, YamlValue.Of(answer))],
        problems);

    private bool Width(LogbookFile logbook, string width) =>
        logbook.Apply($"width: {width}", [new YamlEdit(YamlPath.Parse("car.width")!, YamlValue.Of(width))], problems);

    [Fact]
    public void Apply_Answer_IsOnDiskInOneLineWithTheRestUntouched()
    {
        var disk = new MemoryFiles { [Name] = Old };
        using LogbookFile logbook = Open(disk);

        Assert.True(Width(logbook, "1.6 m"));

        Assert.Equal("logbook: 1  # mine\ncar: {width: 1.6 m}\n", disk[Name]);
        Assert.Equal(disk[Name], logbook.Text);
        Assert.True(problems.IsEmpty);
    }

    [Fact]
    public void Apply_NewFile_IsMadeWithTheFirstAnswer()
    {
        var disk = new MemoryFiles();
        using LogbookFile logbook = Open(disk);
        Assert.Null(disk[Name]);

        Assert.True(Width(logbook, "1.6 m"));

        Assert.Equal("logbook: 1\ncar:\n  width: 1.6 m\n", disk[Name]);
    }

    [Fact]
    public void Apply_SeveralEditsOneUnfit_ChangesNothing()
    {
        var disk = new MemoryFiles { [Name] = Old };
        using LogbookFile logbook = Open(disk);

        Assert.False(logbook.Apply("both", [new(YamlPath.Parse("a")!, YamlValue.Of("x")), new(YamlPath.Parse("logbook.b")!, YamlValue.Of("x"))], problems));

        Assert.Equal(Old, disk[Name]);
        Assert.Equal(["FP1104"], Codes);
    }

    [Fact]
    public void Undo_AcrossRestarts_RestoresEveryByteAndRedoBringsItBack()
    {
        var disk = new MemoryFiles { [Name] = Old };
        var texts = new List<string> { Old };
        using (LogbookFile logbook = Open(disk))
        {
            foreach (string answer in new[] { "no", "yes: a bit", "not sure" })
            {
                Assert.True(Answer(logbook, "cowl", answer));
                texts.Add(disk[Name]!);
            }
        }

        for (int i = 2; i >= 0; i--)
        {
            using LogbookFile logbook = Open(disk);
            Assert.StartsWith("cowl: ", logbook.NextUndo);
            Assert.True(logbook.Undo(problems));
            Assert.Equal(texts[i], disk[Name]);
        }

        using (LogbookFile logbook = Open(disk))
        {
            Assert.Null(logbook.NextUndo);
            Assert.False(logbook.Undo(problems));
            Assert.True(logbook.Redo(problems));
            Assert.True(logbook.Redo(problems));
            Assert.Equal(texts[2], disk[Name]);
            Assert.True(Answer(logbook, "cowl", "other"));
            Assert.Null(logbook.NextRedo);
            Assert.False(logbook.Redo(problems));
        }

        Assert.Equal(["FP1109", "FP1109"], Codes);
    }

    [Fact]
    public void Undo_AfterAnEditElsewhere_TakesBackOnlyTheAnswer()
    {
        var disk = new MemoryFiles { [Name] = Old };
        using LogbookFile logbook = Open(disk);
        Assert.True(Answer(logbook, "cowl", "no"));
        disk[Name] = "# typed by hand\n" + disk[Name]!.Replace("1.62", "1.70");

        Assert.True(logbook.Undo(problems));

        Assert.Equal("# typed by hand\n" + Old.Replace("1.62", "1.70"), disk[Name]);
    }

    [Fact]
    public void Undo_ValueChangedSince_IsRefused()
    {
        var disk = new MemoryFiles { [Name] = Old };
        using LogbookFile logbook = Open(disk);
        Assert.True(Width(logbook, "1.6 m"));
        disk[Name] = disk[Name]!.Replace("1.6 m", "1.7 m");

        Assert.False(logbook.Undo(problems));

        Assert.Contains("1.7 m", disk[Name]);
        Assert.Contains("FP1110", Codes);
    }

    [Fact]
    public void Apply_EditedElsewhereMeanwhile_MergesAndSaysSo()
    {
        var disk = new MemoryFiles { [Name] = Old };
        using LogbookFile logbook = Open(disk);
        disk[Name] = Old + "aims: {quiet: 3}  # typed\n";

        Assert.True(Answer(logbook, "cowl", "no"));

        Assert.StartsWith(Old + "aims: {quiet: 3}  # typed\nrounds:", disk[Name]);
        Assert.Equal(["FP1111"], Codes);
    }

    [Fact]
    public void Apply_BrokenElsewhereMeanwhile_IsRefusedAndNothingWrittenOver()
    {
        var disk = new MemoryFiles { [Name] = Old };
        using LogbookFile logbook = Open(disk);
        disk[Name] = "logbook: [1\n";

        Assert.False(Answer(logbook, "cowl", "no"));

        Assert.Equal("logbook: [1\n", disk[Name]);
        Assert.Contains("FP1035", Codes);
        Assert.Contains("FP1112", Codes);

        disk[Name] = Old;
        Assert.True(Answer(logbook, "cowl", "no"));
    }

    [Fact]
    public void Apply_FileTakenAwayMeanwhile_WritesItAgain()
    {
        var disk = new MemoryFiles { [Name] = Old };
        using LogbookFile logbook = Open(disk);
        disk.Delete(Name);

        Assert.True(Width(logbook, "1.6 m"));

        Assert.Equal(Old.Replace("1.62", "1.6"), disk[Name]);
        Assert.Equal(["FP1113"], Codes);
    }

    [Fact]
    public void Apply_LogbookCannotBeWritten_KeepsTheAnswerAndPutsItInLater()
    {
        bool full = false;
        var disk = new MemoryFiles { FailureOf = (call, path) => full && call == nameof(IFileCalls.WriteNew) ? new IOException("full", 28) : null, [Name] = Old };
        using LogbookFile logbook = Open(disk);
        full = true;

        Assert.True(Width(logbook, "1.6 m"));
        Assert.Equal(Old, disk[Name]);
        Assert.Equal(["FP1114"], Codes);

        // A kill here: the next start finds it in the journal.
        MemoryFiles next = disk.Restart(powerCut: true);
        using (LogbookFile recovered = Open(next))
        {
            Assert.Equal(RecoveryKind.PutIn, recovered.Recovery.Kind);
            Assert.Contains("width: 1.6 m (", recovered.Recovery.Sentence);
            Assert.Equal(Old.Replace("1.62", "1.6"), next[Name]);
        }

        // No kill, but an edit elsewhere and room again: all three are in the file.
        full = false;
        disk[Name] = Old + "aims: {quiet: 3}\n";
        Assert.True(Answer(logbook, "cowl", "no"));
        Assert.Contains("1.6 m", disk[Name]);
        Assert.Contains("aims", disk[Name]);
        Assert.Contains("cowl", disk[Name]);
    }

    [Fact]
    public void Apply_JournalCannotBeWritten_IsNotCalledKept()
    {
        var disk = new MemoryFiles { FailureOf = (call, _) => call == nameof(IFileCalls.Append) ? new UnauthorizedAccessException("no") : null, [Name] = Old };
        using LogbookFile logbook = Open(disk);

        Assert.False(Width(logbook, "1.6 m"));

        Assert.Equal(Old, disk[Name]);
        Assert.Equal(["FP1101"], Codes);
        Assert.Null(logbook.NextUndo);
    }

    [Fact]
    public void Open_BothMovedOn_AsksAndWritesNothingUntilAnswered()
    {
        MemoryFiles disk = KilledBeforeTheFileWasWritten();
        disk[Name] = Old.Replace("1.62", "1.70");

        using LogbookFile logbook = Open(disk);

        Assert.Equal(RecoveryKind.BothMovedOn, logbook.Recovery.Kind);
        Assert.Contains("one confirmed answer is only in its journal", logbook.Recovery.Sentence);
        Assert.Contains("the logbook says \"1.70 m\" now", Assert.Single(logbook.Recovery.Waiting));
        Assert.False(Answer(logbook, "cowl", "no"));
        Assert.False(logbook.Undo(problems));
        Assert.Equal(["FP1108"], Codes);
        Assert.Contains("1.70", disk[Name]);

        Assert.True(logbook.TakeWaiting(problems));
        Assert.Equal(Old.Replace("1.62", "1.6"), disk[Name]);
        Assert.False(logbook.Recovery.NeedsChoice);
        Assert.True(Answer(logbook, "cowl", "no"));
        logbook.Dispose();
        Assert.Equal(RecoveryKind.Nothing, Open(disk).Recovery.Kind);
    }

    [Fact]
    public void LeaveWaiting_BothMovedOn_KeepsTheFileForGood()
    {
        MemoryFiles disk = KilledBeforeTheFileWasWritten();
        disk[Name] = Old.Replace("1.62", "1.70");
        using (LogbookFile logbook = Open(disk))
        {
            Assert.True(logbook.LeaveWaiting(problems));
            Assert.Null(logbook.NextUndo);
        }

        using LogbookFile again = Open(disk);
        Assert.Equal(RecoveryKind.Nothing, again.Recovery.Kind);
        Assert.Contains("1.70", disk[Name]);
    }

    [Fact]
    public void Open_EditedElsewhereButNothingLacking_OnlySaysSo()
    {
        var disk = new MemoryFiles { [Name] = Old };
        using (LogbookFile logbook = Open(disk))
        {
            Assert.True(Width(logbook, "1.6 m"));
        }

        disk[Name] += "aims: {quiet: 3}\n";
        using LogbookFile again = Open(disk);

        Assert.Equal(RecoveryKind.ChangedOutside, again.Recovery.Kind);
        Assert.Equal("width: 1.6 m", again.NextUndo);
        Assert.True(again.Undo(problems));
        Assert.Equal(Old + "aims: {quiet: 3}\n", disk[Name]);
    }

    [Fact]
    public void Open_OlderFilePutBack_Asks()
    {
        var disk = new MemoryFiles { [Name] = Old };
        using (LogbookFile logbook = Open(disk))
        {
            Assert.True(Width(logbook, "1.6 m"));
            Assert.True(Answer(logbook, "cowl", "no"));
        }

        string newest = disk[Name]!;
        disk[Name] = Old;
        using LogbookFile again = Open(disk);

        Assert.Equal((RecoveryKind.OlderFile, 2), (again.Recovery.Kind, again.Recovery.Waiting.Count));
        Assert.Equal(Old, disk[Name]);
        Assert.True(again.TakeWaiting(problems));
        Assert.Equal(newest, disk[Name]);
    }

    [Fact]
    public void Open_LogbookGone_AsksAndCanBringTheAnswersBack()
    {
        var disk = new MemoryFiles { [Name] = Old };
        using (LogbookFile logbook = Open(disk))
        {
            Assert.True(Width(logbook, "1.6 m"));
        }

        disk.Delete(Name);
        using LogbookFile again = Open(disk);

        Assert.Equal(RecoveryKind.OlderFile, again.Recovery.Kind);
        Assert.True(again.TakeWaiting(problems));
        Assert.Equal("logbook: 1\ncar:\n  width: 1.6 m\n", disk[Name]);
    }

    [Fact]
    public void Open_HeldByARunningProcess_IsRefused()
    {
        var disk = new MemoryFiles { [Name] = Old, [Name + ".lock"] = Other.ToString() };

        Assert.Null(OpenOrNot(disk, otherRuns: true));

        Problem problem = Assert.Single(problems.InOrder());
        Assert.Equal("FP1107", problem.Code);
        Assert.Contains("process 2 on garage", problem.What);
        Assert.Equal(Other.ToString(), disk[Name + ".lock"]);
    }

    [Fact]
    public void Open_LockOfADeadProcess_IsTakenOverAndGivenUpInTheEnd()
    {
        var disk = new MemoryFiles { [Name] = Old, [Name + ".lock"] = Other.ToString() };
        LogbookFile logbook = Open(disk);
        Assert.Equal(Me.ToString(), disk[Name + ".lock"]);

        logbook.Dispose();

        Assert.Equal([Name], disk.Names);
    }

    [Fact]
    public void Apply_LockTakenByAnother_IsRefused()
    {
        var disk = new MemoryFiles { [Name] = Old };
        using LogbookFile logbook = Open(disk);
        disk[Name + ".lock"] = Other.ToString();

        Assert.False(Width(logbook, "1.6 m"));

        Assert.Equal(["FP1107"], Codes);
        Assert.Equal(Old, disk[Name]);
        logbook.Dispose();
        Assert.Equal(Other.ToString(), disk[Name + ".lock"]);
    }

    [Fact]
    public void Runs_OwnProcess_IsSeenAndALaterOneIsNot()
    {
        Assert.True(LockHolder.Me.Runs());
        Assert.Equal(LockHolder.Me, LockHolder.Parse(LockHolder.Me.ToString()));
        Assert.False((LockHolder.Me with { Started = 1 }).Runs());
        Assert.False((LockHolder.Me with { Process = int.MaxValue }).Runs());
        Assert.True((LockHolder.Me with { Machine = "another" }).Runs());
        Assert.Null(LockHolder.Parse("rubbish"));
    }

    [Fact]
    public void Open_BrokenLogbook_GivesItsProblemsAndNoLock()
    {
        var disk = new MemoryFiles { [Name] = "a: [1\n" };

        Assert.Null(OpenOrNot(disk));

        Assert.Equal(["FP1035"], Codes);
        Assert.Equal([Name], disk.Names);
    }

    [Fact]
    public void Open_RealFolder_KeepsAnswersAndLeavesLogbookAndJournalOnly()
    {
        string folder = Directory.CreateTempSubdirectory("logbook").FullName;
        string file = Path.Combine(folder, Name);
        File.WriteAllText(file, Old.Replace("\n", "\r\n"));

        using (LogbookFile logbook = LogbookFile.Open(file, Start, TimeProvider.System, FileCalls.Real, LockHolder.Me, holder => holder.Runs(), problems)!)
        {
            Assert.True(Width(logbook, "1.6 m"));
            Assert.Null(LogbookFile.Open(file, Start, TimeProvider.System, FileCalls.Real, LockHolder.Me, holder => holder.Runs(), problems));
            Assert.Equal(["FP1107"], Codes);
            Assert.True(logbook.Undo(problems));
            Assert.True(logbook.Redo(problems));
        }

        Assert.Equal(Old.Replace("1.62", "1.6").Replace("\n", "\r\n"), File.ReadAllText(file));
        Assert.Equal([file, file + ".journal"], Directory.GetFiles(folder).Order());
        Directory.Delete(folder, recursive: true);
    }

    private MemoryFiles KilledBeforeTheFileWasWritten()
    {
        bool full = false;
        var disk = new MemoryFiles { FailureOf = (call, _) => full && call == nameof(IFileCalls.WriteNew) ? new IOException("full", 28) : null, [Name] = Old };
        LogbookFile logbook = Open(disk);
        full = true;
        Assert.True(logbook.Apply("width: 1.6 m", [new YamlEdit(YamlPath.Parse("car.width")!, YamlValue.Of("1.6 m"))], new ProblemList()));
        return disk.Restart(powerCut: false);
    }
}
