using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Planning.BestSet;
using Choice = FixPlanner.Core.Planning.Choice;

namespace FixPlanner.Tests.Planning.Recomputing;

/// <summary>What a margin cut off must not come back as 'better' in draws, frontier or the worth of a question.</summary>
public sealed class MarginsAndTheRestTests
{
    [Fact]
    public void Working_CarsWithCutSets_HasNoBetterSetThanThePlan()
    {
        PlanModel model = new(ShippedPack.Pack);
        int cut = 0, relieved = 0;
        for (int seed = 0; seed < 30; seed++)
        {
            (Situation s, Beliefs beliefs) = ShippedPack.Look(Old(seed));
            Choice choice = new(model, s, beliefs, CancellationToken.None);
            SetProblem again = choice.Working().Problem;
            cut += choice.Cuts.Count > 0 ? 1 : 0;
            relieved += ReferenceEquals(again.Structure, choice.Structure) || again.Structure.Needs.Sum(n => n.Length) == choice.Structure.Needs.Sum(n => n.Length) ? 0 : 1;
            Assert.Equal(choice.Answer.Points, new BestSetSolver(again.Structure).Solve(again, SearchLimits.None).Points, 9);
            Assert.True(again.Allows(choice.Answer.Chosen));
        }

        Assert.True(cut > 3 && relieved > 2, $"{cut} cars with cut sets, {relieved} with a relief");
    }

    [Fact]
    public void Make_CarsWithCutSets_FrontierAtTheBudgetIsThePlanItself()
    {
        Planner planner = ShippedPack.Planner;
        for (int seed = 0; seed < 4; seed++)
        {
            (Situation s, Beliefs beliefs) = ShippedPack.Look(Old(seed));
            Plan plan = planner.Make(s, beliefs, PlanDepth.Full).Plan;
            Assert.Equal(plan.Totals.Points, plan.Frontier.Where(f => f.BudgetEur <= plan.Totals.BudgetEur + 0.001).Max(f => f.Points), 6);
        }
    }

    // Water-cooled with a known power, rear glass in old rubber, looked at by chance.
    private static Logbook Old(int seed) => ShippedPack.Car(seed) with
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
}
