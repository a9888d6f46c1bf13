using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Tests.Planning.BestSet;

/// <summary>Packs larger than the shipped one. Nodes stand for time, so that the tests do not depend on the machine.</summary>
public class BestSetSizeTests
{
    [Fact]
    public void Solve_TwoHundredFixes_IsProvenInFewNodes()
    {
        for (int seed = 0; seed < 20; seed++)
        {
            GeneratedCar car = Wide(seed, 200, 1.8);
            SetAnswer answer = new BestSetSolver(car.Problem.Structure).Solve(car.Problem, new SearchLimits(20_000));
            Assert.True(answer.Proven, $"car {seed}: not proven in 20,000 nodes");
        }
    }

    [Fact]
    public void Solve_ThousandFixes_AnswerAtOnceWithProvenGap()
    {
        for (int seed = 0; seed < 3; seed++)
        {
            GeneratedCar car = Wide(seed, 1000, 9);
            BestSetSolver solver = new(car.Problem.Structure);
            SetAnswer early = solver.Solve(car.Problem, new SearchLimits(500));
            SetAnswer later = solver.Solve(car.Problem, new SearchLimits(4_000));
            Assert.True(car.Problem.Allows(early.Chosen));
            Assert.True(early.Points <= later.Points + 1e-9 && later.Points <= early.UpperPoints + 1e-9);
            Assert.True(early.LargestGap < 0.4, $"car {seed}: {early.LargestGap:P0}");
            Assert.True(later.UpperPoints <= early.UpperPoints + 1e-9);
        }
    }

    internal static GeneratedCar Wide(int seed, int fixes, double limits)
    {
        GeneratedCar car = new(seed, fixes, fixes * 74 / 112);
        car.Problem.MoneyCents = (int)(car.Problem.MoneyCents * limits);
        car.Problem.TimeMinutes = (int)(car.Problem.TimeMinutes * limits);
        return car;
    }
}
