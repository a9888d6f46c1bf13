using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Recomputing;

namespace FixPlanner.Tests.Planning.Recomputing;

/// <summary>The search with margins against looking at every set there is.</summary>
public sealed class MarginSearchTests
{
    private const int Fixes = 12;

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    [InlineData(4)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void Best_GeneratedCar_IsTheBestSetThatKeepsTheMargin(int seed)
    {
        Random chance = new(seed);
        SetProblem problem = new GeneratedCar(seed, Fixes, 8, budgetEuro: 400).Car.Problem;

        // Half of the fixes load the margin, two relieve it by more than all of them together.
        double[] load = [.. Enumerable.Range(0, Fixes).Select(i => i < 6 ? 0.2 + chance.NextDouble() : i < 8 ? -20 : 0)];
        Fix[] fixes = [.. ShippedPack.Pack.Fixes.Take(Fixes).Select((f, i) => f with { AirWays = load[i] == 0 ? [] : [new("door seals", new(0.5, 0.5, 0.5))] })];
        IReadOnlyList<MarginBreak> Margins(IReadOnlyList<Fix> set) => Sum(set, fixes, load) > 0.9 ? [new("load", "too much")] : [];
        BestSetSolver solver = new(problem.Structure);
        SetAnswer first = solver.Solve(problem, new(1_000_000));

        SetAnswer found = new MarginSearch(fixes, solver, problem, new(1_000_000), Margins).Best(first);

        Assert.Equal(ByLookingAtAll(problem, load), found.Points, 1e-9);
        Assert.Empty(Margins([.. fixes.Where((_, i) => found.Chosen[i])]));
    }

    [Fact]
    public void Best_NothingBreaks_IsTheFirstAnswerItself()
    {
        SetProblem problem = new GeneratedCar(1, Fixes, 8, budgetEuro: 400).Car.Problem;
        BestSetSolver solver = new(problem.Structure);
        SetAnswer first = solver.Solve(problem, new(1_000_000));

        MarginSearch search = new([.. ShippedPack.Pack.Fixes.Take(Fixes)], solver, problem, new(1_000_000), _ => []);

        Assert.Same(first, search.Best(first));
        Assert.Empty(search.Cuts);
    }

    private static double Sum(IReadOnlyList<Fix> set, Fix[] fixes, double[] load) => set.Sum(f => load[Array.IndexOf(fixes, f)]);

    private static double ByLookingAtAll(SetProblem problem, double[] load)
    {
        double best = double.NegativeInfinity;
        for (int mask = 0; mask < 1 << Fixes; mask++)
        {
            bool[] chosen = [.. Enumerable.Range(0, Fixes).Select(i => ((mask >> i) & 1) == 1)];
            if (problem.Allows(chosen) && load.Where((_, i) => chosen[i]).Sum() <= 0.9)
            {
                best = Math.Max(best, problem.Points(chosen));
            }
        }

        return best;
    }
}
