using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Planning.Recomputing;
using FixPlanner.Core.Safety;

namespace FixPlanner.Tests.Planning;

/// <summary>Every line says why it is there, and every fix left out why it is not.</summary>
public class PlanReasonsTests
{
    // What is asked here does not hang on the models of the car, which take seconds.
    private static readonly Planner WithoutPhysics = new(ShippedPack.Pack) { Physics = null };

    [Fact]
    public void Make_ManyCars_EveryKindOfReasonIsTrueOfItsFix()
    {
        HashSet<LeftOutWhy> met = [];
        for (int seed = 0; seed < 40; seed++)
        {
            Logbook logbook = ShippedPack.Car(seed, harmless: seed % 4 != 0);
            logbook = (seed % 5) switch { 1 => Particular(logbook), 2 => Rich(logbook), 3 => Old(logbook), _ => logbook };
            (Situation s, Beliefs beliefs) = ShippedPack.Look(logbook);
            Plan plan = ShippedPack.Planner.Make(s, beliefs, PlanDepth.WithQuestions).Plan;
            string[] chosen = [.. plan.Items.Select(i => i.Fix.Id)];
            double left = logbook.Limits.BudgetEur!.Value - plan.Totals.SafetyEur;
            foreach (LeftOut l in plan.LeftOut)
            {
                met.Add(l.Why);
                Assert.NotEmpty(l.InWords);
                bool so = l.Why switch
                {
                    LeftOutWhy.Gate => l.Gate is { HoldsFixes: true },
                    LeftOutWhy.NotForThisCar => s.Is(l.Fix.AppliesWhen) == Truth.No,
                    LeftOutWhy.TooDear => l.Fix.Cost.Likely > left - 0.01 || l.Fix.Hours.Likely > logbook.Limits.Hours!.Value - 0.02 - plan.Items.Where(i => i.ForGate is not null).Sum(i => i.Fix.Hours.Likely),
                    LeftOutWhy.Conflict => ShippedPack.Pack.Fixes.Any(f => chosen.Contains(f.Id) && (Excludes(f, l.Fix) || Excludes(l.Fix, f))),
                    LeftOutWhy.Requires => l.Fix.Requires.Count > 0,
                    LeftOutWhy.NoCause => l.Fix.ActsOn.Keys.All(m => beliefs.Probability(m) < 0.5),
                    LeftOutWhy.Never => logbook.Limits.Never.Contains(l.Fix.Id),
                    LeftOutWhy.StaysOriginal => logbook.Limits.StaysOriginal.Contains(l.Fix.Zone),
                    LeftOutWhy.Skill => l.Fix.Skill > logbook.Limits.Skill,
                    LeftOutWhy.OnTheCar => s.OnTheCar.Contains(l.Fix.Id),
                    LeftOutWhy.Failed => logbook.Work.Any(w => w.Fix == l.Fix.Id && w.State == WorkState.Failed),
                    LeftOutWhy.Margin => l.Fix.AirWays.Count > 0 && new CarSetPhysics().Margins(s)([.. plan.Items.Select(i => i.Fix).Append(l.Fix)]).Count > 0,
                    LeftOutWhy.Dominated => WithIt(s, beliefs, chosen, l.Fix.Id) <= plan.Totals.Points + 1e-9,
                    LeftOutWhy.BetterElsewhere => WithIt(s, beliefs, chosen, l.Fix.Id) > plan.Totals.Points,
                    _ => true,
                };
                Assert.True(so, $"car {seed}, {l.Fix.Id}: {l.Why}, {l.InWords}");
            }
        }

        Assert.Equal(Enum.GetValues<LeftOutWhy>().Order(), met.Order());
    }

    [Fact]
    public void Make_LookedBetterBefore_WasInTheBestSetBeforeTheCarWasLookedAt()
    {
        int met = 0;
        int planned = 0;
        for (int seed = 0; seed < 15; seed++)
        {
            Logbook logbook = ShippedPack.Car(seed);
            Plan plan = ShippedPack.Plan(logbook, PlanDepth.WithQuestions);
            string[] ruledOut = [.. plan.LeftOut.Where(l => l.Why is LeftOutWhy.NotForThisCar or LeftOutWhy.Gate).Select(l => l.Fix.Id)];
            Plan before = ShippedPack.Plan(logbook with { Rounds = [], Limits = logbook.Limits with { Never = ruledOut } });
            LeftOut[] better = [.. plan.LeftOut.Where(l => l.Why == LeftOutWhy.LookedBetterBefore)];
            met += better.Length;
            planned += better.Count(l => before.Items.Any(i => i.Fix.Id == l.Fix.Id));
            Assert.All(better, l => Assert.StartsWith("looked better before the car was looked at: ", l.InWords, StringComparison.Ordinal));
        }

        // What must come first, and the chance that evidence was at fault, hang on the looks themselves: a few stand otherwise without any.
        Assert.True(met > 20 && planned >= 0.9 * met, $"{planned} of {met}");
    }

    [Fact]
    public void Make_SafetyLines_StopThenGlassThenFixFirstThenCaution()
    {
        HashSet<int> ranks = [];
        for (int seed = 0; seed < 40; seed++)
        {
            Plan plan = ShippedPack.Plan(ShippedPack.Car(seed, harmless: false));
            GateStatus[] order = [.. plan.Items.Select(i => i.ForGate).OfType<GateStatus>()];
            int[] levels = [.. order.Select(g => g.Gate.Level == GateLevel.Stop ? 0 : g.Gate.IsGlass ? 1 : g.Gate.Level == GateLevel.FixFirst ? 2 : 3)];
            Assert.Equal(levels.Order(), levels);
            Assert.Equal(order.Length, plan.Items.TakeWhile(i => i.ForGate is not null).Count());
            ranks.UnionWith(levels);
        }

        Assert.Superset(new HashSet<int> { 0, 1, 2 }, ranks);
    }

