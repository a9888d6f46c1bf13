using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Safety;

namespace FixPlanner.RulePack.Tests.Gates;

/// <summary>What holds of the gates on every logbook, tried on made-up ones: the same seed gives the same logbook.</summary>
public class GatePropertyTests
{
    private const int Books = 40;
    private static readonly Lazy<BeliefNetwork> Network = new(() => BeliefNetwork.Of(ShippedPack.Pack));
    private static readonly Lazy<Planner> Planner = new(() => new(ShippedPack.Pack));

    [Fact]
    public void Gates_KnowledgeTakenAway_StayInForce()
    {
        int tried = 0;
        for (int seed = 0; seed < Books; seed++)
        {
            Logbook book = RandomLogbook.Of(seed);
            Random chance = new(seed);
            foreach (GateStatus gate in HarmlessCar.Gates(book).Where(g => g.State == GateState.InForce))
            {
                Logbook less = WithoutMost(book, gate, chance);

                Assert.True(HarmlessCar.State(gate.Gate.Id, less).State == GateState.InForce, $"seed {seed}: {gate.Gate.Id}, {gate.Triggers[0].InWords}");
                tried++;
            }
        }

        Assert.InRange(tried, Books, int.MaxValue);
    }

    [Fact]
    public void Gates_AnswersThatTriggered_StayInForceWhateverIsAnsweredLater()
    {
        for (int seed = 0; seed < Books; seed++)
        {
            Logbook book = RandomLogbook.Of(seed);
            string[] byAnswer = [.. HarmlessCar.Gates(book).Where(g => g.State == GateState.InForce && g.Triggers.Any(t => t.Observation is not null)).Select(g => g.Gate.Id)];
            Round later = new("later", HarmlessCar.Today, [], [.. book.Rounds.SelectMany(r => r.Findings).Select(f => new Finding(f.Observation, null, NotAnswered.NotSure))], new Dictionary<string, FactEntry>());

            IReadOnlyList<GateStatus> now = HarmlessCar.Gates(book with { Rounds = [.. book.Rounds, later, .. HarmlessCar.Logbook().Rounds.Select(r => r with { Id = "harmless", Facts = new Dictionary<string, FactEntry>() })] });

            Assert.All(byAnswer, id => Assert.Equal(GateState.InForce, now.Single(g => g.Gate.Id == id).State));
        }
    }

    [Fact]
    public void Gates_MoneyHoursSkillAndWeights_MoveNone()
    {
        for (int seed = 0; seed < Books; seed++)
        {
            Logbook book = RandomLogbook.Of(seed);
            Random chance = new(seed + 1000);
            Logbook other = book with
            {
                Aims = ShippedPack.Pack.Scales.Aims.ToDictionary(a => a.Id, _ => (double)chance.Next(4)),
                Limits = book.Limits with { BudgetEur = chance.Next(2) * 300, Hours = chance.Next(40), Skill = (Skill)chance.Next(3), Never = [.. ShippedPack.Pack.Fixes.Where(_ => chance.Next(3) == 0).Select(f => f.Id)] },
            };

            Assert.Equal(HarmlessCar.Gates(book).Select(g => (g.Gate.Id, g.State)), HarmlessCar.Gates(other).Select(g => (g.Gate.Id, g.State)));
        }
    }

    [Fact]
    public void Gates_ReadAndAcknowledged_AllStandWhereTheyStood()
    {
        for (int seed = 0; seed < Books; seed++)
        {
            Logbook book = RandomLogbook.Of(seed);
            Logbook read = book with { Read = [.. ShippedPack.Pack.Gates.Select(g => new Acknowledgement(g.Id, HarmlessCar.Today))] };

            Plan plan = PlanOf(read);

            Assert.Equal(HarmlessCar.Gates(book).Select(g => (g.Gate.Id, g.State)), HarmlessCar.Gates(read).Select(g => (g.Gate.Id, g.State)));
            Assert.Equal(ShippedPack.Pack.Gates.Count, plan.Gates.Count);
            Assert.All(plan.Gates, g => Assert.Equal(HarmlessCar.Today, g.ReadOn));
        }
    }

