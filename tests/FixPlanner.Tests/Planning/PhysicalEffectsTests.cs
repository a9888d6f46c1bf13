using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Planning;

/// <summary>One change of drag area in all its units, against the same figures worked out by hand.</summary>
public sealed class PhysicalEffectsTests
{
    // Mean of 1/x over a triangle in closed form, for the driveline of 0.88, 0.92, 0.94.
    private const double OverDriveline = 1.0950956;

    private static readonly PhysicalEffects Lindle = new(CarInputs.Of(ShippedPack.Demo("lindle")), Even(0.80, 0.90));

    private static readonly PlannedEffect[] Drag = [.. Lindle.Of(Drawn(EffectOn.Drag, Even(-0.05, -0.05), Even(-0.08, -0.02)), null, null)];

    private static readonly PlannedEffect[] Step = [.. Lindle.Of(Drawn(EffectOn.Cooling, Even(1, 1), Even(0, 2)), null, null)];

    [Theory]
    [InlineData("drag_force_change_at_100_kmh_n", -23.148, 0.001)] // 0.5 x 1.2 x 27.778^2 x 0.05
    [InlineData("drag_power_change_at_100_kmh_kw", -0.64301 * OverDriveline, 0.0005)] // 23.148 N x 27.778 m/s, over the driveline
    [InlineData("fuel_change_at_100_kmh_l_per_100km", -0.64301 * 0.313333 * OverDriveline, 0.0005)] // 23.148 / 36 kWh x mean slope 0.31333, over the driveline
    [InlineData("carbon_dioxide_change_at_100_kmh_g_per_km", -0.64301 * 0.313333 * OverDriveline * 23.3, 0.01)] // the same x 2330 / 100
    public void Of_TwentiethOfASquareMetre_IsWhatTheFormulaGives(string key, double expected, double tolerance) =>
        Assert.Equal(expected, Drag.Single(e => e.Key == key).AsBelieved.Likely, tolerance);

    // The change itself spreads evenly from -0.08 to -0.02; the driveline widens that by little. Ends times ends would tell -1.26 to -0.27 kW.
    [Fact]
    public void Of_PowerOfAnEvenChange_RangeIsThatOfTheDrawsAndNotOfTheEnds()
    {
        Spread power = Drag.Single(e => e.Key == "drag_power_change_at_100_kmh_kw").IfCause;
        Assert.Equal(-0.077 * 12.8602 * OverDriveline, power.Low, 0.012);
        Assert.Equal(-0.023 * 12.8602 * OverDriveline, power.High, 0.012);
    }

    // A step takes a tenth of the rise; the estate with twice the power rises 50 to 120 K over the air.
    [Fact]
    public void Of_StepOfCooling_IsToldInKelvinsStandingClimbingAndFast()
    {
        string[] keys = ["cooling_margin_standing_change_k", "cooling_margin_climbing_change_k", "cooling_margin_change_k"];
        Assert.Equal(keys, Step.Skip(1).Select(e => e.Key));
        Assert.All(Step.Skip(1), e => Assert.InRange(e.AsBelieved.Likely, 2, 15));
        Assert.All(Step.Skip(1), e => Assert.InRange(e.AsBelieved.Low, 0, e.AsBelieved.Likely));
    }

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

    private static EffectSpread Drawn(EffectOn on, double[] believed, double[] ifCause) =>
        new(on, Spread.OfDraws([.. believed]), Spread.OfDraws([.. ifCause])) { BelievedDraws = believed, IfCauseDraws = ifCause };

    // In an order that has nothing to do with the streams of chance: steps of a number that shares no factor with 2,000.
    private static double[] Even(double low, double high) => [.. Enumerable.Range(0, 2000).Select(i => low + ((high - low) * ((i * 1237 % 2000) + 0.5) / 2000))];
}
