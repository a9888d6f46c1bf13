using FixPlanner.Core.Physics.Wake;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Wake;

public class WakeTests
{
    [Fact]
    public void DragAreaChange_RecoveredPressure_IsLessDrag() =>
        Assert.Equal(-0.032, BasePressure.DragAreaChange(0.02, Area.FromSquareMetres(1.6)).SquareMetres, 1e-12);

    [Fact]
    public void Coefficient_StagnationPressure_IsOne()
    {
        // By definition of the pressure coefficient.
        AirSpeed speed = AirSpeed.FromMetresPerSecond(25);
        Assert.Equal(1, BasePressure.Coefficient(PressureDifference.FromPascals(0.5 * 1.2 * 625), speed, AirDensity.FromKilogramsPerCubicMetre(1.2)), 1e-12);
    }

    [Theory]
    [InlineData(-0.10, -0.20, -0.20, -0.15, WakeEdge.Roof)]
    [InlineData(-0.20, -0.20, -0.20, -0.10, WakeEdge.Underbody)]
    [InlineData(-0.15, -0.20, -0.20, -0.14, WakeEdge.NotTold)]
    public void FedFrom_LargerFall_NamesTheEdge(double roof, double upper, double lower, double floor, WakeEdge expected) =>
        Assert.Equal(expected, new WakeTaps(roof, upper, lower, floor).FedFrom());

    [Fact]
    public void DragAreaChangeSince_ThereAndBack_AddsUpToNothing()
    {
        WakeTaps before = new(-0.2, -0.2, -0.18, -0.1), after = new(-0.2, -0.17, -0.16, -0.1);
        Area area = Area.FromSquareMetres(1.5);

        Assert.Equal(0, after.DragAreaChangeSince(before, area).SquareMetres + before.DragAreaChangeSince(after, area).SquareMetres, 1e-12);
    }
}
