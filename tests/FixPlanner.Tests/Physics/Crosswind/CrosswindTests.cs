using CsCheck;
using FixPlanner.Core.Physics.Crosswind;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Crosswind;

public sealed class CrosswindTests
{
    private static readonly AirDensity Density = AirDensity.FromKilogramsPerCubicMetre(1.2);

    // Own worked example: 11 m/s across at 110 km/h is 19.8 degrees, 877 N, 0.10 g on 900 kg.
    [Fact]
    public void SideLoad_WorkedExample_IsReproduced()
    {
        SideLoad load = Load(110 / 3.6, 11);
        Assert.Equal(19.8, load.Wind.Yaw.Degrees, 0.05);
        Assert.Equal(0.10, load.PathDemand(Mass.FromKilograms(900)), 0.001);
    }

    [Fact]
    public void SideLoad_OtherSide_IsTheOtherWayRound() => Gen.Select(Gen.Double[5, 60], Gen.Double[0, 30]).Sample((v, w) =>
        Math.Abs(Load(v, w).Force.Newtons + Load(v, -w).Force.Newtons) < 1e-9);

    [Fact]
    public void SideLoad_MoreWind_PushesMore() => Gen.Select(Gen.Double[5, 60], Gen.Double[0, 29]).Sample((v, w) => Load(v, w + 1).Force > Load(v, w).Force);

    // At zero turn: with the force at the middle and equal axles no steering is needed; a nose-down-wind moment asks for steering into the wind.
    [Fact]
    public void SteerToHold_EqualAxlesWithoutMoment_IsZero()
    {
        SideLoad load = new(default, Force.FromNewtons(800), default);
        Assert.Equal(0, load.SteerToHold(Length.FromMetres(2.4), 40e3, 40e3).Degrees, 1e-12);
        SideLoad turning = load with { YawMoment = Moment.FromNewtonMetres(300) };
        Assert.Equal(2 * 125 / 40e3, turning.SteerToHold(Length.FromMetres(2.4), 40e3, 40e3).Radians, 1e-12);
    }

    [Fact]
    public void ForwardControlVan_SideForce_IsAboveThatOfACar() =>
        Assert.True(SideCoefficients.ForwardControlVan.SideForcePerDegree.Low >= SideCoefficients.Car.SideForcePerDegree.High);

    // Own worked examples at 110 km/h with 3.3 per square radian: 1.0256 at 3 m/s, 1.0713 at 5 m/s.
    [Theory]
    [InlineData(3, 3.3, 1.0256)]
    [InlineData(5, 3.3, 1.0713)]
    [InlineData(3, 0, 1.00964)]
    public void WindAveragedDrag_WorkedExample_IsReproduced(double wind, double rise, double expected) =>
        Assert.Equal(expected, WindAveragedDrag.Ratio(RoadSpeed.FromMetresPerSecond(30.5556), AirSpeed.FromMetresPerSecond(wind), rise), 5e-5);

    [Fact]
    public void WindAveragedDrag_WithoutRise_IsTheClosedForm() => Gen.Select(Gen.Double[10, 60], Gen.Double[0, 0.99]).Sample((v, share) =>
        Math.Abs(WindAveragedDrag.Ratio(RoadSpeed.FromMetresPerSecond(v), AirSpeed.FromMetresPerSecond(share * v), 0) - (1 + (share * share))) < 1e-9);

    [Fact]
    public void WindAveragedDrag_MoreWindOrMoreRise_IsMore() => Gen.Select(Gen.Double[0.01, 0.5], Gen.Double[0, 6]).Sample((share, rise) =>
    {
        RoadSpeed road = RoadSpeed.FromMetresPerSecond(30);
        double here = WindAveragedDrag.Ratio(road, AirSpeed.FromMetresPerSecond(30 * share), rise);
        return here > 1
            && WindAveragedDrag.Ratio(road, AirSpeed.FromMetresPerSecond(30 * share * 1.1), rise) > here
            && WindAveragedDrag.Ratio(road, AirSpeed.FromMetresPerSecond(30 * share), rise + 0.5) > here;
    });

    [Fact]
    public void ApparentWind_Headwind_HasNoYaw() => Gen.Select(Gen.Double[1, 60], Gen.Double[0, 20]).Sample((v, w) =>
    {
        ApparentWind felt = ApparentWind.Of(RoadSpeed.FromMetresPerSecond(v), AirSpeed.FromMetresPerSecond(w), default);
        return felt.Yaw.Radians == 0 && Math.Abs(felt.Speed.MetresPerSecond - v - w) < 1e-12;
    });

    private static SideLoad Load(double metresPerSecond, double crosswind) => SideLoad.Of(
        ApparentWind.Of(RoadSpeed.FromMetresPerSecond(metresPerSecond), default, AirSpeed.FromMetresPerSecond(crosswind)),
        Density, Area.FromSquareMetres(1.75), Length.FromMetres(2.4), 0.04, 0.007);
}
