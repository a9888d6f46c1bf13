using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Logbooks.Estimates;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.RoadLoad;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Quantities;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Physics.RoadLoad;

/// <summary>Top speed as the lower of power and gearing, and what a car at the end of its gearing gains by less drag: nothing.</summary>
public sealed class GearedTopSpeedTests
{
    [Theory]
    [InlineData(110, "gearing")]
    [InlineData(300, "power")]
    public void TopSpeed_LowerOfPowerAndGearing(double gearedKmh, string limitedBy)
    {
        ModelAnswer free = Run(null), held = Run(gearedKmh);

        Assert.Equal("power as far as is known", free.Words["limited_by"]);
        Assert.Equal(limitedBy, held.Words["limited_by"]);
        Assert.Equal(Math.Min(free.Numbers["top_speed_kmh"], gearedKmh), held.Numbers["top_speed_kmh"], 1e-9);
        Assert.Equal(limitedBy == "gearing" ? 0 : free.Numbers["gain_for_tenth_kmh"], held.Numbers["gain_for_tenth_kmh"], 1e-9);
    }

    // Kinematics: 2 pi r n / (60 i), with r 0.28 m and i 4.1 at 3000 and 5500 turns a minute.
    [Fact]
    public void GearedTop_FromTheSpeedAt3000Turns_IsThatOfTheKinematics()
    {
        double at3000 = TopSpeed.ByGearing(Length.FromMetres(0.28), 3000, 4.1).KilometresPerHour;
        GivenInput geared = Car(("speed_at_3000_rpm_kmh", at3000), ("highest_engine_speed_rpm", 5500)).GearedTopKmh!.Value;

        Assert.Equal(TopSpeed.ByGearing(Length.FromMetres(0.28), 5500, 4.1).KilometresPerHour, geared.Range.Likely, 1e-9);
        Assert.Null(Car(("speed_at_3000_rpm_kmh", at3000)).GearedTopKmh);
    }

    [Fact]
    public void LessDrag_CarAtTheEndOfItsGearing_GainsNoSpeed()
    {
        // 60 km/h at 3000 turns and 5000 turns end at 97 to 103 km/h; the car does 110 by its gauge.
        PlannedEffect held = Gain(("top_speed_now_kmh", 110), ("speed_at_3000_rpm_kmh", 60), ("highest_engine_speed_rpm", 5000));
        PlannedEffect free = Gain(("top_speed_now_kmh", 110));

        Assert.Equal(0, held.AsBelieved.High);
        Assert.True(free.AsBelieved.Low > 0);
        Assert.Contains("gearing not known", free.Title);
    }

    private static ModelAnswer Run(double? geared)
    {
        Dictionary<string, Triangle> given = new() { ["mass_kg"] = Triangle.Certain(900), ["drag_area_m2"] = Triangle.Certain(0.8), ["engine_power_kw"] = Triangle.Certain(45) };
        if (geared is { } kmh)
        {
            given["geared_top_speed_kmh"] = Triangle.Certain(kmh);
        }

        return ModelRun.Of(ModelCatalogue.Find("top-speed")!, given).Answer!;
    }

    private static PlannedEffect Gain(params (string Id, double Value)[] facts)
    {
        double[] draws = [.. Enumerable.Repeat(-0.05, 2000)];
        EffectSpread drag = new(EffectOn.Drag, Spread.Certain(-0.05), Spread.Certain(-0.05)) { BelievedDraws = draws, IfCauseDraws = draws };
        return new PhysicalEffects(Car(facts), [.. Enumerable.Repeat(0.8, 2000)]).Following(drag).Single(e => e.Key == "top_speed_change_kmh");
    }

    private static CarInputs Car(params (string Id, double Value)[] facts) => CarInputs.Of(ShippedPack.Look(
        new() { Car = facts.ToDictionary(f => f.Id, f => new FactEntry(FactValue.Of(f.Value), null, null, $"{f.Value}")) }).Situation);
}
