using CsCheck;
using FixPlanner.Core.Measurement.Coasting;

namespace FixPlanner.Tests.Measurement.Coasting;

public sealed class CoastCurveTests
{
    public static TheoryData<double, double> Slopes => new() { { 0.124, 6.2e-4 }, { 0.02, 1.1e-3 }, { 0, 6.2e-4 }, { 1e-9, 6.2e-4 }, { -0.05, 6.2e-4 }, { -0.2, 9e-4 } };

    [Theory]
    [MemberData(nameof(Slopes))]
    public void Speeds_RungeKutta_AgreesWithTheClosedFormToABillionth(double a, double b)
    {
        double[] speeds = CoastIntegrator.Speeds((_, v) => a + (b * v * v), 28, 0.05, 400);
        CoastCurve curve = new(a, b);
        Assert.Equal(curve.SpeedAfter(28, 20), speeds[^1], 1e-9 * 28);
        Assert.Equal(curve.SpeedAfter(28, 10), speeds[200], 1e-9 * 28);
    }

    [Theory]
    [MemberData(nameof(Slopes))]
    public void TimeBetween_SpeedAfter_GoesThereAndBack(double a, double b)
    {
        CoastCurve curve = new(a, b);
        double later = curve.SpeedAfter(28, 15);
        Assert.Equal(15, curve.TimeBetween(28, later), 1e-7);
    }

    [Theory]
    [MemberData(nameof(Slopes))]
    public void DistanceBetween_SumOfSpeeds_Agrees(double a, double b)
    {
        double[] speeds = CoastIntegrator.Speeds((_, v) => a + (b * v * v), 28, 0.01, 1500);
        double road = speeds.Zip(speeds.Skip(1), (first, second) => (first + second) / 2 * 0.01).Sum();
        Assert.Equal(road, new CoastCurve(a, b).DistanceBetween(28, speeds[^1]), 1e-5 * road);
    }

    [Fact]
    public void Slopes_AnyCoast_AgreeWithSmallSteps() =>
        Gen.Select(Gen.Double[-0.1, 0.25], Gen.Double[3e-4, 2e-3], Gen.Double[15, 40], Gen.Double[1, 25]).Sample((a, b, from, time) =>
        {
            CoastCurve curve = new(a, b);
            double now = curve.SpeedAfter(from, time);
            if (!(now > 3))
            {
                return true;
            }

            (double byA, double byB, double byFrom) = curve.Slopes(from, now, time);
            return Near(byA, (new CoastCurve(a + 1e-6, b).SpeedAfter(from, time) - new CoastCurve(a - 1e-6, b).SpeedAfter(from, time)) / 2e-6)
                && Near(byB, (new CoastCurve(a, b + 1e-8).SpeedAfter(from, time) - new CoastCurve(a, b - 1e-8).SpeedAfter(from, time)) / 2e-8)
                && Near(byFrom, (curve.SpeedAfter(from + 1e-5, time) - curve.SpeedAfter(from - 1e-5, time)) / 2e-5);
        });

    [Fact]
    public void SpeedAfter_PastTheStop_IsNoNumber() => Assert.True(double.IsNaN(new CoastCurve(0.2, 1e-3).SpeedAfter(5, 100)));

    private static bool Near(double slope, double step) => Math.Abs(slope - step) <= 1e-3 * Math.Abs(step) + 1e-4;
}
