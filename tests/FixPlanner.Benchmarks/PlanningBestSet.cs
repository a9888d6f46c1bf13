using BenchmarkDotNet.Attributes;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Tests.Planning;
using FixPlanner.Tests.Planning.BestSet;

namespace FixPlanner.Benchmarks;

/// <summary>The best set of made-up cars, beside a constraint solver on the same choices (noise off there, which it cannot judge).</summary>
public class PlanningBestSet
{
    private const int Cars = 50;
    private GeneratedCar[] withNoise = [];
    private GeneratedCar[] withoutNoise = [];
    private BestSetSolver[] solvers = [];
    private BestSetSolver[] quietSolvers = [];

    /// <summary>Fixes: the size of the shipped pack, and larger packs; causes grow in proportion.</summary>
    [Params(112, 200, 1000)]
    public int Fixes { get; set; }

    [GlobalSetup]
    public void Make()
    {
        withNoise = [.. Enumerable.Range(0, Cars).Select(seed => new GeneratedCar(seed, Fixes, Fixes * 74 / 112))];
        withoutNoise = [.. Enumerable.Range(0, Cars).Select(seed => new GeneratedCar(seed, Fixes, Fixes * 74 / 112, noiseWeight: 0))];
        solvers = [.. withNoise.Select(c => new BestSetSolver(c.Problem.Structure))];
        quietSolvers = [.. withoutNoise.Select(c => new BestSetSolver(c.Problem.Structure))];
    }

    [Benchmark(OperationsPerInvoke = Cars)]
    public double BestSet() => Sum(withNoise, solvers);

    [Benchmark(OperationsPerInvoke = Cars)]
    public double BestSetWithoutNoise() => Sum(withoutNoise, quietSolvers);

    [Benchmark(OperationsPerInvoke = 5)]
    public double ConstraintSolverWithoutNoise() => withoutNoise.Take(5).Sum(c => ConstraintJudge.Best(c.Problem).Points);

    private static double Sum(GeneratedCar[] cars, BestSetSolver[] solvers)
    {
        double points = 0;
        for (int i = 0; i < cars.Length; i++)
        {
            points += solvers[i].Solve(cars[i].Problem, SearchLimits.None).Points;
        }

        return points;
    }
}
