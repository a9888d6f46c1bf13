using BenchmarkDotNet.Attributes;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Planning.Frontier;
using FixPlanner.Core.Quantities;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Benchmarks;

/// <summary>What a plan's draws cost at the size of the shipped pack, over ten made-up cars.</summary>
public class PlanningDraws
{
    private const int Cars = 10;
    private readonly GeneratedCar[] cars = [.. Enumerable.Range(0, Cars).Select(seed => new GeneratedCar(seed))];
    private CommonDraws[] draws = [];
    private bool[][] worlds = [];
    private SetAnswer[] plans = [];

    [GlobalSetup]
    public void Make()
    {
        draws = [.. cars.Select(Common)];
        plans = [.. cars.Select(c => new BestSetSolver(c.Problem.Structure).Solve(c.Problem, SearchLimits.None))];
        Random chance = new(1);
        worlds = [.. Enumerable.Range(0, CommonDraws.Count).Select(_ => cars[0].Belief.Select(b => chance.NextDouble() < b).ToArray())];
    }

    [Benchmark]
    public double CommonDrawsOfAPack() => Common(cars[0]).Effect(0)[0];

    [Benchmark(OperationsPerInvoke = Cars)]
    public double BestSetDraws500()
    {
        double regret = 0;
        for (int i = 0; i < Cars; i++)
        {
            GeneratedCar car = cars[i];
            CarProblem work = new(car.Layout, car.Requires, car.Excludes);
            (work.Problem.MoneyCents, work.Problem.TimeMinutes) = (car.Problem.MoneyCents, car.Problem.TimeMinutes);
            Triangle[] cost = [.. car.Problem.Cents.Select(c => new Triangle(c / 200.0, c / 100.0, c / 50.0))];
            Triangle[] hours = [.. car.Problem.Minutes.Select(m => new Triangle(m / 120.0, m / 60.0, m / 30.0))];
            SetRobustness robustness = new(car.Layout, draws[i], work, car.Belief, car.Worth, cost, hours, plans[i].Chosen);
            robustness.RunTo(CommonDraws.BestSetCount);
            regret += robustness.Regret;
        }

        return regret;
    }

    [Benchmark]
    public int EffectDraws2000()
    {
        int[] chosen = [.. plans[0].Chosen.Index().Where(c => c.Item).Select(c => c.Index)];
        EffectDraws run = new(cars[0].Layout, draws[0], worlds, new bool[cars[0].Layout.Fixes], [.. Enumerable.Repeat(0.8, worlds.Length)]);
        return run.Run(chosen, plans[0].Chosen).Set.Count;
    }

    [Benchmark(OperationsPerInvoke = Cars)]
    public int FrontierTo600Eur() => cars.Sum(c => BenefitFrontier.AgainstMoney(c.Problem, 60_000).Count);

    private static CommonDraws Common(GeneratedCar car) =>
        CommonDraws.Of(car.Layout, [.. Enumerable.Range(0, car.Layout.Causes).Select(c => "c" + c)], [.. Enumerable.Range(0, car.Layout.Fixes).Select(f => "f" + f)]);
}
