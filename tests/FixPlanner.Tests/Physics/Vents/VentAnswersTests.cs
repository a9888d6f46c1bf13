using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Vents;

/// <summary>The answer about each vent of a car, as the plan tells it.</summary>
public class VentAnswersTests
{
    private static readonly CarVents Saloon = new(
        new() { CabinInlet = CabinInlet.ScreenBase, CabinOutlet = CabinOutlet.RearPillars, BayInlet = BayInlet.Nose, BayOutlet = BayOutlet.UnderTheCar, Tail = TailShape.NotchbackAttached }, []);

    [Fact]
    public void Answers_EachWayOfTheAir_HasOneAnswerWhoseSharesAddUp()
    {
        IReadOnlyList<VentAnswer> answers = Saloon.Answers(130);

        Assert.Equal(Saloon.Network().Likely.Openings.Select(o => o.Id), answers.Select(v => v.Vent));
        Assert.All(answers, v => Assert.Equal(1, v.Certainty.ShareAlwaysIn + v.Certainty.ShareAlwaysOut + v.Certainty.ShareTurns, 1e-12));
    }

    [Fact]
    public void Answers_SameAsAskingForOneVentAlone()
    {
        VentCertainty alone = VentCertainty.Of(Saloon.Network(), ExampleNetwork.Air(0), OldCarVents.BonnetRearGap, RoadSpeed.FromKilometresPerHour(130));
        VentCertainty together = Of(OldCarVents.BonnetRearGap).Certainty;

        // Both are asked of the same day; together they share draws and speeds.
        Assert.Equal(alone.ShareAlwaysIn, together.ShareAlwaysIn);
        Assert.Equal(alone.ShareTurns, together.ShareTurns);
    }

    [Fact]
    public void Answers_GapBehindTheBonnetOfAHotBay_TurnsByHeat()
    {
        VentCertainty gap = Of(OldCarVents.BonnetRearGap).Certainty;
        Assert.Equal(VentDirection.Turns, gap.Verdict.Direction);
        Assert.Equal(VentDriver.Heat, gap.Verdict.Reason);
        Assert.False(gap.Verdict.InWhenSlow);
    }

    // A fan that pushes in can only raise the share of draws that take in.
    [Fact]
    public void Answers_HeaterFan_TakesInAtLeastAsOften()
    {
        VentAnswer inlet = Of(OldCarVents.CabinIn);
        Assert.True(inlet.WithFan!.ShareAlwaysIn >= inlet.Certainty.ShareAlwaysIn);
        Assert.All(Saloon.Answers(130).Where(v => v.Vent != OldCarVents.CabinIn), v => Assert.Null(v.WithFan));
    }

    // The pressure falls from the middle to the pillars, so the middle takes in at least as often as the sides.
    [Fact]
    public void Answers_AlongTheScreen_MiddleTakesInMoreOftenThanTheSides()
    {
        MiddleAndSides along = Of(OldCarVents.CabinIn).AlongScreen!;
        Assert.True(along.MiddleInShare > along.SidesInShare, $"{along}");
        Assert.Null((Saloon with { Facts = Saloon.Facts with { CabinInlet = CabinInlet.Nose } }).Answers(130).Single(v => v.Vent == OldCarVents.CabinIn).AlongScreen);
    }

    // Solving on from another speed must end where solving afresh ends.
    [Fact]
    public void SpeedSweep_OnFromAnotherSpeed_SameFlows()
    {
        VentNetwork car = Saloon.Network().Likely;
        SpeedSweep sweep = new(car, ExampleNetwork.Air(0));
        foreach (double kmh in new[] { 130.0, 5, 60, 20, 200 })
        {
            sweep.SolveAt(kmh / 3.6);
            VentSolution afresh = VentSolver.Solve(car, ExampleNetwork.Air(kmh));
            for (int j = 0; j < car.Openings.Count; j++)
            {
                double flow = afresh.Flow(car.Openings[j].Id).KilogramsPerSecond;
                Assert.InRange(sweep.Flow(j), flow - (1e-9 * Math.Abs(flow)) - 1e-13, flow + (1e-9 * Math.Abs(flow)) + 1e-13);
            }
        }
    }

    private static VentAnswer Of(string vent) => Saloon.Answers(130).Single(v => v.Vent == vent);
}
