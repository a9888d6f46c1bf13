using CsCheck;
using FixPlanner.Core.Physics.Air;
using FixPlanner.Core.Physics.Lift;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Lift;

public sealed class LiftTests
{
    private static readonly AirDensity Density = AirDensity.FromKilogramsPerCubicMetre(1.2);
    private static readonly Area Frontal = Area.FromSquareMetres(1.75);
    private static readonly Mass RearAxle = Mass.FromKilograms(405);

    // Own worked example: 6.9 % and 16.3 % at CL 0.20, 10.3 % and 24.5 % at 0.30, for 130 and 200 km/h.
    [Theory]
    [InlineData(0.20, 130, 0.069)]
    [InlineData(0.20, 200, 0.163)]
    [InlineData(0.30, 130, 0.103)]
    [InlineData(0.30, 200, 0.245)]
    public void Share_WorkedExample_IsReproduced(double lift, double kilometresPerHour, double expected) =>
        Assert.Equal(expected, Share(lift, kilometresPerHour / 3.6), 6e-4);

    [Fact]
    public void SpeedAt_OfAShare_GivesThatShareBack() => Gen.Select(Gen.Double[0.02, 0.5], Gen.Double[0.02, 0.3]).Sample((lift, share) =>
        Math.Abs(Share(lift, AxleUnloading.SpeedAt(Frontal, lift, RearAxle, share, Density)!.Value.MetresPerSecond) - share) < 1e-12);

    [Fact]
    public void SpeedAt_DownForce_NeverComes() => Assert.Null(AxleUnloading.SpeedAt(Frontal, -0.1, RearAxle, 0.1, Density));

    [Fact]
    public void CoefficientFromRise_OfTheLiftThatMadeIt_IsTheSame() => Gen.Select(Gen.Double[-0.3, 0.5], Gen.Double[20, 60]).Sample((lift, v) =>
    {
        PressureDifference q = DynamicPressure.Of(Density, AirSpeed.FromMetresPerSecond(v));
        Stiffness rate = Stiffness.FromNewtonsPerMillimetre(40);
        double rise = q.Pascals * Frontal.SquareMetres * lift / rate.NewtonsPerMetre;
        return Math.Abs(AxleUnloading.CoefficientFromRise(Length.FromMetres(rise), rate, Frontal, q) - lift) < 1e-12;
    });

    [Theory]
    [InlineData(0.05, 0.09, LiftVerdict.Quiet)]
    [InlineData(0.05, 0.11, LiftVerdict.Caution)]
    [InlineData(0.00, 0.09, LiftVerdict.Caution)] // the tail is lighter than the nose by more than 8 %
    [InlineData(0.10, 0.16, LiftVerdict.HoldSpeed)]
    [InlineData(0.10, 0.21, LiftVerdict.Stop)]
    [InlineData(0.25, 0.05, LiftVerdict.Stop)]
    public void Judge_Shares_GivesItsVerdict(double front, double rear, LiftVerdict expected) => Assert.Equal(expected, LiftLimits.Judge(front, rear));

    [Fact]
    public void Judge_MoreLift_IsNeverMilder() => Gen.Select(Gen.Double[-0.1, 0.3], Gen.Double[-0.1, 0.3], Gen.Double[0, 0.1]).Sample((front, rear, more) =>
        LiftLimits.Judge(front, rear + more) >= LiftLimits.Judge(front, rear));

    private static double Share(double lift, double metresPerSecond) =>
        AxleUnloading.Share(Frontal, lift, RearAxle, DynamicPressure.Of(Density, AirSpeed.FromMetresPerSecond(metresPerSecond)));
}
