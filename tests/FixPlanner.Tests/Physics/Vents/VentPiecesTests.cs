using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Vents;

public class VentPiecesTests
{
    [Fact]
    public void InSeries_TwoEqualOpenings_OneOverRootTwo() =>
        Assert.Equal(0.01 / Math.Sqrt(2), EffectiveArea.InSeries(Area.FromSquareMetres(0.01), Area.FromSquareMetres(0.01)).SquareMetres, 1e-12);

    [Fact]
    public void InParallel_Areas_AddUp() =>
        Assert.Equal(0.03, EffectiveArea.InParallel(Area.FromSquareMetres(0.01), Area.FromSquareMetres(0.02)).SquareMetres, 1e-12);

    [Fact]
    public void GrilleLoss_OpenFrame_NothingLostAndJetHeadAlone()
    {
        Assert.Equal(0, EffectiveArea.GrilleLoss(1), 1e-12);
        Assert.Equal(0, EffectiveArea.MeshLoss(1), 1e-12);
        Assert.Equal(1, EffectiveArea.Discharge(0), 1e-12);
    }

    [Fact]
    public void OfEffectiveArea_AtItsReferencePressure_PassesWhatTheOrificeDoes()
    {
        AirDensity density = AirDensity.FromKilogramsPerCubicMetre(1.2);
        PressureDifference reference = PressureDifference.FromPascals(200);
        Crack crack = Crack.OfEffectiveArea(Area.FromSquareMetres(0.002), reference, density);
        MassFlow orifice = new Orifice(Area.FromSquareMetres(0.002), 1).FlowAt(reference, density);

        Assert.Equal(orifice.KilogramsPerSecond, 1.2 * crack.FlowAtOnePascal.CubicMetresPerSecond * Math.Pow(200, crack.Exponent), 1e-8);
    }

    [Fact]
    public void Doorway_SameWeightBothSides_BehavesAsAnOrifice()
    {
        AirDensity air = AirDensity.FromKilogramsPerCubicMetre(1.2);
        (MassFlow forward, MassFlow back) = new Doorway(Length.FromMetres(0.5), Length.FromMetres(0.4), 0.6).Streams(PressureDifference.FromPascals(50), air, air);

        Assert.Equal(0.6 * 0.2 * Math.Sqrt(2 * 1.2 * 50), forward.KilogramsPerSecond, 1e-6);
        Assert.Equal(0, back.KilogramsPerSecond);
    }

    [Fact]
    public void Doorway_NeutralPlaneAtMidHeight_ClosedFormOfTheExchange()
    {
        // Exchange through a door with the neutral plane at its middle: m = Cd/3 w h^1.5 sqrt(g rho drho) (textbook).
        (double heavy, double light) = (1.25, 1.20);
        (MassFlow forward, _) = new Doorway(Length.FromMetres(1), Length.FromMetres(2.2), 0.78)
            .Streams(PressureDifference.FromPascals(0), AirDensity.FromKilogramsPerCubicMetre(light), AirDensity.FromKilogramsPerCubicMetre(heavy));

        Assert.Equal(0.78 / 3 * Math.Pow(2.2, 1.5) * Math.Sqrt(9.80665 * light * (heavy - light)), forward.KilogramsPerSecond, 1e-9);
    }

    [Fact]
    public void ShareFrom_ExampleCar_IsTheBulkheadsShareOfAllThatEnters()
    {
        VentSolution solution = VentSolver.Solve(ExampleNetwork.Car(), ExampleNetwork.Air(110));

        double share = AirOrigin.ShareFrom(solution, "bay")["cabin"];

        double bulkhead = solution.Flow("bulkhead").KilogramsPerSecond, cowl = solution.Flow("cowl").KilogramsPerSecond;
        Assert.Equal(bulkhead / (bulkhead + cowl), share, 1e-9);
        Assert.Equal(1, AirOrigin.ShareFrom(solution, "bay")["bay"]);
    }

    [Fact]
    public void Trace_ParkedHotCar_BayAirLeavesAtTheRearGap()
    {
        FumesPath fumes = FumesPath.Trace(VentSolver.Solve(ExampleNetwork.Car(80), ExampleNetwork.Air(0)), "bonnet-rear-gap", "cowl");
        FumesPath moving = FumesPath.Trace(VentSolver.Solve(ExampleNetwork.Car(80), ExampleNetwork.Air(110)), "bonnet-rear-gap", "cowl");

        Assert.Equal(VentSolver.Solve(ExampleNetwork.Car(80), ExampleNetwork.Air(0)).Flow("cowl").KilogramsPerSecond > 0, fumes.ReturnsAtTheIntake);
        Assert.False(moving.ReturnsAtTheIntake);
        Assert.InRange(moving.ShareOfCabinAir, 0.01, 0.2);
    }

    [Fact]
    public void PressureCoefficient_OuterThird_HasTheGivenMean()
    {
        double sum = 0;
        for (int i = 0; i < 1000; i++)
        {
            sum += ScreenBase.PressureCoefficient((2.0 / 3) + ((i + 0.5) / 3000), 0.4, 0.05);
        }

        Assert.Equal(0.05, sum / 1000, 1e-6);
    }

    [Fact]
    public void Along_CabinPressureBetweenMiddleAndSides_MiddleInSidesOut()
    {
        VentNetwork car = ExampleNetwork.Car().Changed(opening => opening.Id is "extractor" or "door-seals" or "tailgate"
            ? opening with { PressureCoefficient = 0.1 } : opening);

        IReadOnlyList<ScreenBaseStation> stations = ScreenBase.Along(car, ExampleNetwork.Air(110), "cowl", 0.5, -0.1);

        Assert.True(stations[7].Flow.KilogramsPerSecond > 0);
        Assert.True(stations[0].Flow.KilogramsPerSecond < 0);
        Assert.Equal(stations[0].Flow.KilogramsPerSecond, stations[^1].Flow.KilogramsPerSecond, 1e-9);
    }

    [Fact]
    public void VentNetwork_ClosedCompartment_IsRefusedWithItsName()
    {
        ArgumentException refusal = Assert.Throws<ArgumentException>(() => new VentNetwork([new Compartment("boot", Temperature.FromDegreesCelsius(20))], []));
        Assert.Contains("boot", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Opening_FromAPlaceToItself_IsRefused() =>
        Assert.Throws<ArgumentException>(() => new Opening("loop", "cabin", "cabin", new Orifice(Area.FromSquareMetres(0.1)), Length.FromMetres(1)));

    [Theory]
    [InlineData(0)]
    [InlineData(-0.1)]
    [InlineData(double.NaN)]
    public void Orifice_AreaNotAboveZero_IsRefused(double squareMetres) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new Orifice(Area.FromSquareMetres(squareMetres)));
}
