using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Vents;

public class VentScanTests
{
    private static readonly RoadSpeed Fast = RoadSpeed.FromKilometresPerHour(200);

    [Fact]
    public void Of_WindOnly_NeverTurns()
    {
        // All pressures go with speed squared, so no sign can change (scaling law).
        foreach (Opening opening in ExampleNetwork.Car().Openings)
        {
            VentVerdict verdict = VentScan.Of(ExampleNetwork.Car(), ExampleNetwork.Air(0), opening.Id, Fast);
            Assert.Contains(verdict.Direction, new[] { VentDirection.AlwaysIn, VentDirection.AlwaysOut });
            Assert.Equal(VentDriver.BodyPressure, verdict.Reason);
            Assert.Empty(verdict.TurnsAt);
        }
    }

    [Fact]
    public void Of_HotBay_RearGapTurnsFromOutToInByHeat()
    {
        VentVerdict verdict = VentScan.Of(ExampleNetwork.Car(80), ExampleNetwork.Air(0), "bonnet-rear-gap", Fast);

        Assert.Equal(VentDirection.Turns, verdict.Direction);
        Assert.Equal(VentDriver.Heat, verdict.Reason);
        Assert.False(verdict.InWhenSlow);
        Assert.Single(verdict.TurnsAt);
    }

    [Fact]
    public void Of_FanAgainstTheWind_TurnsByFan()
    {
        // A fan of 100 Pa blocked blows out against a coefficient of 0.2 over the rest: it loses at q = 500 Pa, 104 km/h in air of 1.2.
        Blower fan = new(new Orifice(Area.FromSquareMetres(0.001)), PressureDifference.FromPascals(100), VolumeFlow.FromCubicMetresPerSecond(0.02));
        VentNetwork cabin = new(
            [new Compartment("cabin", Temperature.FromDegreesCelsius(20))],
            [
                new Opening("fan", "cabin", Compartment.Outside, fan, Length.FromMetres(1)) { PressureCoefficient = 0.2 },
                Opening.FromOutside("open", "cabin", new Orifice(Area.FromSquareMetres(0.3)), 0, Length.FromMetres(1)),
            ]);

        VentVerdict verdict = VentScan.Of(cabin, ExampleNetwork.Air(0), "fan", Fast);

        Assert.Equal(VentDriver.Fan, verdict.Reason);
        Assert.Equal(Math.Sqrt(2 * 500 / 1.2), verdict.TurnsAt[0].MetresPerSecond, 0.02);
    }

    [Fact]
    public void Of_CrossWind_TurnsByNaturalWind()
    {
        Opening vent = Opening.FromOutside("cowl", "cabin", new Orifice(Area.FromSquareMetres(1e-4)), 0.05, Length.FromMetres(1)) with { ChangePerDegreeOfYaw = -0.02 };
        Opening rest = Opening.FromOutside("rest", "cabin", new Orifice(Area.FromSquareMetres(0.1)), -0.15, Length.FromMetres(1));
        AirOnCar windy = ExampleNetwork.Air(0) with { CrossWind = AirSpeed.FromMetresPerSecond(6) };

        VentVerdict verdict = VentScan.Of(new([new Compartment("cabin", windy.Temperature)], [vent, rest]), windy, "cowl", Fast);

        Assert.Equal(VentDriver.NaturalWind, verdict.Reason);
        Assert.Equal(6 / Math.Tan(10 * Math.PI / 180), verdict.TurnsAt[0].MetresPerSecond, 0.02);
    }

    [Fact]
    public void IsClose_VentNearCabinPressure_SaysSo()
    {
        VentNetwork cabin = new(
            [new Compartment("cabin", Temperature.FromDegreesCelsius(20))],
            [
                Opening.FromOutside("vent", "cabin", new Orifice(Area.FromSquareMetres(0.001)), 0.03, Length.FromMetres(1)),
                Opening.FromOutside("rest", "cabin", new Orifice(Area.FromSquareMetres(0.1)), 0, Length.FromMetres(1)),
            ]);

        Assert.True(VentScan.Of(cabin, ExampleNetwork.Air(0), "vent", Fast).IsClose);
    }
}
