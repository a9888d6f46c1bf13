using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Planning.Effects;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Planning.Draws;

public class DrawsTests
{
    [Fact]
    public void Effect_TwoFixesOfOneCause_CorrelateByHalf()
    {
        EffectLayout layout = new(1, 2,
        [
            new(0, EffectOn.Dirt, new(0, 1, 2), [(0, FixAction.Reduces)]),
            new(1, EffectOn.Dirt, new(0, 1, 2), [(0, FixAction.Reduces)]),
        ]);
        CommonDraws draws = CommonDraws.Of(layout, ["cause"], ["a", "b"]);
        double[] a = [.. Enumerable.Range(0, CommonDraws.Count).Select(d => draws.Effect(d)[0])];
        double[] b = [.. Enumerable.Range(0, CommonDraws.Count).Select(d => draws.Effect(d)[1])];

        // Shares of correlated normals correlate by 6/pi asin(rho/2): 0.483 at rho 0.5 (Pearson 1907; from memory). Three standard errors: 0.05.
        double correlation = 12 * (a.Zip(b, (x, y) => x * y).Average() - 0.25);
        Assert.InRange(correlation, 0.43, 0.54);
        Assert.InRange(a.Average(), 0.48, 0.52);
        CommonDraws again = CommonDraws.Of(layout, ["cause"], ["a", "b"]);
        Assert.All(Enumerable.Range(0, CommonDraws.Count), d => Assert.Equal(a[d], again.Effect(d)[0]));
    }

    [Fact]
    public void Effect_ManyFixes_SharesAreEven()
    {
        EffectLayout layout = new GeneratedCar(1).Layout;
        CommonDraws draws = CommonDraws.Of(layout, [.. Enumerable.Range(0, layout.Causes).Select(c => "c" + c)], [.. Enumerable.Range(0, layout.Fixes).Select(f => "f" + f)]);
        double[] shares = [.. Enumerable.Range(0, CommonDraws.Count).SelectMany(d => draws.Effect(d).ToArray())];
        foreach (double below in (double[])[0.05, 0.25, 0.5, 0.75, 0.95])
        {
            Assert.InRange(shares.Count(s => s < below) / (double)shares.Length, below - 0.005, below + 0.005);
        }
    }

    [Fact]
    public void Run_SingleFix_IfCauseIsTheStatedTriangle()
    {
        Triangle stated = new(-2, 2, 6);
        EffectLayout layout = new(2, 1, [new(0, EffectOn.Drag, stated, [(0, FixAction.Cures), (1, FixAction.Reduces)]), new(0, EffectOn.Noise, new(1, 2, 3), [(0, FixAction.Cures)])]);
        bool[][] worlds = [.. Enumerable.Range(0, CommonDraws.Count).Select(d => new[] { d % 2 == 0, d % 2 == 0 })];
        EffectDraws run = new(layout, CommonDraws.Of(layout, ["a", "b"], ["f"]), worlds, [false], Hundred());
        IReadOnlyList<EffectSpread> effects = run.Run([0], [true]).Fixes[0];
        EffectSpread drag = effects.Single(e => e.On == EffectOn.Drag);

        // Less drag is minus. Standard error of a mean of 2,000 draws of sd 1.63: 0.04.
        Assert.Equal(-2, drag.IfCause.Likely, 0.1);
        // Of the ends, sqrt(0.05 x 0.95 / 2000) / density 0.079: 0.062; three of them.
        Assert.Equal(-stated.Quantile(0.95), drag.IfCause.Low, 0.19);
        Assert.Equal(-stated.Quantile(0.05), drag.IfCause.High, 0.19);

        // Cause there in half of the worlds: 0.958333 by hand (check case 11).
        Assert.Equal(-0.958333, drag.AsBelieved.Likely, 0.1);
        Assert.Equal(-2, effects.Single(e => e.On == EffectOn.Noise).IfCause.Likely, 0.05);
    }

    [Theory]
    [InlineData("one", 1.989700)]
    [InlineData("independent", 1.479400)]
    [InlineData("both or none", 0.969100)]
    public void Run_TwoRivalNoises_MeanByHand(string joint, double expected)
    {
        // Two rivals of energy 2 at even odds beside a rest of 1; the fix takes 0.9 of the first: x = 1.8 / 3 there, 3.979400 dB.
        // A cure that takes the most it can, 0.95 of 2 / 3, makes each rival's least energy 2.
        Triangle most = Triangle.Certain(-10 * Math.Log10(1 - (0.95 * 2 / 3.0)));
        EffectLayout both = new(2, 3,
        [
            new(0, EffectOn.Noise, Triangle.Certain(3.979400087), [(0, FixAction.Cures)]),
            new(1, EffectOn.Noise, most, [(0, FixAction.Cures)]),
            new(2, EffectOn.Noise, most, [(1, FixAction.Cures)]),
        ]);
        bool[][] worlds = [.. Enumerable.Range(0, CommonDraws.Count).Select(d => joint switch
        {
            "one" => new[] { d % 2 == 0, d % 2 == 1 },
            "independent" => [d % 2 == 0, d / 2 % 2 == 0],
            _ => [d % 2 == 0, d % 2 == 0],
        })];
        EffectDraws run = new(both, CommonDraws.Of(both, ["a", "b"], ["f", "g", "h"]), worlds, new bool[3], Hundred());
        Assert.Equal(-expected, run.Run([0], new bool[3]).Fixes[0][0].AsBelieved.Likely, 4);
    }

