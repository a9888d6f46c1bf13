using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Physics.Uncertainty;

/// <summary>Results kept by what they hang on, and draws shared between computations: nothing may depend on what was kept.</summary>
public sealed class KeptTests
{
    [Fact]
    public void Of_SameKey_IsWorkedOutOnceUntilTheOldestLeaves()
    {
        Kept<int, string> kept = new(2);
        int made = 0;
        string Of(int key) => kept.Of(key, () => $"{key} {++made}");

        Assert.Equal(["1 1", "1 1", "2 2", "3 3", "3 3"], new[] { Of(1), Of(1), Of(2), Of(3), Of(3) });
        Assert.Equal("1 4", Of(1)); // 1 was the oldest of three
    }

    [Fact]
    public void Plan_AfterOtherCars_IsTheSameAsBefore()
    {
        string first = Ranges("lindle");
        Ranges("marram");
        Ranges("pennock");
        Assert.Equal(first, Ranges("lindle"));
    }

    [Fact]
    public void InputDraws_SameNameInTwoComputations_SameDraws()
    {
        UncertainInput input = new("size of a vent", Uncertain.LogNormal(1, 0.5));
        Assert.Equal(DrawnInput.Of(input).Values, new InputDraws().Of(input).Values);
    }

    // Spearman by hand: ranks 1 2 3 4 5 against 2 1 4 3 5 differ by 1 1 1 1 0, so 1 - 6 x 4 / (5 x 24) = 0.8.
    [Fact]
    public void Ranked_Correlation_IsThatOfSpearman()
    {
        Ranked one = Ranked.Of([10, 20, 30, 40, 50]);
        Assert.Equal(0.8, one.Correlation(Ranked.Of([0.2, 0.1, 0.4, 0.3, 0.5])), 1e-12);
        Assert.Equal(-1, one.Correlation(Ranked.Of([5, 4, 3, 2, 1])), 1e-12);
        Assert.Equal(0, one.Correlation(Ranked.Of([7, 7, 7, 7, 7])));
    }

    // Equal values share the mean of their ranks: 1 1 2 against 1 2 3 has ranks 1.5 1.5 3 and correlation 0.8660.
    [Fact]
    public void Ranked_EqualValues_ShareTheirRank() =>
        Assert.Equal(Math.Sqrt(3) / 2, Ranked.Of([1, 1, 2]).Correlation(Ranked.Of([1, 2, 3])), 1e-12);

    private static string Ranges(string car)
    {
        (Situation s, Beliefs beliefs) = ShippedPack.Look(ShippedPack.Demo(car).Logbook);
        Plan plan = ShippedPack.Planner.Make(s, beliefs, PlanDepth.Full).Plan;
        IEnumerable<(string, Spread)> effects = plan.Items.SelectMany(i => i.Effects).Concat(plan.Totals.Effects).Select(e => (e.Key, e.AsBelieved));
        IEnumerable<(string, Spread)> figures = plan.Gates.SelectMany(g => g.Figures).Select(f => (f.Key, f.Range));
        return string.Join('\n', effects.Concat(figures)) + string.Join('\n', plan.Vents.Select(v => $"{v.Vent} {v.Certainty.ShareAlwaysIn} {v.Certainty.ShareTurns} {v.AlongScreen}"));
    }
}
