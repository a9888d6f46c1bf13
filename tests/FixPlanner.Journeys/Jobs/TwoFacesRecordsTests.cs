using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Logbooks;
using FixPlanner.Journeys.Screens;
using FixPlanner.Plain;
using FixPlanner.Wizard.Shell;
using FixPlanner.Wizard.Side;
using FixPlanner.Wizard;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Jobs;

/// <summary>Details of a finding, sign-offs, what was read, limits and work: both faces write the same bytes.</summary>
public sealed class TwoFacesRecordsTests
{
    private static readonly string[] Details = ["clip3.mp4 at 0:42", "left half", "90 km/h", "gusty: from the left", "0.6"];
    private static readonly string[] SignOff = ["R. Harms", "glass technician", "2026-06-05", "pull test filmed, clip 7"];
    private static readonly string[] Work = ["2026-06-01", "12 EUR", "1.5 h", "foam strip"];

    [Fact]
    public void Details_sign_offs_limits_and_work_give_the_same_file_from_both_faces()
    {
        using JobFiles files = new();
        string wizard = files.New("wizard.logbook.yaml");
        string plain = files.New("plain.logbook.yaml");
        File.WriteAllText(wizard, MadeUpCars.Text(JobFiles.Pack, 2));
        File.Copy(wizard, plain);
        using (OpenLogbook book = OpenLogbook.Open(wizard, JobFiles.Pack, out _)!)
        {
            ByWizard(new WizardProgram(book, JobFiles.Pack, JobFiles.Today));
        }

        Talker talker = new();
        using (OpenLogbook book = OpenLogbook.Open(plain, JobFiles.Pack, out _)!)
        {
            Assert.Equal(0, PlainFace.Over(talker, talker.Heard, book, JobFiles.Pack, JobFiles.Today));
        }

        string written = File.ReadAllText(plain);
        Assert.Equal(File.ReadAllText(wizard), written);
        foreach (string part in (string[])["clip3.mp4 at 0:42", "hesitant: 0.6", "sign_offs:", "R. Harms", "read:", "must:", "never:", "stays_original:", "state: trial", "12 EUR"])
        {
            Assert.Contains(part, written, StringComparison.Ordinal);
        }

        Assert.Contains("clears nothing", talker.Heard.ToString(), StringComparison.Ordinal);
        Assert.Empty(LogbookReader.ReadFile(plain, JobFiles.Pack).Problems);
        Assert.False(File.Exists(wizard + ".drafts"), "everything typed was confirmed");
    }

    [Fact]
    public void Each_of_them_is_taken_back_to_the_byte()
    {
        using JobFiles files = new();
        string path = files.New("undo.logbook.yaml");
        File.WriteAllText(path, MadeUpCars.Text(JobFiles.Pack, 2));
        byte[] before = File.ReadAllBytes(path);
        using OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!;
        WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
        ByWizard(program);
        Assert.NotEqual(before, File.ReadAllBytes(path));
        while (book.NextUndo is not null)
        {
            program.Update(new Asked("undo"));
        }

        Assert.Equal(before, File.ReadAllBytes(path));
    }

    [Fact]
    public void Reading_a_gate_clears_nothing_and_a_sign_off_without_its_lines_is_not_taken()
    {
        using JobFiles files = new();
        using OpenLogbook book = OpenLogbook.Open(files.Copy("lindle"), JobFiles.Pack, out _)!;
        WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
        program.Begin();
        program.Update(new Asked("plan"));
        Frame frame = program.Update(new Asked("before"));
        string[] states = States(frame);
        string gate = ((ListModel)frame.Screen).Rows[0].Id!;
        frame = program.Update(new Chosen("gates", gate, "read"));
        Assert.Equal(states, States(frame));
        Assert.Contains("clears nothing", frame.Notice.Text, StringComparison.Ordinal);

        frame = program.Update(new Chosen("gates", gate, "sign"));
        while (frame.Screen is QuestionModel { Answers.Count: > 0 } q)
        {
            frame = program.Update(new Answered(q.Id, q.Answers[0].Id, false));
        }

        frame = program.Update(new Entered(frame.Screen.Id, " "));
        Assert.Contains("Not taken", frame.Notice.Text, StringComparison.Ordinal);
        Assert.DoesNotContain(book.Logbook.SignOffs, s => s.By.Trim().Length == 0);
    }