    [Fact]
    public void Make_LinesInFull_OpenIntoCauseObservationEffectAndSource()
    {
        for (int seed = 0; seed < 3; seed++)
        {
            (Situation s, Beliefs beliefs) = ShippedPack.Look(ShippedPack.Car(seed));
            foreach (PlanItem item in WithoutPhysics.Make(s, beliefs, PlanDepth.Full).Plan.Items)
            {
                Assert.NotEmpty(item.Effects);
                Assert.NotEmpty(item.Fix.EffectsBasis.Text);
                Assert.Equal(item.Fix.ActsOn.Keys.Order(), item.Reasons.Select(r => r.Cause).Order());
                foreach (PlanReason reason in item.Reasons)
                {
                    Assert.Equal(beliefs.Probability(reason.Cause), reason.Probability);
                    Assert.Equal(beliefs.Reasons(reason.Cause).Count > 0, reason.Observation is not null);
                    Assert.True(reason.Observation is null || s.Answer(reason.Observation) == reason.Answer);
                }
            }
        }
    }

    [Fact]
    public void Make_TrialsInFull_ValueOfInformationDecidesAboveOneHalf()
    {
        int first = 0;
        int straight = 0;
        for (int seed = 0; seed < 12; seed++)
        {
            (Situation s, Beliefs beliefs) = ShippedPack.Look(ShippedPack.Car(seed));
            Plan plan = WithoutPhysics.Make(s, beliefs, PlanDepth.Full).Plan;
            foreach (PlanItem item in plan.Items.Where(i => i.Trial is not null && i.Fix.ActsOn.Keys.Max(beliefs.Probability) >= 0.5))
            {
                bool pays = item.Trial!.Points > 0.005 * plan.Totals.Points;
                Assert.Equal(pays ? ShownAs.TrialFirst : ShownAs.Do, item.ShownAs);
                Assert.Equal(pays, item.Stage == Stage.Trial);
                Assert.InRange(item.Trial.ChanceOfBetter + item.Trial.ChanceOfWorse, 0, 1);
                _ = pays ? first++ : straight++;
            }
        }

        Assert.True(first > 0 && straight > 0, $"{first} tried first, {straight} straight");
    }

    [Fact]
    public void Make_PackReadInAnotherOrder_SamePlan()
    {
        KnowledgePack pack = ShippedPack.Pack;
        KnowledgePack turned = pack with
        {
            Fixes = [.. pack.Fixes.Reverse()],
            Mechanisms = [.. pack.Mechanisms.Reverse()],
            Observations = [.. pack.Observations.Reverse()],
        };
        BeliefNetwork network = BeliefNetwork.Of(turned);
        Planner planner = new(turned);
        for (int seed = 0; seed < 6; seed++)
        {
            Logbook logbook = ShippedPack.Car(seed);
            Situation s = Situation.Of(turned, logbook, ShippedPack.Today);
            Plan one = ShippedPack.Plan(logbook);
            Plan other = planner.Make(s, network.Infer(s), PlanDepth.Quick).Plan;
            Assert.Equal(one.Items.Select(i => (i.Rank, i.Fix.Id, i.Stage)), other.Items.Select(i => (i.Rank, i.Fix.Id, i.Stage)));
            Assert.Equal(one.LeftOut.Select(l => (l.Fix.Id, l.Why)), other.LeftOut.Select(l => (l.Fix.Id, l.Why)));
            Assert.Equal(one.Totals.Points, other.Totals.Points, 6);
        }
    }

    /// <summary>Points of the plan with one more fix, money and hours aside.</summary>
    private static double WithIt(Situation s, Beliefs beliefs, string[] chosen, string fix) => ShippedPack.Planner.Try(s, beliefs, [.. chosen, fix]).Ticked.Points;

    /// <summary>An owner with lists and little skill, who has tried things.</summary>
    private static Logbook Particular(Logbook logbook) => logbook with
    {
        Limits = logbook.Limits with { Never = ["wheel-discs"], StaysOriginal = ["mirror"], Skill = Skill.Anyone },
        Work = [new("seal-tail", WorkState.Fitted, ShippedPack.Today), new("roof-tail-lip", WorkState.Failed, ShippedPack.Today)],
    };

    private static Logbook Rich(Logbook logbook) => logbook with { Limits = logbook.Limits with { BudgetEur = 3000, Hours = 300 } };

    /// <summary>Water-cooled with a known power, rear glass in old rubber: a car with margins.</summary>
    private static Logbook Old(Logbook logbook) => logbook with
    {
        Car = new Dictionary<string, FactEntry>
        {
            ["engine_cooling"] = new(FactValue.Choice("water"), null, null, "water"),
            ["power_now_kw"] = new(FactValue.Of(45), null, null, "45 kW"),
            ["top_speed_now_kmh"] = new(FactValue.Of(135), null, null, "135 km/h"),
            ["rear_glass_hold"] = new(FactValue.Choice("rubber without strip"), null, null, "rubber without strip"),
            ["rear_rubber_year_made"] = new(FactValue.Of(1978), null, null, "1978"),
        },
    };

    private static bool Excludes(Fix one, Fix other) => one.Conflicts.Any(c => c.Kind == ConflictKind.Excludes && c.Fix == other.Id);
}
