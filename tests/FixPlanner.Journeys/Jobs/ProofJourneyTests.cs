using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Logbooks;
using FixPlanner.Journeys.Screens;
using FixPlanner.Plain;
using FixPlanner.Wizard;
using FixPlanner.Wizard.Screens;
using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Jobs;

/// <summary>From a fix in work to what was measured of it, by wizard and by lines: the same bytes, and the plan follows.</summary>
public sealed class ProofJourneyTests
{
    private static readonly string[] Passes =
    [
        "before 74.1 dB(A) at 100 km/h", "after 70.9 dB(A) at 100 km/h", "after 71.1 dB(A) at 101 km/h", "before 73.9 dB(A) at 100 km/h",
        "after 71.0 dB(A) at 100 km/h", "before 74.0 dB(A) at 100 km/h", "before 74.2 dB(A) at 100 km/h", "after 71.0 dB(A) at 100 km/h",
    ];

    [Fact]
    public void Sound_passes_typed_in_both_faces_prove_the_fix_and_give_the_same_file()
    {
        using JobFiles files = new();
        (string wizard, string fix) = Car(files, "wizard");
        using (OpenLogbook book = OpenLogbook.Open(wizard, JobFiles.Pack, out _)!)
        {
            WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
            program.Begin();
            Frame frame = ToProof(program);
            frame = program.Update(new Opened("proof", "ProofOf"));
            Assert.Contains(((QuestionModel)frame.Screen).Answers, a => a.Id == fix);
            program.Update(new Answered("", fix, false));
            frame = program.Update(new Answered("", "sound", false));
            foreach (string pass in Passes)
            {
                Assert.Equal("", ((QuestionModel)frame.Screen).Entry!.Text);
                frame = program.Update(new Entered("", pass));
            }

            Assert.Contains("shown-better", ((QuestionModel)frame.Screen).Question.Text, StringComparison.Ordinal);
            frame = program.Update(new Entered("", ""));
            ListModel proof = Assert.IsType<ListModel>(frame.Screen);
            Assert.Contains(proof.Rows, r => r.Id?.StartsWith("learned:", StringComparison.Ordinal) == true && r.Cells[1] == "proven");
            Assert.Contains(proof.Rows, r => r.Cells.Contains("shown-better"));
        }

        (string plain, _) = Car(files, "plain");
        string[] typed = ["1", HowNumber("sound"), .. Passes, "", "q"];
        Assert.Contains("So far: shown-better", Plain(plain, typed), StringComparison.Ordinal);
        Assert.Equal(File.ReadAllText(wizard), File.ReadAllText(plain));
        Assert.Contains("state: proven", File.ReadAllText(plain), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("fuel", "before 1.42 kg over 20 km at 100 km/h", "after 1.31 kg over 20 km at 100 km/h", "drag area")]
    [InlineData("ride_height:rear", "before 206 mm against 200 mm at 110 km/h", "after 200 mm against 200 mm at 110 km/h", "rear lift coefficient")]
    [InlineData("pressure:rear glass", "before 150 Pa at 100 km/h", "after 90 Pa at 100 km/h", "outward load on the rear glass")]
    [InlineData("pressure:vent", "before 40 Pa at 80 km/h", "after 160 Pa at 80 km/h", "fresh air (plus is better)")]
    [InlineData("temperature", "before 96 C outside 18 C", "after 84 C outside 18 C", "engine cooling (plus is better)")]
    [InlineData("dirt", "before 60 of 100", "after 20 of 100", "clean glass (plus is cleaner)")]
    public void Each_way_of_measuring_moves_belief_and_is_kept_the_same_by_both_faces(string way, string before, string after, string quantity)
    {
        using JobFiles files = new();
        string fix = JobFiles.Pack.Fixes.First(f => f.Effects.Any(e => EffectNames.Title(e.On) == quantity && e.Likely != 0)).Id;
        string[] values = [before, after, after, before, before, after, after, before];
        string wizard = Car(files, "wizard", fix);
        using (OpenLogbook book = OpenLogbook.Open(wizard, JobFiles.Pack, out _)!)
        {
            WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
            program.Begin();
            ToProof(program);
            program.Update(new Opened("proof", "ProofOf"));
            program.Update(new Answered("", fix, false));
            program.Update(new Answered("", way, false));
            foreach (string value in values)
            {
                program.Update(new Entered("", value));
            }

            ListModel proof = Assert.IsType<ListModel>(program.Update(new Entered("", "")).Screen);
            RowModel learned = Assert.Single(proof.Rows, r => r.Id?.StartsWith($"learned:{fix}:", StringComparison.Ordinal) == true);
            Assert.Contains(quantity, learned.Cells[0], StringComparison.Ordinal);
            Assert.Equal(["Believed before", "Measured", "Believed now"], learned.Detail!().Take(3).Select(line => line.Text.Split(':')[0]));
        }

        string plain = Car(files, "plain", fix);
        Plain(plain, ["1", HowNumber(way), .. values, "", "q"]);
        Assert.Equal(File.ReadAllText(wizard), File.ReadAllText(plain));
    }

    [Fact]
    public void A_ride_height_without_its_speed_is_refused_with_what_would_do()
    {
        using JobFiles files = new();
        (string path, _) = Car(files, "slow");
        string said = Plain(path, ["1", HowNumber("ride_height:rear"), "before 206 mm against 200 mm", "", "q"]);
        Assert.Contains("Not taken: it is not said at which speed. write it last: before 206 mm against 200 mm at 110 km/h", said, StringComparison.Ordinal);
    }

    [Fact]
    public void A_tuft_grid_read_by_keys_or_by_lines_gives_the_same_file_and_answers_the_zones_question()
    {
        using JobFiles files = new();
        (string wizard, _) = Car(files, "wizard");
        using (OpenLogbook book = OpenLogbook.Open(wizard, JobFiles.Pack, out _)!)
        {
            WizardProgram program = AtTufts(book, "bonnet");
            Frame frame = program.Update(new Entered("", "3 x 2 at 80 km/h, bonnet.mp4 at 1:10"));
            GridModel grid = Assert.IsType<GridModel>(frame.Screen);
            Assert.Equal(["..", "..", ".."], grid.Rows);
            Assert.NotNull(grid.Picture);
            frame = program.Update(new Entered("", "1 rr"));
            frame = program.Update(new Entered("", "2 ls"));
            frame = program.Update(new Entered("", "3 sw"));
            Assert.Contains("between rows", string.Join(" ", ((GridModel)frame.Screen).Text.Select(l => l.Text)), StringComparison.Ordinal);
            Assert.Contains(((GridModel)frame.Screen).Picture!.Large.Rows, row => row.Contains("rr", StringComparison.Ordinal));
            program.Update(new Entered("", ""));
            Finding found = book.Logbook.Rounds[^1].Findings.Single(f => f.Observation == "bonnet-front-tufts");
            Assert.Equal(("rejoin", "80 km/h", "bonnet.mp4 at 1:10"), (found.Answer, found.Speed, found.Photo));
        }

        (string plain, _) = Car(files, "plain");
        string said = Plain(plain, ["2", ZoneNumber("bonnet"), "3 x 2 at 80 km/h, bonnet.mp4 at 1:10", "rr", "ls", "sw", "", "q"]);
        Assert.Contains("Lies down again", said, StringComparison.Ordinal);

        // Among more than nine zones, as among figures, a number is said back.
        Assert.Contains($"taken as: {Prose.Plain(JobFiles.Pack.Zone("bonnet")!.Title)}", said, StringComparison.Ordinal);
        Assert.Equal(File.ReadAllText(wizard), File.ReadAllText(plain));
    }

    [Fact]
    public void Frame_counts_typed_on_the_grid_of_the_wizard_give_the_same_file_as_line_by_line()
    {
        using JobFiles files = new();
        (string wizard, _) = Car(files, "wizard");
        using (OpenLogbook book = OpenLogbook.Open(wizard, JobFiles.Pack, out _)!)
        {
            WizardProgram program = AtTufts(book, "roof-tail");
            program.Update(new Entered("", "1 x 3 at 80 km/h, roof.mp4 at 1:10"));
            using Screen screen = new(program);
            screen.Type("f10 20 0 70").Press(Key.Enter);
            screen.Type("80 20 0").Press(Key.Enter);
            Assert.Contains("no frame count of this grid", screen.Text, StringComparison.Ordinal);
            screen.Type(" 0").Press(Key.Enter, Key.Esc);
            screen.Type("w").Press(Key.Enter);
            Assert.Equal("rsw", Assert.Single(Assert.Single(book.Logbook.Readings).Grid));
        }

        (string plain, _) = Car(files, "plain");
        Plain(plain, ["2", ZoneNumber("roof-tail"), "1 x 3 at 80 km/h, roof.mp4 at 1:10", "1.1: 10 20 0 70", "1.2: 80 20 0 0", "1 rsw", "", "q"]);
        Assert.Equal(File.ReadAllText(wizard), File.ReadAllText(plain));
    }

    [Fact]
    public void Frame_counts_from_a_file_or_typed_fill_the_grid()
    {
        using JobFiles files = new();
        (string path, _) = Car(files, "film");
        File.WriteAllText(files.New("counts.csv"), "tuft;steady;waving;lifted;reversed;seconds\n1.1;10;20;0;70;30\n1.2;80;20;0;0;30\n2.1;0;80;20;0;30\n");
        string said = Plain(path, ["2", ZoneNumber("roof-tail"), "2 x 2 at 80 km/h, roof.mp4 at 1:10, counts.csv", "2.2: 0 10 90 0", "2.9: 0 0 0 1", "", "q"]);
        Assert.Contains("no frame count of this grid", said, StringComparison.Ordinal);
        using OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!;
        Reading grid = Assert.Single(book.Logbook.Readings);
        Assert.Equal(["rs", "wl"], grid.Grid);
        Assert.Equal(("roof.mp4 at 1:10", "counts.csv"), (grid.Photo, Assert.Single(grid.Files)));
    }

    [Fact]
    public void Run_files_named_in_the_interview_are_read_compared_and_kept()
    {
        using JobFiles files = new();
        (string path, string fix) = Car(files, "runs");
        Directory.CreateDirectory(Path.Combine(files.Folder, "runs"));
        File.Copy(Path.Combine(AppContext.BaseDirectory, "Demo", "runs", "lindle-roof-lip.csv"), Path.Combine(files.Folder, "runs", "lindle-roof-lip.csv"));
        using OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!;
        WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
        program.Begin();
        ToProof(program);
        program.Update(new Opened("proof", "ProofOf"));
        program.Update(new Answered("", fix, false));
        program.Update(new Answered("", "runs", false));
        Frame frame = program.Update(new Entered("", "runs/no-such.csv"));
        Assert.Contains("no-such.csv", frame.Notice.Text, StringComparison.Ordinal);
        frame = program.Update(new Entered("", "runs/lindle-roof-lip.csv"));
        Assert.Contains("shown-", frame.Notice.Text, StringComparison.Ordinal);
        Reading kept = Assert.Single(book.Logbook.Readings);
        Assert.Equal((fix, "runs/lindle-roof-lip.csv"), (kept.Fix, Assert.Single(kept.Files)));
        Assert.True(kept.Result!.High < 0);
    }

    [Fact]
    public void A_value_in_the_wrong_unit_is_refused_and_nothing_is_lost()
    {
        using JobFiles files = new();
        (string path, _) = Car(files, "wrong");
        string said = Plain(path, ["1", HowNumber("sound"), "before 74 km/h", "74 dB(A)", "before 74 dB(A)", "", "q"]);
        Assert.Equal(2, said.Split("Not taken:").Length - 1);
        using OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!;
        Assert.Equal(["before 74 dB(A)"], Assert.Single(book.Logbook.Readings).Values);
    }

    private static (string Path, string Fix) Car(JobFiles files, string name) => (Car(files, name, Noisy), Noisy);

    private static string Car(JobFiles files, string name, string fix)
    {
        string path = files.New($"{name}.logbook.yaml");
        File.WriteAllText(path, "logbook: 1\ncar:\n  name: One\n  body_style: square-back estate\n  mass_kg: 1010 kg\naims: {quiet: 2, fuel: 1}\nwork:\n  - {fix: roof-tail-lip, state: trial, date: 2026-06-01}   # foam\n".Replace("roof-tail-lip", fix, StringComparison.Ordinal));
        return path;
    }

    // A fix of the pack that is said to quieten the car.
    private static string Noisy => JobFiles.Pack.Fixes.First(f => f.Effects.Any(e => e.On == Core.Knowledge.EffectOn.Noise && e.Range.Mean < -0.5) && f.Effects.Any(e => e.On == Core.Knowledge.EffectOn.Drag)).Id;

    private static WizardProgram AtTufts(OpenLogbook book, string zone)
    {
        WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
        program.Begin();
        ToProof(program);
        program.Update(new Opened("proof", "ProofOf"));
        program.Update(new Answered("", "tufts", false));
        program.Update(new Answered("", zone, false));
        return program;
    }

    private static Frame ToProof(WizardProgram program)
    {
        Frame frame = program.Update(new Asked("plan"));
        return program.Update(new Asked("next"));
    }

    private static string HowNumber(string kind)
    {
        Interviewer interviewer = new(JobFiles.Pack, JobFiles.Today);
        InterviewState state = new(new Logbook(), new(Section.Proof, new(QuestionKind.ProofHow, Noisy)));
        return $"{1 + interviewer.Current(state)!.Choices.ToList().FindIndex(c => c.Id == kind)}";
    }

    private static string ZoneNumber(string zone)
    {
        Interviewer interviewer = new(JobFiles.Pack, JobFiles.Today);
        InterviewState state = new(new Logbook(), new(Section.Proof, new(QuestionKind.TuftZone, "")));
        return $"{1 + interviewer.Current(state)!.Choices.ToList().FindIndex(c => c.Id == zone)}";
    }

    // Passes every part by until the proof.
    private static string Plain(string path, IEnumerable<string> lines)
    {
        StringWriter said = new();
        using OpenLogbook book = OpenLogbook.Open(path, JobFiles.Pack, out _)!;
        PlainFace.Over(new StringReader(string.Join('\n', [">", ">", ">", ">", .. lines]) + "\n"), said, book, JobFiles.Pack, JobFiles.Today);
        return said.ToString();
    }
}
