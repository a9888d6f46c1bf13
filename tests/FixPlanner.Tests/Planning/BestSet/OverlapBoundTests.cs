using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Tests.Planning.BestSet;

/// <summary>The limit that a stopped search states.</summary>
public class OverlapBoundTests
{
    /// <summary>Amount 100, fractions 0.6, 0.5, 0.3: by hand 60, 50, 30 alone, 80, 72, 65 in pairs, 86 together; added up as if alone 60, 50, 30, 110, 90, 80, 140.</summary>
    [Theory]
    [InlineData("a", 60, 60)]
    [InlineData("b", 50, 50)]
    [InlineData("ab", 80, 110)]
    [InlineData("ac", 72, 90)]
    [InlineData("bc", 65, 80)]
    [InlineData("abc", 86, 140)]
    public void At_NoPrices_OverlapOfOneCauseIsExact(string free, double together, double addedUp)
    {
        Choice choice = new Choice { Terms = [100] }.Item("a", 1, 1, [(0, 0.6)]).Item("b", 1, 1, [(0, 0.5)]).Item("c", 1, 1, [(0, 0.3)]);
        foreach (char item in "abc".Except(free))
        {
            choice.Never(item.ToString());
        }

        Node node = new(choice.Problem(99, 99), SearchLimits.None with { PointsPerCent = 0 });
        Assert.Equal(together, node.Limit.At(default), 12);
        Assert.Equal(addedUp, node.AddedUp, 12);
    }

    [Fact]
    public void At_NoPrices_NeedsAndExcludesAreExact()
    {
        // 100 and 50 points: a 0.6, b 0.5 of the first; c 0.8, d 0.3 of the second, d at a side of -3. All: 80 + 43 - 3; c alone brings 40 as well.
        Choice Four() => new Choice { Terms = [100, 50] }.Item("a", 1, 1, [(0, 0.6)]).Item("b", 1, 1, [(0, 0.5)]).Item("c", 1, 1, [(1, 0.8)]).Item("d", 1, 1, [(1, 0.3)], side: -3);
        double Limit(Choice choice) => new Node(choice.Problem(99, 99), SearchLimits.None with { PointsPerCent = 0 }).Limit.At(default);
        Assert.Equal(120, Limit(Four()), 12);
        Assert.Equal(100, Limit(Four().Excludes("a", "b")), 12);
        Assert.Equal(92, Limit(Four().Excludes("c", "d").Excludes("a", "c").Excludes("b", "c")), 12);
        Assert.Equal(120, Limit(Four().Requires("c", "d")), 12);

        // What must be in is needed no more: nothing else is held out by it.
        Assert.Equal(120, Limit(Four().Requires("c", "d").Must("d")), 12);
    }

    [Fact]
    public void At_AnyPrices_NeverBelowTheBestSet()
    {
        Random chance = new(3);
        for (int seed = 0; seed < 60; seed++)
        {
            GeneratedCar car = new(seed);
            SetAnswer exact = new BestSetSolver(car.Problem.Structure).Solve(car.Problem, SearchLimits.None);
            OverlapBound limit = new Node(car.Problem, SearchLimits.None).Limit;
            for (int k = 0; k < 5; k++)
            {
                Multipliers prices = new() { Money = 0.002 * chance.NextDouble(), Time = 0.02 * chance.NextDouble() };
                Assert.True(limit.At(prices) >= exact.Points - 1e-6, $"car {seed}");
            }

            Assert.True(limit.Lowest(new() { Money = 1e-4, Time = 1e-3 }, 24) >= exact.Points - 1e-6);
        }
    }

    [Fact]
    public void Solve_StoppedAtAThousandFixes_QuotesACloserLimit()
    {
        double plain = 0;
        double quoted = 0;
        for (int seed = 0; seed < 4; seed++)
        {
            GeneratedCar car = BestSetSizeTests.Wide(seed, 1000, 9);
            BestSetSolver solver = new(car.Problem.Structure);
            SetAnswer without = solver.Solve(car.Problem, new SearchLimits(800));
            SetAnswer with = solver.Solve(car.Problem, new SearchLimits(800) { Quote = true });
            SetAnswer later = solver.Solve(car.Problem, new SearchLimits(6000));
            Assert.Equal(without.Points, with.Points);
            Assert.True(with.UpperPoints <= without.UpperPoints);
            Assert.True(with.UpperPoints >= later.Points - 1e-6);
            plain += without.LargestGap / 4;
            quoted += with.LargestGap / 4;
        }

        Assert.True(quoted < 0.8 * plain, $"{plain:P1} without, {quoted:P1} with");
    }

    /// <summary>The root of a search.</summary>
    private sealed class Node
    {
        public Node(SetProblem problem, SearchLimits limits)
        {
            SearchItems items = new(problem.Structure);
            items.Pack(problem, limits);
            SearchMoves moves = new(items);
            SearchFrame frame = new(problem.Structure.Items, problem.Structure.Terms, problem.Structure.Sources);
            moves.Start(frame, problem);
            for (int i = 0; i < problem.Must.Length; i++)
            {
                if (problem.Must[i])
                {
                    moves.TakeIn(frame, items.PlaceOf(i), keepLimits: false);
                }
            }

            NodeGains gains = new(items, moves, problem.Structure);
            gains.Update(frame);
            Limit = new(frame, items, gains);
            foreach (double gain in gains.Of(frame))
            {
                AddedUp += Math.Max(0, gain);
            }

            Slope = gains.Slope;
        }

        public OverlapBound Limit { get; }

        public double AddedUp { get; }

        public double Slope { get; }
    }

    /// <summary>Noise now 2.5, with everything 1.2: the chord falls by 2.451990 dB a unit, the curve itself by 1.737178 there (by hand).</summary>
    [Fact]
    public void Slope_TwoSources_IsThatOfTheChord()
    {
        Choice choice = new Choice { Sources = [1.0, 0.5], PointsPerDecibel = 1 }.Item("a", 1, 1, quiets: [(0, 0.8)]).Item("b", 1, 1, quiets: [(1, 1.0)]);
        double slope = new Node(choice.Problem(99, 99), SearchLimits.None).Slope;
        Assert.Equal(2.451990, slope, 6);
        Assert.True(slope > 10 / Math.Log(10) / 2.5);
        Assert.Equal(1.737178, 10 / Math.Log(10) / 2.5, 6);
    }
}