    [Theory]
    [InlineData("rubber with strip")]
    [InlineData("rubber without strip")]
    [InlineData(null)]
    public void RearGlass_FasterThanNowPlanned_IsInForceAheadOfEveryFix(string? hold)
    {
        for (int seed = 0; seed < Books; seed++)
        {
            Logbook book = RandomLogbook.Of(seed);
            Dictionary<string, FactEntry> car = book.Car.Where(f => f.Key is not ("rear_glass_hold" or "top_speed_now_kmh" or "top_speed_planned_kmh" or "power_now_kw" or "power_planned_kw")).ToDictionary();
            FactEntry Entry(double value) => new(FactValue.Of(value), null, HarmlessCar.Today, "");
            (string now, string planned) = seed % 2 == 0 ? ("top_speed_now_kmh", "top_speed_planned_kmh") : ("power_now_kw", "power_planned_kw");
            (car[now], car[planned]) = (Entry(60), Entry(61 + (seed / 3.0)));
            if (hold is not null)
            {
                car["rear_glass_hold"] = new(FactValue.Choice(hold), null, null, hold);
            }

            Plan plan = PlanOf(book with { Car = car });

            GateStatus glass = plan.Gates.Single(g => g.Gate.IsGlass);
            Assert.Equal(GateState.InForce, glass.State);
            Assert.All(plan.Gates.TakeWhile(g => g != glass), g => Assert.Equal((GateState.InForce, GateLevel.Stop), (g.State, g.Gate.Level)));
            Assert.All(plan.Items, item => Assert.False(Blocked(glass, item), $"seed {seed}: {item.Fix.Id} stands in the plan although the glass gate rules it out"));
        }
    }

    [Fact]
    public void EmptyLogbook_PutsNoGateInForce_AndStillGivesAPlan()
    {
        Plan plan = PlanOf(new());

        Assert.DoesNotContain(plan.Gates, g => g.State == GateState.InForce);
        Assert.NotEmpty(plan.Items);
        Assert.NotNull(plan.NextQuestion);
    }

    private static bool Blocked(GateStatus gate, PlanItem item) =>
        gate.Gate.BlocksFixes.Contains(item.Fix.Id) && !gate.Gate.HelpedByFixes.Contains(item.Fix.Id);

    private static Plan PlanOf(Logbook book)
    {
        Situation s = Situation.Of(ShippedPack.Pack, book, HarmlessCar.Today);
        return Planner.Value.Make(s, Network.Value.Infer(s), PlanDepth.Quick).Plan;
    }

    // All that its triggers do not name goes, some at random, the rest too when chance says so.
    private static Logbook WithoutMost(Logbook book, GateStatus gate, Random chance)
    {
        HashSet<string> facts = [.. gate.Triggers.SelectMany(t => t.Facts)];
        HashSet<string> looks = [.. gate.Triggers.Select(t => t.Observation).OfType<string>()];
        foreach (Condition condition in gate.Gate.TriggeredByFacts.Where(c => c.All.Any(t => t.Fact is { } f && facts.Contains(f))))
        {
            // What counts also when unknown may go.
            foreach (ConditionTest test in condition.All.Where(t => !t.UnknownCounts && t.Comparison != Comparison.IsUnknown))
            {
                facts.UnionWith(new[] { test.Fact, test.OtherFact }.OfType<string>());
                looks.UnionWith(new[] { test.Observation }.OfType<string>());
            }
        }

        if (facts.Contains("power_raised_percent"))
        {
            facts.UnionWith(["power_as_built_kw", "power_now_kw", "power_planned_kw"]);
        }

        int keep = chance.Next(3);
        Logbook less = book;
        foreach (Observation o in ShippedPack.Pack.Observations.Where(o => !looks.Contains(o.Id) && chance.Next(2) >= keep))
        {
            bool filled = ShippedPack.Pack.Facts.Any(f => f.FillsIn?.Observation == o.Id && facts.Contains(f.Id));
            less = filled ? less : less.WithoutAnswer(o.Id);
        }

        foreach (Fact f in ShippedPack.Pack.Facts.Where(f => !facts.Contains(f.Id) && !(f.FillsIn is { } fills && looks.Contains(fills.Observation)) && chance.Next(2) >= keep))
        {
            less = less.WithoutFact(f.Id);
        }

        return less;
    }
}
