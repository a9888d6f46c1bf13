using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;

namespace FixPlanner.Tests.Planning;

/// <summary>What is paid first is the cure of what was found, not the cheapest work that the gate names.</summary>
public class SafetyWorkTests
{
    [Theory]
    [InlineData("exhaust-joints", "yes", "repair-exhaust")]
    [InlineData("outlet-tissue", "in", "restore-cabin-outlets")]
    [InlineData("tail-lamp", "line", "seal-tail")]
    [InlineData("intake-place", "bay", "seal-heater-intake")]
    [InlineData("steering-play", "some", "align-chassis")]
    public void Make_SomethingFoundWrong_PaysItsCureFirst(string look, string answer, string cure)
    {
        Plan plan = ShippedPack.Plan(Found((look, answer)));

        Assert.Contains(plan.Items, item => item.Stage == Stage.Safety && item.Fix.Id == cure);
    }

    [Fact]
    public void Make_LeakAndWayIn_PaysBoth()
    {
        Plan plan = ShippedPack.Plan(Found(("exhaust-joints", "yes"), ("tail-lamp", "line")));

        Assert.Equal(["repair-exhaust", "seal-tail"], plan.Items.Where(item => item.Stage == Stage.Safety).Select(item => item.Fix.Id).Order());
    }

    [Fact]
    public void Make_HeadacheAndNothingFound_PaysTheCheapestThatTheGateNames()
    {
        Plan plan = ShippedPack.Plan(new Logbook { Rounds = [new("look", ShippedPack.Today, [], [], new Dictionary<string, FactEntry> { ["fumes_inside"] = new(FactValue.YesNo(true), null, ShippedPack.Today, "yes") })] });

        Fix paid = Assert.Single(plan.Items, item => item.Stage == Stage.Safety).Fix;
        Assert.Contains(paid.Id, ShippedPack.Pack.Gate("fumes")!.SignOffs[0].AfterFixes);
    }

    private static Logbook Found(params (string Look, string Answer)[] found) => new()
    {
        Rounds = [new("look", ShippedPack.Today, [], [.. found.Select(one => new Finding(one.Look, one.Answer))], new Dictionary<string, FactEntry>())],
    };
}
