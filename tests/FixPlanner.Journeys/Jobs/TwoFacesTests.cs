using FixPlanner.Core.Interview;
using FixPlanner.Files.Logbooks;
using FixPlanner.Journeys.Screens;
using FixPlanner.Plain;
using FixPlanner.Wizard;
using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Jobs;

/// <summary>The wizard and the plain mode are two faces of one interview: the same answers give the same logbook, byte for byte.</summary>
public sealed class TwoFacesTests
{
    private const int WalkAnswers = 6;

    [Fact]
    public void A_car_from_the_first_question_to_the_walk_gives_the_same_file_from_both_faces()
    {
        using JobFiles files = new();
        List<string> lines = [];
        string wizard = files.New("wizard.logbook.yaml");
        using (OpenLogbook book = OpenLogbook.Open(wizard, JobFiles.Pack, out _)!)
        {
            WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
            Frame frame = program.Begin();
            for (int walked = 0, screens = 0; walked < WalkAnswers; screens++)
            {
                Assert.True(screens < 200, $"no end in sight at: {frame.Screen.Id}, {frame.Notice.Text}");
                (frame, bool onWalk) = AnswerOne(program, frame, lines);
                walked += onWalk ? 1 : 0;
            }
        }

        string plain = files.New("plain.logbook.yaml");
        StringWriter said = new();
        using (OpenLogbook book = OpenLogbook.Open(plain, JobFiles.Pack, out _)!)
        {
            Assert.Equal(0, PlainFace.Over(new StringReader(string.Join('\n', lines) + "\nq\n"), said, book, JobFiles.Pack, JobFiles.Today));
        }

        Assert.Equal(File.ReadAllText(wizard), File.ReadAllText(plain));
        Assert.Contains("findings:", File.ReadAllText(plain), StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', said.ToString());
        Assert.DoesNotContain('\r', said.ToString());
    }

    [Fact]
    public void Input_that_ends_in_the_middle_keeps_every_answer_that_was_confirmed()
    {
        using JobFiles files = new();
        string path = files.New("ends.logbook.yaml");
        using (OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!)
        {
            Assert.Equal(0, PlainFace.Over(new StringReader("Garage find\n1\n"), new StringWriter(), book, JobFiles.Pack, JobFiles.Today));
        }

        LogbookReading read = LogbookReader.ReadFile(path, JobFiles.Pack);
        Assert.Equal("Garage find", read.Logbook!.Name);
        Assert.Equal("square-back estate", read.Logbook.Car["body_style"].Value!.Word);
    }

    [Fact]
    public void A_number_without_its_unit_is_refused_with_what_would_do_and_nothing_is_kept()
    {
        using JobFiles files = new();
        string path = files.New("unit.logbook.yaml");
        StringWriter said = new();
        using (OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!)
        {
            PlainFace.Over(new StringReader("\n\n\n1.58\nq\n"), said, book, JobFiles.Pack, JobFiles.Today);
        }

        Assert.Contains("Not taken", said.ToString(), StringComparison.Ordinal);
        Assert.False(File.Exists(path) && File.ReadAllText(path).Contains("width_m", StringComparison.Ordinal));
    }

    [Fact]
    public void A_figure_typed_where_answers_hold_figures_answers_nothing_until_Enter()
    {
        using JobFiles files = new();
        string path = files.Copy("pennock");
        string before = File.ReadAllText(path);
        Core.Knowledge.Observation look = JobFiles.Pack.Observations.First(o => o.Answers.Count > 2 && o.Answers[0].Text.Any(char.IsDigit));
        using OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!;
        WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
        program.Begin();
        program.Update(new Opened("walk", $"{QuestionKind.Observation}:{look.Id}"));
        using Screen screen = new(program);
        screen.Type("12");
        Assert.Equal(before, File.ReadAllText(path));
        Assert.Contains(">2 ", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.Enter);
        Assert.Contains(book.Logbook.Rounds[^1].Findings, f => f.Observation == look.Id && f.Answer == look.Answers[1].Id);
    }

    [Fact]
    public void Undo_takes_the_last_answer_back_to_the_byte()
    {
        using JobFiles files = new();
        string path = files.Copy("pennock");
        byte[] before = File.ReadAllBytes(path);
        using OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!;
        WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
        program.Begin();
        program.Update(new Asked("before"));
        program.Update(new Asked("before"));
        program.Update(new Chosen(Section.Aims.ToString(), $"{QuestionKind.Aim}:quiet", "1"));
        Assert.NotEqual(before, File.ReadAllBytes(path));
        program.Update(new Asked("undo"));
        Assert.Equal(before, File.ReadAllBytes(path));
    }

    [Fact]
    public void A_change_made_in_an_editor_meanwhile_is_kept_and_said()
    {
        using JobFiles files = new();
        string path = files.Copy("pennock");
        using OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!;
        WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
        program.Begin();
        File.WriteAllText(path, File.ReadAllText(path).Replace("budget: 90 EUR", "budget: 95 EUR", StringComparison.Ordinal));
        program.Update(new Asked("before"));
        program.Update(new Asked("before"));
        Frame frame = program.Update(new Chosen(Section.Aims.ToString(), $"{QuestionKind.Aim}:quiet", "1"));

        Assert.Contains("MIND", frame.Notice.Text, StringComparison.Ordinal);
        Assert.Equal(95, book.Logbook.Limits.BudgetEur);
        Assert.Equal(1, book.Logbook.Aims["quiet"]);
    }

    // Answers what is on the screen as a person would, and notes what the same person would type line by line.
    private static (Frame Frame, bool OnWalk) AnswerOne(WizardProgram program, Frame frame, List<string> lines)
    {
        switch (frame.Screen)
        {
            case QuestionModel { Answers.Count: > 0 } q:
                lines.Add("1");
                return (program.Update(new Answered(q.Id, q.Answers[0].Id, false)), frame.Step == (int)Section.WalkRound);
            case QuestionModel q:
                string example = q.Entry!.Example["for example: ".Length..];
                lines.Add(example);
                return (program.Update(new Entered(q.Id, example)), false);
            case ListModel list when frame.Step == (int)Section.WalkRound:
                return (program.Update(new Opened(list.Id, list.Rows[0].Id!)), false);
            case ListModel list when frame.Step == (int)Section.Car:
                return (program.Update(new Asked("next")), false);
            case ListModel list:
                return (AnswerRows(program, frame, list, lines), false);
            default:
                throw new InvalidOperationException($"a screen this person does not expect: {frame.Screen.Id}");
        }
    }

    private static Frame AnswerRows(WizardProgram program, Frame frame, ListModel list, List<string> lines)
    {
        foreach (RowModel row in list.Rows)
        {
            if (row.Choices is { Count: > 0 } choices)
            {
                // Weights: 2 is the third; yes and no: no is the second, and harmless.
                int pick = choices.Count == 4 ? 2 : 1;
                lines.Add($"{pick + 1}");
                frame = program.Update(new Chosen(list.Id, row.Id!, choices[pick].Id));
            }
            else
            {
                frame = program.Update(new Opened(list.Id, row.Id!));
                (frame, _) = AnswerOne(program, frame, lines);
                frame = program.Update(new Asked("overview"));
            }
        }

        return program.Update(new Asked("next"));
    }
}
