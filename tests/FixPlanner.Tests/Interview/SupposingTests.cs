using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Planning.Recomputing;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Interview;

/// <summary>What if: answered at once, and nothing is kept until asked.</summary>
public class SupposingTests
{
    private static readonly Assessor Assessor = new(ShippedPack.Pack);
    private static readonly Supposing Supposing = new(Assessor, ShippedPack.Today);

    [Fact]
    public void Of_NothingSupposed_IsTheProposedSet()
    {
        Supposed same = Supposing.Of(Standing(5), Supposition.None);
        Assert.Same(same.Standing, same.Under);
        Assert.Equal(same.Set.Proposed, same.Set.Ticked);
        Assert.Equal("This is the proposed set.", SupposedWords.Of(same)[0]);
    }

    [Fact]
    public void Of_FixUnticked_SaysWhatIsLostInWords()
    {
        Assessment standing = Standing(5);
        PlanItem gone = standing.Plan.Items.Where(i => i.Points > 0.05).MaxBy(i => i.Points)!;
        Supposed without = Supposing.Of(standing, Supposition.None with { Ticks = Supposition.None.Ticks.Add(gone.Fix.Id, false) });
        IReadOnlyList<string> words = SupposedWords.Of(without);
        Assert.Equal(standing.Plan.Totals.Points - gone.Points!.Value, without.Set.Ticked.Points, 6);
        Assert.Contains("points less than the proposed one", words[0], StringComparison.Ordinal);
        Assert.Contains(words, w => w.StartsWith("Goes out: ", StringComparison.Ordinal));
        Assert.Contains(words, w => w.StartsWith("The best set within these limits brings", StringComparison.Ordinal));
        OfferedFix offered = without.Offered.Single(o => o.Fix.Id == gone.Fix.Id);
        Assert.True(offered is { Ticked: false, Proposed: true, ByHand: true });
    }

    [Fact]
    public void Of_MoreMoney_NeverLessAndComparedWithTheStandingPlan()
    {
        Assessment standing = Standing(9);
        double before = standing.Plan.Totals.Points;
        for (int more = 0; more <= 300; more += 50)
        {
            Supposed rich = Supposing.Of(standing, Supposition.None with { BudgetEur = standing.Situation.Logbook.Limits.BudgetEur + more });
            Assert.True(rich.Set.BestPoints >= before - 1e-9);
            Assert.Equal(standing.Plan.Totals.Points, rich.Set.Proposed.Points, 9);
            before = rich.Set.BestPoints;
        }
    }

    [Fact]
    public void Of_AnotherWeight_BothSetsAreCountedByIt()
    {
        Assessment standing = Standing(7);
        Supposed quiet = Supposing.Of(standing, Supposition.None with { Weights = Supposition.None.Weights.Add("quiet", 3).Add("fuel", 0) });
        Assert.True(quiet.Set.BestPoints >= quiet.Set.Proposed.Points - 1e-9);
        Assert.Equal(quiet.Under.Plan.Totals.Points, quiet.Set.Ticked.Points, 9);
    }

    [Fact]
    public void Of_HigherTopSpeed_PowerIsToldAtItAndTheGatesAnswer()
    {
        Logbook logbook = ShippedPack.Car(5) with { Car = new Dictionary<string, FactEntry> { ["top_speed_now_kmh"] = new(FactValue.Of(110), null, null, "110 km/h") } };
        Assessment standing = Assessor.Assess(logbook, ShippedPack.Today, PlanDepth.Quick);
        (FactEntry? speed, Refusal? refusal) = Supposing.TopSpeed(ShippedPack.Pack, "160 km/h");
        Assert.Null(refusal);
        Supposed fast = Supposing.Of(standing, Supposition.None with { TopSpeed = speed });
        WhatIfChange power = fast.Set.Changes.Single(c => c.Key.StartsWith("air_power_change", StringComparison.Ordinal));
        WhatIfChange drag = fast.Set.Changes.Single(c => c.Key == "drag_area_change_m2");
        Assert.Equal("power that the air takes at 160 km/h", power.Title);

        // Half of 1.2 kg/m3 times drag area times speed cubed.
        Assert.Equal(0.6 * drag.Now!.Value.Likely * Math.Pow(160 / 3.6, 3) / 1000, power.Now!.Value.Likely, 9);
        Assert.Contains(fast.Set.Gates, g => g.Gate.IsGlass && g.State == GateState.InForce);
        Assert.Contains(SupposedWords.Of(fast), w => w.StartsWith("Safety gate in force: ", StringComparison.Ordinal));
        Assert.NotNull(Supposing.TopSpeed(ShippedPack.Pack, "160 kg").Refusal);
    }

