using FixPlanner.Core.Physics.Glass;
using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;
using FixPlanner.Tests.Physics.Vents;

namespace FixPlanner.Tests.Physics.Glass;

public class SealingAndGlassTests
{
    private static readonly UncertainNetwork Estate = OldCarVents.Build(new()
    {
        CabinInlet = CabinInlet.ScreenBase, CabinOutlet = CabinOutlet.RearPillars, BayInlet = BayInlet.Nose, BayOutlet = BayOutlet.UnderTheCar,
        Seals = SealState.Open, Screen = ScreenShape.Upright, Tail = TailShape.SquareBack,
    });

    private static readonly PaneInNetwork Pane = PaneInNetwork.RearGlass(new(Length.FromMetres(1.2), Length.FromMetres(0.45)), TailShape.SquareBack);

    private static readonly LoadAir Gusty = new(default);

    [Fact]
    public void Compare_SealedDoors_PullRises()
    {
        GlassAtSpeed at = Compare(Estate.Scaled(0.25, OldCarVents.DoorSeals, OldCarVents.TailSeal), 130);

        Assert.True(at.ChangeNewtons.Low > 0, $"{at.ChangeNewtons}");
        Assert.True(at.CabinCoefficientAfter.Likely > at.CabinCoefficientBefore.Likely);
        Assert.NotNull(at.MattersMost);
    }

    [Fact]
    public void Compare_LargerOutletInATightCar_PullFalls()
    {
        // In a car with open door seals it need not: there the cabin may lie below the outlet's pressure already.
        UncertainNetwork tight = Estate.Scaled(0.1, OldCarVents.DoorSeals, OldCarVents.TailSeal);

        Spread change = SealingAndGlass.Compare(tight, tight.Scaled(4, OldCarVents.CabinOut), Pane, ExampleNetwork.Air(0), Gusty, [RoadSpeed.FromKilometresPerHour(130)])
            .Single().ChangeNewtons;

        Assert.True(change.High < 0, $"{change}");
    }

    [Fact]
    public void Compare_NoChange_IsExactlyNothing()
    {
        Spread change = Compare(Estate, 130).ChangeNewtons;
        Assert.Equal(0, change.Low);
        Assert.Equal(0, change.High);
    }

    [Fact]
    public void Compare_Twice_SameFigures() => Assert.Equal(Compare(Estate, 110).PullNewtonsBefore, Compare(Estate, 110).PullNewtonsBefore);

    [Fact]
    public void ForGate_GuessedPressures_NeverGoBelowTheFloorAndSealingAddsToIt()
    {
        GlassAtSpeed at = Compare(Estate.Scaled(0.25, OldCarVents.DoorSeals, OldCarVents.TailSeal), 130);

        Assert.Equal(PaneInNetwork.UnmeasuredFloor, PaneInNetwork.ForGate(new(0.1, 0.2, 0.3), null, null));
        Assert.Equal(0.25, PaneInNetwork.ForGate(at.AcrossBefore, null, 0.25));
        Assert.Equal(0.7 + at.AcrossChange.High, PaneInNetwork.ForGate(new(0.1, 0.2, 0.3), at.AcrossChange, null), 1e-12);
        Assert.Equal(0.7, PaneInNetwork.ForGate(new(0.1, 0.2, 0.3), new(-0.2, -0.1, -0.05), null));
    }

    [Fact]
    public void AnySealingOfAWayOut_NeverLowersThePull()
    {
        Random chance = new(11);
        PaneInNetwork pane = Pane;
        for (int i = 0; i < 300; i++)
        {
            // Old cars by chance, air leaving at the door seals: there sealing can only raise the pull.
            double[] values = [.. Estate.Inputs.Select(input => input.Value.Quantile(0.001 + (0.998 * chance.NextDouble())))];
            VentNetwork car = Estate.Drawn(values);
            AirOnCar air = ExampleNetwork.Air(30 + (170 * chance.NextDouble()));
            VentSolution before = VentSolver.Solve(car, air);
            if (before.Flow(OldCarVents.DoorSeals).KilogramsPerSecond >= 0)
            {
                continue;
            }

            double last = pane.CoefficientAcross(before, -0.2);
            foreach (double left in new[] { 0.8, 0.5, 0.2, 0.05 })
            {
                double across = pane.CoefficientAcross(VentSolver.Solve(car.Scaled(left, OldCarVents.DoorSeals), air), -0.2);
                Assert.True(across >= last - 1e-9);
                last = across;
            }
        }
    }

    private static GlassAtSpeed Compare(UncertainNetwork after, double kilometresPerHour) =>
        SealingAndGlass.Compare(Estate, after, Pane, ExampleNetwork.Air(0), Gusty, [RoadSpeed.FromKilometresPerHour(kilometresPerHour)]).Single();
}