    [Fact]
    public void From_a_gate_to_its_first_open_question_by_one_key_in_both_faces()
    {
        using JobFiles files = new();
        string wizard = files.Copy("lindle");
        string plain = files.New("plain.logbook.yaml");
        File.Copy(wizard, plain);
        int number;
        using (OpenLogbook book = OpenLogbook.Open(wizard, JobFiles.Pack, out _)!)
        {
            WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
            program.Begin();
            program.Update(new Asked("plan"));
            ListModel gates = (ListModel)program.Update(new Asked("before")).Screen;
            RowModel[] shown = [.. gates.Rows.Where(r => r.Cells[2] is "in force" or "not checked")];
            RowModel open = shown.First(r => r.Detail!().Any(line => line.Text.StartsWith("Not known:", StringComparison.Ordinal)));
            string first = open.Detail!().First(line => line.Text.StartsWith("Not known:", StringComparison.Ordinal)).Text["Not known: ".Length..];
            number = 1 + Array.IndexOf(shown, open);

            using Screen screen = new(program);
            for (int down = gates.Rows.ToList().IndexOf(open); down > 0; down--)
            {
                screen.Press(Key.CursorDown);
            }

            screen.Press(Key.A);
            QuestionModel asked = Assert.IsType<QuestionModel>(program.Update(new Drafted("", "")).Screen);
            KnowledgePack pack = JobFiles.Pack;
            string id = asked.Id.Split(':')[1];
            Assert.Equal(first, pack.Fact(id)?.Title ?? pack.Observation(id)?.Question);
            Assert.Equal("gates", program.Update(new Answered(asked.Id, "not sure", false)).Screen.Id);
        }

        AtGates talker = new([$"a{number}", "~", "q"]);
        using (OpenLogbook book = OpenLogbook.Open(plain, JobFiles.Pack, out _)!)
        {
            PlainFace.Over(talker, talker.Heard, book, JobFiles.Pack, JobFiles.Today);
        }

        Assert.Equal(File.ReadAllText(wizard), File.ReadAllText(plain));
        Assert.NotEqual(File.ReadAllText(JobFiles.Demo("lindle")), File.ReadAllText(plain));
    }

    [Fact]
    public void What_was_typed_and_not_confirmed_comes_back_after_leaving()
    {
        using JobFiles files = new();
        string path = files.New("draft.logbook.yaml");
        using (OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!)
        using (Screen screen = new(new WizardProgram(book, JobFiles.Pack, JobFiles.Today)))
        {
            screen.Type("Aunt's est").Press(Key.Q.WithCtrl);
        }

        using (OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!)
        using (Screen screen = new(new WizardProgram(book, JobFiles.Pack, JobFiles.Today)))
        {
            Assert.Contains("Aunt's est", screen.Text, StringComparison.Ordinal);
            screen.Type("ate").Press(Key.Enter);
            Assert.Equal("Aunt's estate", book.Logbook.Name);
        }

        Assert.False(File.Exists(path + ".drafts"));
    }

    private static string[] States(Frame frame) => [.. ((ListModel)frame.Screen).Rows.Select(r => string.Join(' ', r.Cells))];

