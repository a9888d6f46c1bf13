using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Panels;

public class PanelTests
{
    private static readonly HingedPanel Bonnet = new(Area.FromSquareMetres(1.2), Mass.FromKilograms(15), 0.5, 0.65);

    [Fact]
    public void PeakPressure_Gust_AddsToTheSpeed()
    {
        LoadAir air = new(AirSpeed.FromMetresPerSecond(30)) { Density = AirDensity.FromKilogramsPerCubicMetre(1.2), Gust = AirSpeed.FromMetresPerSecond(6) };

        Assert.Equal(0.5 * 1.2 * 36 * 36, air.PeakPressure.Pascals, 1e-9);
        Assert.Equal(1.44, air.GustFactor, 1e-9);
    }

    [Fact]
    public void SpeedAt_RoundTrip_BackToThePressure()
    {
        LoadAir air = new(AirSpeed.FromMetresPerSecond(41)) { PassingFactor = LoadAir.LorryFactor };
        Assert.Equal(41, LoadAir.SpeedAt(air.PeakPressure, air.Density, air.Gust, air.PassingFactor).MetresPerSecond, 1e-9);
    }

    [Fact]
    public void SpeedAt_GustAloneIsEnough_Zero() =>
        Assert.Equal(0, LoadAir.SpeedAt(PressureDifference.FromPascals(1), LoadAir.ColdDay, LoadAir.UsualGust).MetresPerSecond);

    [Fact]
    public void LiftsAt_ItsOwnSpeed_LatchCarriesNothing()
    {
        AirSpeed lifts = Bonnet.LiftsAt(0.2, -0.4, new LoadAir(default))!.Value;
        Force pull = PanelLoad.Outward(0.2, -0.4, Bonnet.Area, new LoadAir(lifts));

        Assert.Equal(0, Bonnet.LatchLoad(pull).Newtons, 1e-9);
    }

    [Fact]
    public void LiftsAt_PressedDown_Never() => Assert.Null(Bonnet.LiftsAt(-0.3, 0.1, new LoadAir(default)));

    [Fact]
    public void SealLiftsAt_TwiceTheSealForce_RootTwoOfTheSpeedInStillAir()
    {
        LoadAir still = new(default) { Gust = default };
        AirSpeed At(double force) => DoorFrame.SealLiftsAt(LineLoad.FromNewtonsPerMetre(force), Length.FromMetres(3.6), Area.FromSquareMetres(0.8), 0.9, still);

        Assert.Equal(Math.Sqrt(2), At(120).MetresPerSecond / At(60).MetresPerSecond, 1e-12);
    }

    [Fact]
    public void TopOpensAt_ItsOwnSpeed_TopHasMovedByTheSealsGive()
    {
        Stiffness stiffness = Stiffness.FromNewtonsPerMillimetre(20);
        AirSpeed opens = DoorFrame.TopOpensAt(Length.FromMillimetres(3), stiffness, Area.FromSquareMetres(0.34), 0.7, new LoadAir(default));
        Force pull = DoorFrame.PullOut(0.7, Area.FromSquareMetres(0.34), new LoadAir(opens));

        Assert.Equal(3, DoorFrame.TopGap(pull, stiffness).Millimetres, 1e-9);
    }

    [Fact]
    public void LoadFactor_130To200_TheSquareAndLessInTheSameGust()
    {
        AirSpeed from = AirSpeed.FromKilometresPerHour(130), to = AirSpeed.FromKilometresPerHour(200);

        Assert.Equal(Math.Pow(200.0 / 130, 2), SpeedRise.LoadFactor(from, to, default), 1e-12);
        Assert.True(SpeedRise.LoadFactor(from, to, LoadAir.UsualGust) < SpeedRise.LoadFactor(from, to, default));
    }

    [Fact]
    public void LoadAir_SpeedBelowZero_IsRefused() => Assert.Throws<ArgumentOutOfRangeException>(() => new LoadAir(AirSpeed.FromMetresPerSecond(-1)));
}
