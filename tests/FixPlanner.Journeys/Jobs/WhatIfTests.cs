using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Files.Logbooks;
using FixPlanner.Journeys.Screens;
using FixPlanner.Plain;
using FixPlanner.Report.Plans;
using FixPlanner.Wizard;
using FixPlanner.Wizard.Screens;
using FixPlanner.Wizard.Shell;
using FixPlanner.Wizard.Side;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Jobs;

/// <summary>What if, in both faces: everything answers at once, nothing is kept until the owner asks, and then the same is kept.</summary>
public sealed class WhatIfTests
{
    [Theory]
    [InlineData("lindle")]
    [InlineData("pennock")]
    public void A_wish_from_either_face_gives_the_same_file(string car)
    {
        using JobFiles files = new();
        string wizard = files.Copy(car);
        byte[] untouched = File.ReadAllBytes(wizard);
        string gone;
        double budget;
        using (OpenLogbook book = OpenLogbook.Open(wizard, JobFiles.Pack, out _)!)
        {
            WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
            program.Update(new Asked("plan"));
            ListModel list = Assert.IsType<ListModel>(program.Update(new OpenSide(WhatIfView.Id)).Screen);
            gone = list.Rows.First(r => r.Id?.StartsWith(WhatIfView.FixMark, StringComparison.Ordinal) == true && r.Current == "in").Id![WhatIfView.FixMark.Length..];
            budget = book.Logbook.Limits.BudgetEur!.Value + 50;
            program.Update(new Chosen(WhatIfView.Id, WhatIfView.Budget, "+50"));
            program.Update(new Chosen(WhatIfView.Id, WhatIfView.AimMark + "quiet", "3"));
            Frame tried = program.Update(new Chosen(WhatIfView.Id, WhatIfView.FixMark + gone, "out"));
            Assert.Equal("out", Assert.IsType<ListModel>(tried.Screen).Rows.Single(r => r.Id == WhatIfView.FixMark + gone).Current);
            Assert.Contains("the proposed one", tried.Notice.Text, StringComparison.Ordinal);
            Assert.Equal(untouched, File.ReadAllBytes(wizard));

            program.Update(new Opened(WhatIfView.Id, WhatIfView.Wish));
            Assert.Contains(gone, book.Logbook.Limits.Never);
        }

        string plain = files.New("plain.logbook.yaml");
        File.WriteAllBytes(plain, untouched);
        StringWriter said = new();
        using (OpenLogbook book = OpenLogbook.Open(plain, JobFiles.Pack, out _)!)
        {
            Supposing supposing = new(new Assessor(JobFiles.Pack), JobFiles.Today);
            Assessment standing = new Assessor(JobFiles.Pack).Assess(book.Logbook, JobFiles.Today, PlanDepth.Quick);
            int number = supposing.Of(standing, Supposition.None with { BudgetEur = budget, Weights = Supposition.None.Weights.Add("quiet", 3) }).Offered.Index().First(o => o.Item.Fix.Id == gone).Index + 1;
            Queue<string> lines = new(["w", $"b {budget}", "a quiet 3", "x", $"- {number}", "wish", ""]);
            using Answers answers = new(() => said.ToString().Contains("What if?", StringComparison.Ordinal) ? (lines.Count > 0 ? lines.Dequeue() : null) : ">");
            Assert.Equal(0, PlainFace.Over(answers, said, book, JobFiles.Pack, JobFiles.Today));
        }

        Assert.Equal(File.ReadAllText(wizard), File.ReadAllText(plain));
        Assert.Contains("Not taken", said.ToString(), StringComparison.Ordinal);
        Assert.Contains("Goes out: ", said.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_models_say_of_both_sets_follows_the_key_that_asked_for_it()
    {
        using JobFiles files = new();
        using OpenLogbook book = OpenLogbook.Open(files.Copy("lindle"), JobFiles.Pack, out _)!;
        using Screen screen = new Screen(new WizardProgram(book, JobFiles.Pack, JobFiles.Today), 120, 60).WithLoop();
        screen.Press(Key.F9, new Key('i'), Key.Home, Key.Enter);
        screen.WaitFor(() => screen.Text.Contains("air changes of the", StringComparison.Ordinal));
        Assert.DoesNotContain(WhatIfPart.BeingComputed[..30], screen.Text, StringComparison.Ordinal);
        screen.Press(Key.Esc, Key.Q.WithCtrl);
    }

    [Fact]
    public void On_80_by_24_the_difference_is_in_view_and_left_and_right_change_a_row()
    {
        using JobFiles files = new();
        using OpenLogbook book = OpenLogbook.Open(files.Copy("lindle"), JobFiles.Pack, out _)!;
        using Screen screen = new(new WizardProgram(book, JobFiles.Pack, JobFiles.Today));
        Logbook before = book.Logbook;
        screen.Press(Key.F9, new Key('i'));
        Assert.Contains("This is the proposed set.", screen.Text, StringComparison.Ordinal);
        screen.Press(Key.CursorDown, Key.CursorDown, Key.CursorDown, Key.CursorRight);
        Assert.Contains("Your set brings", screen.Text, StringComparison.Ordinal);
        Assert.Contains("proposed", screen.Line(screen.Text.Split('\n').Length - 3), StringComparison.Ordinal);
        Assert.Same(before, book.Logbook);
        screen.Press(Key.Esc);
        Assert.DoesNotContain("Your set brings", screen.Text, StringComparison.Ordinal);
    }

    /// <summary>A person who reads before answering.</summary>
    private sealed class Answers(Func<string?> next) : TextReader
    {
        public override string? ReadLine() => next();
    }
}
