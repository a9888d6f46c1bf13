using System.Collections.Concurrent;
using FixPlanner.Commands;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Safety;
using FixPlanner.Files.Logbooks;
using FixPlanner.Journeys.Screens;
using FixPlanner.Wizard;
using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Journeys.Jobs;

/// <summary>What takes time is worked out beside the keys: no key waits for it, and no screen shows what no longer holds.</summary>
public sealed class ForesightTests
{
    private static readonly Assessor Assessor = new(JobFiles.Pack);

    [Fact]
    public void The_last_step_is_the_plan_that_files_get()
    {
        Assessment quick = Assessor.Assess(Read("marram"), JobFiles.Today, PlanDepth.Quick);
        List<Assessment> steps = [.. Assessor.InSteps(quick, CancellationToken.None, CancellationToken.None)];
        Assert.Equal([0, 100, 200, 300, 400, 500], steps.Select(s => s.Plan.DrawsFinished));
        Assert.Equal(
            PlanCommand.Written(Assessor.Assess(Read("marram"), JobFiles.Today, PlanDepth.Full), "json"),
            PlanCommand.Written(steps[^1], "json"));
    }

    [Fact]
    public void Without_time_for_the_questions_the_best_so_far_is_told_and_the_proof_follows()
    {
        Assessment quick = Assessor.Assess(Read("marram"), JobFiles.Today, PlanDepth.Quick);
        List<Assessment> steps = [.. Assessor.InSteps(quick, new CancellationToken(canceled: true), CancellationToken.None)];
        Assert.False(steps[0].Plan.QuestionsProven);
        Assert.All(steps.Skip(1), s => Assert.True(s.Plan.QuestionsProven));
        Interviewer interviewer = new(JobFiles.Pack, JobFiles.Today);
        InterviewState walk = new(quick.Situation.Logbook, new(Section.WalkRound));
        OpenMustKnow[] waitedFor = [.. quick.Gates.Where(g => g.State == GateState.NotChecked).SelectMany(g => g.Open)];
        QuestionKey first = Assert.NotNull(interviewer.Proposed(walk, steps[0]));
        Assert.Contains(waitedFor, o => o.Ask == first.Id);

        // With the gates' own questions passed by it is worth for the plan that proposes: something open, worth asking as far as is known.
        QuestionKey[] passed = [.. waitedFor.Select(o => new QuestionKey(o.IsFact ? QuestionKind.Fact : QuestionKind.Observation, o.Ask))];
        QuestionKey next = Assert.NotNull(interviewer.Proposed(walk with { PassedBy = [.. passed] }, steps[0]));
        Assert.DoesNotContain(next, passed);
        Assert.False(quick.Situation.Findings.ContainsKey(next.Id));
        Assert.Null(quick.Situation.Fact(next.Id));
        Assert.True(!steps[0].Gains.TryGetValue(next, out double gain) || gain > 0, $"{next} is worth {gain}");
        Assert.True(steps[^1].Gains.ContainsKey(next));
    }

    [Fact]
    public void Once_stopped_no_step_follows()
    {
        Assessment quick = Assessor.Assess(Read("marram"), JobFiles.Today, PlanDepth.Quick);
        using CancellationTokenSource stop = new();
        int steps = 0;
        foreach (Assessment step in Assessor.InSteps(quick, CancellationToken.None, stop.Token))
        {
            steps++;
            stop.Cancel();
        }

        Assert.Equal(1, steps);
    }

    [Fact]
    public void An_answer_on_the_walk_is_taken_at_once_and_the_next_question_comes_by_itself()
    {
        using JobFiles files = new();
        using OpenLogbook book = OpenLogbook.Open(files.Copy("pennock"), JobFiles.Pack, out _)!;
        using Screen screen = new Screen(new WizardProgram(book, JobFiles.Pack, JobFiles.Today)).WithLoop();
        screen.WaitFor(() => !screen.Text.Contains("being worked out", StringComparison.Ordinal));
        screen.Press(Key.Home, Key.Enter);
        screen.WaitFor(() => screen.Shell.ScreenId != "choosing");
        while (screen.Text.Contains("Answer:", StringComparison.Ordinal))
        {
            screen.Press(Key.Enter);
            screen.WaitFor(() => screen.Shell.ScreenId != "choosing");
        }

        string asked = screen.Shell.ScreenId;
        screen.Press(Key.D1);
        if (screen.Shell.ScreenId == "choosing")
        {
            string kept = File.ReadAllText(book.Path);
            screen.Type("2");
            Assert.True(screen.Shell.ScreenId != "choosing" || File.ReadAllText(book.Path) == kept);
        }

        screen.WaitFor(() => screen.Shell.ScreenId != "choosing");
        Assert.NotEqual(asked, screen.Shell.ScreenId);
        screen.Press(Key.F2);
        Assert.NotEqual("choosing", screen.Shell.ScreenId);
    }

    [Fact]
    public void The_plan_says_how_many_draws_are_finished_until_all_are()
    {
        using JobFiles files = new();
        using OpenLogbook book = OpenLogbook.Open(files.Copy("pennock"), JobFiles.Pack, out _)!;
        using Screen screen = new Screen(new WizardProgram(book, JobFiles.Pack, JobFiles.Today)).WithLoop();
        HashSet<string> seen = [];
        screen.Press(Key.F9);
        Assert.Contains("are being worked out", screen.Text, StringComparison.Ordinal);
        screen.WaitFor(() =>
        {
            seen.Add(screen.Line(3));
            return !screen.Text.Contains("being worked out", StringComparison.Ordinal);
        });
        Assert.Contains(seen, line => line.Contains("the draws have just begun", StringComparison.Ordinal) || line.Contains("00 of 500 draws are finished", StringComparison.Ordinal));
        Assert.Matches("[0-9]+ % chance to overrun", screen.Text.ReplaceLineEndings(" "));
    }

    [Fact]
    public void A_result_of_a_logbook_that_has_changed_since_is_dropped()
    {
        using JobFiles files = new();
        using OpenLogbook book = OpenLogbook.Open(files.Copy("pennock"), JobFiles.Pack, out _)!;
        WizardProgram program = new(book, JobFiles.Pack, JobFiles.Today);
        ConcurrentQueue<Message> told = [];
        program.Begin();
        program.Attach(told.Enqueue);
        SpinWait.SpinUntil(() => told.OfType<Foreseen>().Any(f => f.Assessment.Plan.Depth == PlanDepth.Full), TimeSpan.FromSeconds(30));
        Message old = told.Last();

        program.Update(new Asked("before"));
        program.Update(new Asked("before"));
        program.Update(new Chosen(Section.Aims.ToString(), $"{QuestionKind.Aim}:quiet", "1"));
        Assert.Equal("report-to-come", Report(program));
        program.Update(old);
        Assert.Equal("report-to-come", Report(program));
        SpinWait.SpinUntil(() => told.OfType<Foreseen>().Any(f => ReferenceEquals(f.Assessment.Situation.Logbook, book.Logbook) && f.Assessment.Plan.Depth == PlanDepth.Full), TimeSpan.FromSeconds(30));
        program.Update(told.Last());
        Assert.Equal("report", Report(program));
    }

    private static string Report(WizardProgram program)
    {
        program.Update(new Asked("plan"));
        program.Update(new Asked("next"));
        return program.Update(new Asked("next")).Screen.Id;
    }

    private static Logbook Read(string car) => LogbookReader.ReadFile(JobFiles.Demo(car), JobFiles.Pack).Logbook!;
}
