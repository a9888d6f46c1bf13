using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Planning.Recomputing;

namespace FixPlanner.Tests.Planning.Recomputing;

/// <summary>A set computed anew on the demo estate. No measured car was found for it; signs, order and limits are held here, the network itself against closed forms elsewhere.</summary>
public sealed class CarSetPhysicsTests
{
    private static readonly Situation Lindle = ShippedPack.Demo("lindle");

    private static readonly CarSetPhysics Physics = new();

    [Fact]
    public void Changes_SealsRaiseTheLoadAndMoreSealsRaiseItMore()
    {
        double some = Glass("seal-tail"), more = Glass("seal-tail", "new-door-seals");

        Assert.True(some > 0);
        Assert.True(more > some);
    }

    [Fact]
    public void Changes_OutletWithNewSeals_TakesPartOfTheRiseAway() => Assert.True(Glass("new-door-seals", "seal-tail", "restore-cabin-outlets") < Glass("new-door-seals", "seal-tail"));

    [Fact]
    public void Changes_SetThatTouchesNoWayOfTheAir_LeavesAllToThePack() => Assert.Empty(Physics.Changes(Lindle, Set("wheel-discs")));

    [Fact]
    public void Changes_TailPlatesBesideSeals_KeepThePacksPart() => Assert.True(Glass("new-door-seals", "tail-plates") < Glass("new-door-seals"));

    [Fact]
    public void InUnits_Seals_TellPullInNewtonsAndFreshAirInChanges()
    {
        IReadOnlyList<PlannedEffect> effects = Physics.InUnits(Lindle, Set("new-door-seals", "seal-tail"));

        Assert.True(effects.Single(e => e.Key == "rear_glass_pull_change_n").AsBelieved.Likely > 50);
        Assert.True(effects.Single(e => e.Key == "air_changes_change_at_80_kmh_per_h").AsBelieved.Likely < 0);
        Assert.All(effects, e => Assert.NotEmpty(e.Origin!.Formula));
    }

    [Fact]
    public void InUnits_Blanking_CostsKelvins() =>
        Assert.True(Physics.InUnits(Lindle, Set("blank-front-opening")).Single(e => e.Key == "cooling_margin_change_k").AsBelieved.Likely < 0);

    [Theory]
    [InlineData("blank-front-opening", false)]
    [InlineData("open-bay-exit-into-arches", true)]
    public void InUnits_WorkOnTheBay_TellsKelvinsStandingClimbingAndFast(string fix, bool cooler)
    {
        PlannedEffect[] kelvins = [.. Physics.InUnits(Lindle, Set(fix)).Where(e => e.Unit == "K")];

        Assert.Equal(["cooling_margin_standing_change_k", "cooling_margin_climbing_change_k", "cooling_margin_change_k"], kelvins.Select(e => e.Key));
        Assert.All(kelvins, e => Assert.True(cooler ? e.AsBelieved.Likely > 0 : e.AsBelieved.Likely < 0, $"{e.Key} {e.AsBelieved}"));
        Assert.All(kelvins, e => Assert.NotNull(e.MattersMost));
    }

    // Closing the gap behind the bonnet lowers the pressure in the bay where air went in there, so more comes through the core; parked nothing drives it.
    [Fact]
    public void InUnits_GapBehindTheBonnetClosed_WorksThroughThePressureInTheBay()
    {
        PlannedEffect[] kelvins = [.. Physics.InUnits(Lindle, Set("seal-bonnet-rear-edge")).Where(e => e.Unit == "K")];

        Assert.Equal(0, kelvins[0].AsBelieved.Likely, 1e-9);
        Assert.True(kelvins[2].AsBelieved.Low < kelvins[2].AsBelieved.High);
    }

    [Fact]
    public void Plan_EveryEffectOnCooling_IsToldInKelvinsToo()
    {
        (Situation s, Core.Diagnosis.Beliefs beliefs) = ShippedPack.Look(Lindle.Logbook);
        Plan plan = ShippedPack.Planner.Make(s, beliefs, PlanDepth.Full).Plan;

        Assert.All(
            plan.Items.Select(i => i.Effects).Append(plan.Totals.Effects).Where(all => all.Any(e => e.Key == "cooling_change_steps")),
            all => Assert.Equal(3, all.Count(e => e.Key.StartsWith("cooling_margin", StringComparison.Ordinal))));
    }

    [Fact]
    public void Margins_SealingOverOldRubber_BreaksTheGlassMarginAndNamesIt()
    {
        MarginBreak broken = Physics.Margins(Lindle)(Set("new-door-seals", "seal-tail"))[0];

        Assert.Equal("rear-glass", broken.Margin);
        Assert.Contains("km/h", broken.InWords);
        Assert.Empty(Physics.Margins(Lindle)(Set("wheel-discs")));
    }

    [Fact]
    public void Margins_BlankingACarThatNeverRanHot_BreaksTheCoolingMarginOnlyWhenMorePowerIsPlanned()
    {
        Assert.Equal("never", Lindle.Answer("heat-when"));
        Assert.Contains(Physics.Margins(Lindle)(Set("blank-front-opening")), b => b.Margin == "cooling");

        Dictionary<string, FactEntry> car = new(Lindle.Logbook.Car) { ["power_planned_kw"] = Lindle.Logbook.Car["power_now_kw"] };
        Situation asItIs = Situation.Of(ShippedPack.Pack, Lindle.Logbook with { Car = car }, ShippedPack.Today);
        Assert.DoesNotContain(Physics.Margins(asItIs)(Set("blank-front-opening")), b => b.Margin == "cooling");
    }

    [Fact]
    public void Margins_OpeningTheBayIntoTheScuttle_BreaksNothingThatItDoesNotTouch() =>
        Assert.DoesNotContain(Physics.Margins(Lindle)(Set("close-bulkhead-holes")), b => b.Margin is "fumes" or "cooling");

    [Fact]
    public void Plan_Lindle_ShowsSealingAgainstTheGlass()
    {
        (Situation s, Core.Diagnosis.Beliefs beliefs) = ShippedPack.Look(Lindle.Logbook);
        Plan plan = ShippedPack.Planner.Make(s, beliefs, PlanDepth.Full).Plan;

        Assert.Contains(plan.Gates.Single(g => g.Gate.Id == "rear-glass").Figures, f => f.Key == "rear_glass_pull_change_by_sealing_n" && f.Range.Low > 0);
        Assert.NotEmpty(plan.SpeedRise);
        Assert.Contains(plan.Totals.Effects, e => e.Key == "fuel_change_at_100_kmh_l_per_100km");
        Assert.All(plan.Items.SelectMany(i => i.Effects), e => Assert.NotNull(e.Origin));
    }

    [Fact]
    public void Plan_LoadsAtSpeeds_GrowWithTheSpeed() =>
        Assert.All(Core.Safety.Figures.LoadsAtSpeeds.Of(Lindle), row => Assert.True(row.Planned.Likely > row.Now.Likely, row.Key));

    private static double Glass(params string[] fixes) => Physics.Changes(Lindle, Set(fixes))[EffectOn.GlassLoad].Likely;

    private static Fix[] Set(params string[] fixes) => [.. fixes.Select(f => ShippedPack.Pack.Fix(f)!)];
}
