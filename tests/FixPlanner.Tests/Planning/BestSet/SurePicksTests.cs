using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Tests.Planning.BestSet;

/// <summary>Owners who name no budget and no hours: what surely belongs in is taken in at once.</summary>
public class SurePicksTests
{
    private const int NoLimit = int.MaxValue / 4;

    [Fact]
    public void Solve_SmallCarsWithoutLimits_EqualsExhaustiveSearch()
    {
        for (int seed = 0; seed < 120; seed++)
        {
            GeneratedCar car = Unlimited(new(9000 + seed, fixes: 8 + (seed % 6), causes: 4 + (seed % 4)));
            SetAnswer answer = new BestSetSolver(car.Problem.Structure).Solve(car.Problem, SearchLimits.None);
            double points = Exhaustive.Best(car.Problem).Points;
            Assert.True(Math.Abs(points - answer.Points) < 1e-7, $"car {seed}: exhaustive {points}, here {answer.Points}");
        }
    }

    [Fact]
    public void Solve_FullSizeWithoutLimits_IsProvenInFewNodes()
    {
        for (int seed = 0; seed < 40; seed++)
        {
            GeneratedCar car = Unlimited(new(9500 + seed));
            SetAnswer answer = new BestSetSolver(car.Problem.Structure).Solve(car.Problem, new SearchLimits(1_000));
            Assert.True(answer.Proven, $"car {seed}: not proven in 1,000 nodes");
        }
    }

    private static GeneratedCar Unlimited(GeneratedCar car)
    {
        (car.Problem.MoneyCents, car.Problem.TimeMinutes) = (NoLimit, NoLimit);
        return car;
    }
}
