using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Frontier;
using FixPlanner.Tests.Planning.BestSet;

namespace FixPlanner.Tests.Planning.Frontier;

public class BenefitFrontierTests
{
    [Fact]
    public void AgainstMoney_FourItems_StepsByHand()
    {
        // 100 and 50 points; at 6 h (cost: points) 0: 0, 10: 12, 30: 60, 40: 72, 70: 80, 80: 100, 120: 120.
        SetProblem problem = new Choice { Terms = [100, 50] }
            .Item("a", 30, 2, [(0, 0.6)])
            .Item("b", 40, 1, [(0, 0.5)])
            .Item("c", 50, 3, [(1, 0.8)])
            .Item("d", 10, 1, [(1, 0.3)], side: -3)
            .Problem(80, 6);
        IReadOnlyList<LimitStep> steps = BenefitFrontier.AgainstMoney(problem, 20000);
        Assert.Equal([0, 1000, 3000, 4000, 7000, 8000, 12000], steps.Select(s => s.Limit));
        Assert.Equal([0, 12, 60, 72, 80, 100, 120], steps.Select(s => Math.Round(s.Points, 9)));
        Assert.Equal(8000, problem.MoneyCents);
    }

    [Fact]
    public void AgainstMoney_GeneratedCars_EveryBudgetBetweenStepsGivesTheLowerStep()
    {
        for (int seed = 0; seed < 10; seed++)
        {
            GeneratedCar car = new(seed);
            IReadOnlyList<LimitStep> steps = BenefitFrontier.AgainstMoney(car.Problem, 30000);
            BestSetSolver solver = new(car.Problem.Structure);
            for (int budget = 0; budget <= 30000; budget += 1700)
            {
                car.Problem.MoneyCents = budget;
                double expected = steps.Last(s => s.Limit <= budget).Points;
                Assert.Equal(expected, solver.Solve(car.Problem, SearchLimits.None).Points, 6);
            }
        }
    }

    [Fact]
    public void AgainstTime_GeneratedCar_RisesStrictly()
    {
        GeneratedCar car = new(2);
        IReadOnlyList<LimitStep> steps = BenefitFrontier.AgainstTime(car.Problem, 2400);
        Assert.Equal(0, steps[0].Limit);
        Assert.All(steps.Zip(steps.Skip(1)), s => Assert.True(s.First.Points < s.Second.Points && s.First.Limit < s.Second.Limit));
    }

    [Fact]
    public void MoreMoney_TenEuro_SaysWhatComesAndGoes()
    {
        Choice choice = new Choice { Terms = [100, 50] }.Item("a", 30, 2, [(0, 0.6)]).Item("b", 40, 1, [(0, 0.5)]).Item("c", 50, 3, [(1, 0.8)]).Item("d", 10, 1, [(1, 0.3)], side: -3);
        SetProblem problem = choice.Problem(70, 6);
        SetAnswer now = new BestSetSolver(problem.Structure).Solve(problem, SearchLimits.None);
        MoreMoney more = MoreMoney.Of(problem, now, 1000);
        Assert.Equal(20, more.MorePoints, 9);
        Assert.Equal([2], more.Comes);
        Assert.Equal([1], more.Goes);
        Assert.Equal(1000, more.NeedsMoreCents);
        Assert.Equal(0, MoreMoney.Of(problem, now, 900).MorePoints);
    }
}
