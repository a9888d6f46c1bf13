using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Tests.Planning.BestSet;

/// <summary>The best set against two judges that share nothing with it.</summary>
public class BestSetJudgeTests
{
    [Fact]
    public void Solve_SmallCarsWithNoise_EqualsExhaustiveSearch()
    {
        int withNoise = 0;
        for (int seed = 0; seed < 240; seed++)
        {
            GeneratedCar car = new(seed, fixes: 8 + (seed % 6), causes: 6 + (seed % 5), budgetEuro: 30 + (seed % 7 * 20));
            if (seed % 5 == 0)
            {
                car.Problem.Must[seed % 8] = true;
                car.Problem.Never[(seed + 3) % 8] = true;
            }

            SetAnswer answer = new BestSetSolver(car.Problem.Structure).Solve(car.Problem, SearchLimits.None);
            (double points, int cents) = Exhaustive.Best(car.Problem);
            Assert.Equal(points > double.NegativeInfinity, answer.Feasible);
            if (answer.Feasible)
            {
                Assert.True(answer.Proven);
                Assert.True(car.Problem.Allows(answer.Chosen));
                Assert.True(Math.Abs(points - answer.Points) < 1e-7, $"car {seed}: exhaustive {points}, here {answer.Points}");
                Assert.True(Math.Abs(points - answer.Points) > 1e-12 || answer.Cents <= cents + 1, $"car {seed}: {answer.Cents} cents, exhaustive {cents}");
                withNoise += car.Problem.NoiseWorth > 0 ? 1 : 0;
            }
        }

        Assert.True(withNoise >= 200, $"only {withNoise} cars with noise could be judged");
    }

    [Fact]
    public void Solve_FullSizeCarsWithoutNoise_EqualsConstraintSolver()
    {
        for (int seed = 0; seed < 100; seed++)
        {
            GeneratedCar car = new(1000 + seed, noiseWeight: 0);
            SetAnswer answer = new BestSetSolver(car.Problem.Structure).Solve(car.Problem, SearchLimits.None);
            Assert.True(answer.Proven);
            (double points, double slack) = ConstraintJudge.Best(car.Problem);
            Assert.True(Math.Abs(points - answer.Points) <= slack, $"car {seed}: judge {points} +- {slack}, here {answer.Points}");
        }
    }

    [Fact]
    public void Solve_StoppedEarly_ProvenLimitHolds()
    {
        for (int seed = 0; seed < 40; seed++)
        {
            GeneratedCar car = new(5000 + seed);
            BestSetSolver solver = new(car.Problem.Structure);
            SetAnswer exact = solver.Solve(car.Problem, SearchLimits.None);
            SetAnswer early = solver.Solve(car.Problem, new SearchLimits(3));
            Assert.True(car.Problem.Allows(early.Chosen));
            Assert.True(early.Points <= exact.Points + 1e-9);
            Assert.True(early.UpperPoints >= exact.Points - 1e-9);
            Assert.True(early.Nodes <= 3);
        }
    }
}
