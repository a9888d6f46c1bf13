using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Planning;

/// <summary>One change of drag area in all its units, against the same figures worked out by hand.</summary>
public sealed class PhysicalEffectsTests
{
    private static readonly PlannedEffect[] Drag =
        [.. new PhysicalEffects(CarInputs.Of(ShippedPack.Demo("lindle"))).Of(new(EffectOn.Drag, Spread.Certain(-0.05), new(-0.08, -0.05, -0.02)), null, null)];

    [Theory]
    [InlineData("drag_force_change_at_100_kmh_n", -23.148, 0.001)] // 0.5 x 1.2 x 27.778^2 x 0.05
    [InlineData("drag_power_change_at_100_kmh_kw", -0.6989, 0.0005)] // 23.148 N x 27.778 m/s / 0.92
    [InlineData("fuel_change_at_100_kmh_l_per_100km", -0.2167, 0.0005)] // 23.148 / 36 kWh x 0.31 / 0.92
    [InlineData("carbon_dioxide_change_at_100_kmh_g_per_km", -5.049, 0.01)] // 0.2167 x 2330 / 100
    public void Of_TwentiethOfASquareMetre_IsWhatTheFormulaGives(string key, double expected, double tolerance) =>
        Assert.Equal(expected, Drag.Single(e => e.Key == key).AsBelieved.Likely, tolerance);

    [Fact]
    public void Of_LessDrag_MoreTopSpeed_AboutAThirdOfItsShare()
    {
        // The estate has about 0.85 m2: 0.05 m2 is 6 % less drag, and top speed answers with 0.27 to 0.33 of that.
        double gain = Drag.Single(e => e.Key == "top_speed_change_kmh").AsBelieved.Likely;

        Assert.InRange(gain, 140 * 0.05 / 0.95 * 0.25, 140 * 0.05 / 0.75 * 0.34);
    }

    [Fact]
    public void Of_EveryUnit_KeepsItsRangeInOrderAndOpens()
    {
        Assert.All(Drag, e => Assert.True(e.IfCause.Low <= e.IfCause.Likely && e.IfCause.Likely <= e.IfCause.High, e.Key));
        Assert.All(Drag.Skip(1), e => Assert.NotEmpty(e.Origin!.Inputs));
        Assert.All(Drag.Skip(1), e => Assert.NotNull(e.MattersMost));
    }
}
