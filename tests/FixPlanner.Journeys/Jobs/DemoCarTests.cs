using FixPlanner.Commands;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Safety;
using FixPlanner.Files.Logbooks;

namespace FixPlanner.Journeys.Jobs;

/// <summary>The three invented cars tell their three stories.</summary>
public sealed class DemoCarTests
{
    private static readonly Lazy<Assessor> Assessor = new(() => new(JobFiles.Pack));

    [Theory]
    [InlineData("lindle", "seal-lifts-at-speed")]
    [InlineData("marram", "rear-engine-starved")]
    [InlineData("pennock", "scuttle-short-circuit")]
    [InlineData("pennock", "gutter-beats-with-glass")]
    public void The_story_of_the_walk_round_is_among_the_surest_causes(string car, string cause)
    {
        Assessment a = Assess(car, PlanDepth.Quick);
        double p = a.Beliefs.Probability(cause);
        Assert.True(p > 0.5, $"{cause} is believed at {p:0.00}");
        Assert.InRange(a.Beliefs.Probabilities.Count(x => x > p), 0, 5);
    }

    [Fact]
    public void Twice_the_power_puts_the_rear_glass_ahead_of_every_fix()
    {
        Assessment a = Assess("lindle", PlanDepth.Quick);
        Assert.True(a.Plan.Gates[0].Gate.IsGlass);
        Assert.Equal(GateState.InForce, a.Plan.Gates[0].State);
        Assert.Contains(a.Plan.LeftOut, l => l.Why == LeftOutWhy.Gate && l.Gate!.Gate.IsGlass);
        Assert.DoesNotContain(a.Plan.Items, i => i.Fix.SealsCabin);
    }

    [Fact]
    public void What_the_seals_would_do_waits_for_the_glass()
    {
        Assessment a = Assess("lindle", PlanDepth.Full);
        Assert.Contains(a.Plan.Waiting, w => w.Fix.ActsOn.ContainsKey("seal-lifts-at-speed") && w.Gate.Gate.IsGlass);
        Assert.All(a.Plan.Waiting, w => Assert.DoesNotContain(a.Plan.Items, i => i.Fix.Id == w.Fix.Id));
    }

    [Theory]
    [InlineData("lindle")]
    [InlineData("marram")]
    [InlineData("pennock")]
    public void Nothing_is_offered_for_what_was_looked_at_and_found_in_order(string car)
    {
        Plan plan = Assess(car, PlanDepth.Quick).Plan;
        Assert.DoesNotContain(plan.Items, i => i.Fix.Id is "visor-off" or "bonnet-spacers-off" or "winter-blanking");
    }

    [Fact]
    public void An_empty_logbook_puts_no_gate_in_force_and_still_gives_a_plan_to_look_first()
    {
        Assessment a = Assessor.Value.Assess(new Logbook(), JobFiles.Today, PlanDepth.WithQuestions);
        Assert.DoesNotContain(a.Plan.Gates, g => g.State == GateState.InForce);
        Assert.All(a.Plan.Items, i => Assert.NotEqual(ShownAs.Do, i.ShownAs));
        Assert.StartsWith("Look first", a.Plan.Headline, StringComparison.Ordinal);
        Assert.NotNull(a.Plan.NextQuestion);
    }

    [Theory]
    [InlineData("text")]
    [InlineData("markdown")]
    [InlineData("html")]
    [InlineData("json")]
    public void Two_runs_on_the_same_logbook_give_the_same_bytes(string format)
    {
        string first = PlanCommand.Written(Assess("pennock", PlanDepth.Full), format);
        string second = PlanCommand.Written(new Assessor(JobFiles.Pack).Assess(Read("pennock"), JobFiles.Today, PlanDepth.Full), format);
        Assert.Equal(first, second);
        Assert.Contains("no certificate", string.Join(" ", first.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("lindle")]
    [InlineData("marram")]
    [InlineData("pennock")]
    public void The_set_fits_money_and_hours_and_obeys_what_comes_first(string car)
    {
        Plan plan = Assess(car, PlanDepth.Quick).Plan;
        Assert.True(plan.Totals.LikelyCostEur <= plan.Totals.BudgetEur + plan.Totals.ShortfallEur + 0.01);
        Assert.True(plan.Totals.LikelyHours <= plan.Totals.HoursLimit + 0.01);
        Logbook book = Read(car);
        HashSet<string> inPlan = [.. plan.Items.Select(i => i.Fix.Id), .. book.OnTheCar];
        Situation s = Situation.Of(JobFiles.Pack, book, JobFiles.Today);
        foreach (PlanItem item in plan.Items.Where(i => i.Stage != Stage.Safety))
        {
            Assert.All(item.Fix.Requires.Where(r => r.UnlessObservation is null || s.Answer(r.UnlessObservation) != r.UnlessAnswer), r => Assert.Contains(r.Fix, inPlan));
            Assert.All(item.Fix.Conflicts.Where(c => c.Kind == Core.Knowledge.ConflictKind.Excludes), c => Assert.DoesNotContain(c.Fix, inPlan));
        }
    }

    private static Logbook Read(string car)
    {
        LogbookReading reading = LogbookReader.ReadFile(JobFiles.Demo(car), JobFiles.Pack);
        Assert.Empty(reading.Problems);
        return reading.Logbook!;
    }

    private static Assessment Assess(string car, PlanDepth depth) => Assessor.Value.Assess(Read(car), JobFiles.Today, depth);
}
