using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Effects;

namespace FixPlanner.Tests.Planning.BestSet;

/// <summary>What must hold for every car.</summary>
public class BestSetPropertyTests
{
    private const double Tolerance = 1e-6;

    [Fact]
    public void Solve_MoreMoneyOrHours_NeverBringsLess()
    {
        for (int seed = 0; seed < 40; seed++)
        {
            GeneratedCar car = new(seed);
            double before = double.NegativeInfinity;
            for (int step = 0; step < 8; step++)
            {
                car.Problem.MoneyCents = 5000 * step;
                car.Problem.TimeMinutes = 240 * step;
                double points = Solve(car.Problem).Points;
                Assert.True(points >= before - Tolerance);
                before = points;
            }
        }
    }

    /// <summary>
    /// If w1 G1 + R1 >= w1 G2 + R2 and w2 G2 + R2 >= w2 G1 + R1 then (w2 - w1)(G2 - G1) >= 0: the expected change of the aim itself, at mean beliefs
    /// and mean noise energies, cannot fall when its weight rises. Single fixes may well leave.
    /// </summary>
    [Theory]
    [InlineData(EffectOn.Drag)]
    [InlineData(EffectOn.Noise)]
    [InlineData(EffectOn.Cooling)]
    public void Solve_HigherWeight_NeverLowersThatChange(EffectOn on)
    {
        for (int seed = 0; seed < 30; seed++)
        {
            GeneratedCar car = new(seed);
            Dictionary<EffectOn, double> points = Enum.GetValues<EffectOn>().ToDictionary(q => q, car.Worth.PerUnit);
            double before = double.NegativeInfinity;
            foreach (double weight in (double[])[0.2, 0.7, 1.5, 3])
            {
                points[on] = weight;
                car.Car.Fill(car.Figures, car.Belief, Worthwhile.Direct(points));
                bool[] chosen = Solve(car.Problem).Chosen;
                car.Car.Fill(car.Figures, car.Belief, Worthwhile.Direct(new Dictionary<EffectOn, double> { [on] = 1 }));
                double change = car.Problem.Points(chosen);
                Assert.True(change >= before - Tolerance, $"car {seed}: {before} then {change}");
                before = change;
            }
        }
    }

    [Fact]
    public void Solve_DominatedItem_NeverTakenWithoutTheBetterOne()
    {
        for (int seed = 0; seed < 60; seed++)
        {
            GeneratedCar car = new(seed);
            SetProblem problem = car.Problem;
            bool[] chosen = Solve(problem).Chosen;
            for (int i = 0; i < chosen.Length; i++)
            {
                for (int j = 0; j < chosen.Length; j++)
                {
                    Assert.False(chosen[i] && !chosen[j] && Dominates(problem, j, i), $"car {seed}: {i} taken, better {j} not");
                }
            }

            // A worse copy of something chosen, dearer by a euro, stays out while the original is free to take.
            int original = Array.FindIndex(chosen, c => c);
            if (original >= 0)
            {
                problem.Cents[original] -= Math.Min(100, problem.Cents[original]);
                Assert.True(Solve(problem).Chosen[original]);
            }
        }
    }

    [Fact]
    public void Solve_ItemsInAnyOrder_SamePointsAndCost()
    {
        for (int seed = 0; seed < 30; seed++)
        {
            Choice forward = RandomChoice(seed, reversed: false);
            Choice backward = RandomChoice(seed, reversed: true);
            SetAnswer one = forward.Best(90, 9);
            SetAnswer other = backward.Best(90, 9);
            Assert.Equal(one.Points, other.Points, 9);
            Assert.Equal(one.Cents, other.Cents);
            Assert.Equal(string.Concat(forward.Names(one).Order()), string.Concat(backward.Names(other).Order()));
        }
    }

    [Fact]
    public void Solve_SameSolverAgain_SameAnswer()
    {
        GeneratedCar one = new(11);
        BestSetSolver solver = new(one.Problem.Structure);
        SetAnswer first = solver.Solve(one.Problem, SearchLimits.None);
        int money = one.Problem.MoneyCents;
        one.Problem.MoneyCents = 1500;
        solver.Solve(one.Problem, SearchLimits.None);
        one.Problem.MoneyCents = money;
        SetAnswer again = solver.Solve(one.Problem, SearchLimits.None);
        Assert.Equal(first.Chosen, again.Chosen);
        Assert.Equal(first.Points, again.Points);
    }

    [Fact]
    public void Solve_MustIn_IsInAndNeverBeatsTheFreeChoice()
    {
        for (int seed = 0; seed < 40; seed++)
        {
            GeneratedCar car = new(seed);
            double free = Solve(car.Problem).Points;
            car.Problem.Must[seed] = true;
            SetAnswer held = Solve(car.Problem);
            Assert.True(!held.Feasible || (held.Chosen[seed] && held.Points <= free + Tolerance && car.Problem.Allows(held.Chosen)));
        }
    }

    private static SetAnswer Solve(SetProblem problem) => new BestSetSolver(problem.Structure).Solve(problem, SearchLimits.None);

    /// <summary>j does everything that i does at least as well for no more money and time, is tied to nothing, and is strictly cheaper.</summary>
    private static bool Dominates(SetProblem p, int j, int i)
    {
        SetStructure s = p.Structure;
        return p.Cents[j] < p.Cents[i] && p.Minutes[j] <= p.Minutes[i] && p.Side[j] >= p.Side[i] && p.NoiseAdded[j] <= p.NoiseAdded[i] && p.SharedLoad[j] <= p.SharedLoad[i]
            && s.Needs[j].Length == 0 && s.Excludes[j].Length == 0 && s.NeededBy[i].Length == 0 && !p.Never[j]
            && Covers(p.Fraction, s.LinkStart, s.LinkTerm, j, i) && Covers(p.NoiseFraction, s.NoiseStart, s.NoiseSource, j, i);
    }

    private static bool Covers(double[] fraction, int[] start, int[] place, int j, int i)
    {
        for (int l = start[i]; l < start[i + 1]; l++)
        {
            double other = Enumerable.Range(start[j], start[j + 1] - start[j]).Where(k => place[k] == place[l]).Select(k => fraction[k]).FirstOrDefault();
            if (other < fraction[l])
            {
                return false;
            }
        }

        return true;
    }

    private static Choice RandomChoice(int seed, bool reversed)
    {
        Random chance = new(seed);
        var items = Enumerable.Range(0, 12).Select(i => (
            Name: ((char)('a' + i)).ToString(),
            Euro: (double)chance.Next(5, 40),
            Hours: chance.Next(1, 4) / 2.0,
            Takes: new[] { (chance.Next(6), 0.2 + (0.7 * chance.NextDouble())), (6 + chance.Next(3), 0.5 * chance.NextDouble()) },
            Quiets: new[] { (chance.Next(3), 0.6 * chance.NextDouble()) })).ToList();
        Choice choice = new() { Terms = [5, 4, 3, 2, 6, 1, 2, 2, 2], Sources = [1, 0.6, 0.4], PointsPerDecibel = 1 };
        foreach (var item in reversed ? Enumerable.Reverse(items) : items)
        {
            choice.Item(item.Name, item.Euro, item.Hours, item.Takes, item.Quiets);
        }

        return choice;
    }
}
