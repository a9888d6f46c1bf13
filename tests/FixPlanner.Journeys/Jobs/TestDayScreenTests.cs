using FixPlanner.Core.TestDay;
using FixPlanner.Files.Logbooks;
using FixPlanner.Journeys.Reports;
using FixPlanner.Plain;
using FixPlanner.Wizard;
using FixPlanner.Wizard.Shell;
using FixPlanner.Wizard.Side;

namespace FixPlanner.Journeys.Jobs;

/// <summary>The sheet of the test day on the screen and in plain lines: the same sheet, typed in from the top.</summary>
public sealed class TestDayScreenTests
{
    [Fact]
    public void The_sheet_is_typed_in_from_the_top_and_kept_and_written_to_a_file()
    {
        using JobFiles files = new();
        string path = files.Copy("lindle");
        using OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!;
        WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
        TestDaySheet paper = DemoReports.Of("lindle").Sheet(new(DayWeather.Of(book.Logbook)));
        program.Begin();
        program.Update(new Asked("next"));
        Frame frame = Worked(program, new OpenSide("test-day"));
        ListModel list = Assert.IsType<ListModel>(frame.Screen);
        Assert.Equal(paper.Looks.Count, list.Rows.Count(r => r.Opens));

        frame = program.Update(new Opened("test-day", list.Rows.First(r => r.Opens).Id!));
        foreach (DayLook look in paper.Looks.Take(5))
        {
            Assert.EndsWith($":{look.Key.Id}", frame.Screen.Id, StringComparison.Ordinal);
            QuestionModel question = Assert.IsType<QuestionModel>(frame.Screen);
            frame = question.Entry is null ? program.Update(new Answered(question.Id, question.Answers[0].Id, false)) : program.Update(new Entered(question.Id, ""));
        }

        LogbookReading read = LogbookReader.ReadFile(path, JobFiles.Pack);
        Assert.True(read.IsSound);
        Assert.NotEqual(File.ReadAllText(JobFiles.Demo("lindle")), File.ReadAllText(path));

        frame = program.Update(new Back());
        Assert.Equal("test-day", frame.Screen.Id);
        frame = program.Update(Assert.IsType<ListModel>(frame.Screen).Keys[0].Does);
        Assert.StartsWith("Written:", frame.Notice.Text, StringComparison.Ordinal);
        Assert.Contains("<h1>Test day for Lindle 1300 estate</h1>", File.ReadAllText(files.New("lindle.testday.html")), StringComparison.Ordinal);
        Assert.NotEqual("test-day", program.Update(new Back()).Screen.Id);
    }

    [Fact]
    public void In_plain_lines_the_same_sheet_is_shown_and_written()
    {
        using JobFiles files = new();
        string path = files.Copy("lindle");
        using OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!;
        StringWriter said = new();
        Assert.Equal(0, PlainFace.Over(new StringReader("t\nw\nq\n"), said, book, JobFiles.Pack, JobFiles.Today));
        Assert.Contains(Commands.TestDayCommand.Written(DemoReports.Of("lindle").Sheet(new(DayWeather.Of(book.Logbook))), "text"), said.ToString(), StringComparison.Ordinal);
        Assert.True(File.Exists(files.New("lindle.testday.html")));
        Assert.DoesNotContain('\u001b', said.ToString());
    }

    // What is worked out beside the keys comes as messages.
    private static Frame Worked(WizardProgram program, Message message)
    {
        System.Collections.Concurrent.BlockingCollection<Message> posted = [];
        program.Attach(posted.Add);
        Frame frame = program.Update(message);
        while (frame.Screen is not ListModel { Id: "test-day" })
        {
            Assert.True(posted.TryTake(out Message? next, TimeSpan.FromMinutes(2)), "nothing came");
            frame = program.Update(next);
        }

        return frame;
    }
}