    private static void ByWizard(WizardProgram program)
    {
        Frame frame = program.Begin();
        while (frame.Step < (int)Section.WalkRound)
        {
            frame = program.Update(new Asked("next"));
        }

        frame = program.Update(new Opened("walk", "next"));
        for (int passed = 0; frame.Screen.Keys.All(k => k.Label != "d"); passed++)
        {
            Assert.True(passed < 60, frame.Screen.Id);
            frame = program.Update(new Entered(frame.Screen.Id, ""));
        }

        QuestionModel look = (QuestionModel)frame.Screen;
        frame = Lines(program, program.Update(new Asked("details")), Details);
        Assert.Equal(look.Id, frame.Screen.Id);
        program.Update(new Answered(look.Id, look.Answers[0].Id, false));
        program.Update(new Asked("plan"));
        ListModel gates = (ListModel)program.Update(new Asked("before")).Screen;
        program.Update(new Chosen("gates", gates.Rows[0].Id!, "read"));
        frame = program.Update(new Chosen("gates", gates.Rows[0].Id!, "sign"));
        frame = frame.Screen is QuestionModel { Answers.Count: > 0 } kind ? program.Update(new Answered(kind.Id, kind.Answers[0].Id, false)) : frame;
        Lines(program, frame, SignOff);

        ListModel plan = (ListModel)program.Update(new Asked("next")).Screen;
        plan = (ListModel)program.Update(new Chosen("plan", plan.Rows[0].Id!, "always")).Screen;
        plan = (ListModel)program.Update(new Chosen("plan", plan.Rows[1].Id!, "never")).Screen;
        QuestionModel state = (QuestionModel)program.Update(new Chosen("plan", plan.Rows[0].Id!, "work")).Screen;
        Lines(program, program.Update(new Answered(state.Id, "trial", false)), Work);
        program.Update(new OpenSide("find-Plan"));
        PickModel found = (PickModel)program.Update(new Sought("find-Plan", "gutter")).Screen;
        QuestionModel deed = (QuestionModel)program.Update(new Opened("find-Plan", found.List.Rows[0].Id!)).Screen;
        program.Update(new Answered(deed.Id, "as-built", false));
    }

    private static Frame Lines(WizardProgram program, Frame frame, string[] lines)
    {
        foreach (string line in lines)
        {
            frame = program.Update(new Entered(frame.Screen.Id, line));
        }

        return frame;
    }

    /// <summary>Passes everything by until the gates are listed, and then says its lines.</summary>
    private sealed class AtGates(IEnumerable<string> lines) : TextReader
    {
        private readonly Queue<string> said = new(lines);

        public StringWriter Heard { get; } = new();

        public override string? ReadLine() => Heard.ToString().Contains("Open one: its number", StringComparison.Ordinal) ? said.TryDequeue(out string? line) ? line : null : ">";
    }

    /// <summary>The same person, line by line: listens to what was asked last, and types.</summary>
    private sealed class Talker : TextReader
    {
        private readonly Queue<string> gates = new(["1", "2", "1", "1"]);
        private readonly Queue<string> plan = new(["1", "1", "2", "2", "1", "5", "2", .. Work, "gutter", "1", "3"]);
        private readonly Queue<string> details = new(["d", .. Details, "1"]);
        private int from;

        public StringWriter Heard { get; } = new();

        public override string? ReadLine()
        {
            string all = Heard.ToString();
            string last = all[from..];
            from = all.Length;
            string part = all[(all.LastIndexOf("== ", all.LastIndexOf(" ==", StringComparison.Ordinal) - 1, StringComparison.Ordinal) + 3)..];
            if (part.StartsWith("Safety", StringComparison.Ordinal))
            {
                if (last.Contains("Which sign-off", StringComparison.Ordinal))
                {
                    foreach (string line in SignOff)
                    {
                        gates.Enqueue(line);
                    }

                    return "1";
                }

                return gates.TryDequeue(out string? next) ? next : "";
            }

            if (part.StartsWith("Plan", StringComparison.Ordinal))
            {
                return plan.TryDequeue(out string? next) ? next : "";
            }

            bool look = last.Contains("d photo or film", StringComparison.Ordinal) || details.Count is > 0 and < 7;
            return !part.StartsWith("Walk", StringComparison.Ordinal) ? ">" : !look ? "" : details.TryDequeue(out string? answer) ? answer : ">";
        }
    }
}