    [Fact]
    public void Of_SealsTicked_GlassVentsAndMarginsAreComputedAnewBesideTheCarAsItIs()
    {
        Situation lindle = ShippedPack.Demo("lindle");
        Assessment standing = Assessor.Assess(lindle.Logbook, ShippedPack.Today, PlanDepth.Quick);
        Supposition ticked = Supposition.None with { Ticks = Supposition.None.Ticks.Add("new-door-seals", true).Add("seal-tail", true).Add("blank-front-opening", true) };
        Supposed sealedUp = Supposing.Of(standing, ticked);
        WhatIfChange Change(string key) => sealedUp.Set.Changes.Single(c => c.Key == key);

        // The same models and, but for their number, the same draws as in the plan in full.
        IReadOnlyList<PlannedEffect> inFull = new CarSetPhysics().InUnits(lindle, [.. sealedUp.Set.Fixes.Select(id => ShippedPack.Pack.Fix(id)!)]);
        foreach (string key in new[] { "rear_glass_pull_change_n", "air_changes_change_at_80_kmh_per_h", "cooling_margin_change_k" })
        {
            Spread full = inFull.Single(e => e.Key == key).AsBelieved;
            Assert.NotNull(Change(key).Now);
            Assert.InRange(Change(key).Ticked.Likely, full.Likely - (0.25 * (full.High - full.Low)), full.Likely + (0.25 * (full.High - full.Low)));
        }

        Assert.True(Change("rear_glass_pull_change_n").Ticked.Likely > Change("rear_glass_pull_change_n").Proposed.Likely);
        Assert.True(Change("cooling_margin_change_k").Ticked.Likely < 0);
        Assert.Contains(sealedUp.Set.Changes, c => c.Key == "drag_area_change_m2" && c.Now is not null);
        Assert.Contains(sealedUp.Set.Changes, c => c.Key.StartsWith("air_power_change", StringComparison.Ordinal) && c.Now is not null);
        Assert.Contains(sealedUp.Set.Changes, c => c.Key == "noise_change_dba");
        Assert.Contains(SupposedWords.Of(sealedUp), w => w.StartsWith("Against it: ", StringComparison.Ordinal) && w.Contains("rear glass", StringComparison.Ordinal));
    }

    [Fact]
    public void AsWish_TickedAndUnticked_StandOnTheListsAndAreObeyed()
    {
        Assessment standing = Standing(4);
        string gone = standing.Plan.Items.First(i => i.ForGate is null).Fix.Id;
        string wanted = standing.Plan.LeftOut.First(l => l.Why is LeftOutWhy.BetterElsewhere or LeftOutWhy.NoCause && l.Fix.Cost.Likely < 60 && l.Fix.Requires.Count == 0).Fix.Id;
        Logbook before = standing.Situation.Logbook with { Limits = standing.Situation.Logbook.Limits with { Never = [wanted] } };
        Supposition wish = Supposition.None with { BudgetEur = 500, Hours = 60, Ticks = Supposition.None.Ticks.Add(gone, false).Add(wanted, true) };
        Logbook after = wish.AsWish(ShippedPack.Pack, before.Limits).Aggregate(before, (book, edit) => book.With(edit));
        Assert.Equal([gone], after.Limits.Never);
        Assert.Equal([wanted], after.Limits.Must);
        Assert.Equal(500, after.Limits.BudgetEur);
        Assert.All(wish.AsWish(ShippedPack.Pack, before.Limits), e => Assert.NotEmpty(e.InWords));
        Plan plan = Assessor.Assess(after, ShippedPack.Today, PlanDepth.Quick).Plan;
        Assert.Contains(plan.Items, i => i.Fix.Id == wanted);
        Assert.DoesNotContain(plan.Items, i => i.Fix.Id == gone);
    }

    private static Assessment Standing(int seed) => Assessor.Assess(ShippedPack.Car(seed), ShippedPack.Today, PlanDepth.Quick);
}