    [Fact]
    public void Run_SetOfSeals_GlassLoadCountsOnce()
    {
        EffectLayout layout = new(2, 2,
        [
            new(0, EffectOn.GlassLoad, Triangle.Certain(-5), [(0, FixAction.Cures)], CountsOnce: true),
            new(1, EffectOn.GlassLoad, Triangle.Certain(-3), [(1, FixAction.Cures)], CountsOnce: true),
        ]);
        bool[][] worlds = [.. Enumerable.Range(0, CommonDraws.Count).Select(_ => new[] { true, true })];
        CommonDraws draws = CommonDraws.Of(layout, ["a", "b"], ["f", "g"]);
        Assert.Equal(5, new EffectDraws(layout, draws, worlds, [false, false], Hundred()).Run([], [true, true]).Set.Single().AsBelieved.Likely, 9);
        Assert.Equal(2, new EffectDraws(layout, draws, worlds, [false, true], Hundred()).Run([], [true, false]).Set.Single().AsBelieved.Likely, 9);
    }

    [Fact]
    public void Robustness_StoppedAndContinued_SameAsInOneGo()
    {
        (SetRobustness one, SetAnswer plan) = Robustness(8);
        (SetRobustness other, _) = Robustness(8);
        one.RunTo(120);
        other.RunTo(40);
        other.RunTo(120);
        Assert.Equal(120, other.Done);
        Assert.Equal(one.Regret, other.Regret);
        Assert.All(Enumerable.Range(0, plan.Chosen.Length), f => Assert.Equal(one.Share(f), other.Share(f)));
        Assert.InRange(one.Regret, 0, double.MaxValue);
        Assert.True(plan.Chosen.Index().Where(c => c.Item).Average(c => one.Share(c.Index)) > plan.Chosen.Index().Where(c => !c.Item).Average(c => one.Share(c.Index)));
    }

    [Fact]
    public void Money_OneCertainFix_OverrunsExactlyWhenDearer()
    {
        CommonDraws draws = CommonDraws.Of(new(1, 1, []), ["a"], ["f"]);
        Assert.Equal(0, MoneyDraws.Of([MoneyOfFix.Of(draws, 0, Triangle.Certain(50), Triangle.Certain(1))], 50).Overrun);
        Assert.Equal(1, MoneyDraws.Of([MoneyOfFix.Of(draws, 0, Triangle.Certain(51), Triangle.Certain(1))], 50).Overrun);

        // Triangle 0, 10, 20: half lies above 10.
        MoneyDraws half = MoneyDraws.Of([MoneyOfFix.Of(draws, 0, new(0, 10, 20), Triangle.Certain(1))], 10);
        Assert.InRange(half.Overrun, 0.46, 0.54);
        Assert.InRange(half.CostEur.Likely, 9.7, 10.3);
    }

    /// <summary>A car of 100 m2 of drag area, so that percent and m2 read the same.</summary>
    private static double[] Hundred() => [.. Enumerable.Repeat(100.0, CommonDraws.Count)];

    private static (SetRobustness, SetAnswer) Robustness(int seed)
    {
        GeneratedCar car = new(seed);
        SetAnswer plan = new BestSetSolver(car.Problem.Structure).Solve(car.Problem, SearchLimits.None);
        CommonDraws draws = CommonDraws.Of(car.Layout, [.. Enumerable.Range(0, car.Layout.Causes).Select(c => "c" + c)], [.. Enumerable.Range(0, car.Layout.Fixes).Select(f => "f" + f)]);
        Triangle[] cost = [.. car.Problem.Cents.Select(c => new Triangle(c / 200.0, c / 100.0, c / 50.0))];
        Triangle[] hours = [.. car.Problem.Minutes.Select(m => new Triangle(m / 120.0, m / 60.0, m / 30.0))];
        return (new(car.Layout, draws, car.Car, car.Belief, car.Worth, cost, hours, plan.Chosen), plan);
    }
}
