using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Physics.FlowPaint;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.TestDay;

namespace FixPlanner.Tests.TestDay;

/// <summary>Tufts or paint: unknown and unfit weather fall to tufts, and every yes is a yes of the paint model.</summary>
public sealed class FlowMethodTests
{
    private static readonly TestDayNotes Notes = new([], [], "", "", [new("flow paint", 3, 2, "", true, "", TestPack.FromMemory)], [], [], [], []);

    private static readonly AirSpeed Eighty = AirSpeed.FromKilometresPerHour(80);

    [Theory]
    [InlineData(null, 1.0, true)]
    [InlineData(18.0, 4.0, true)]
    [InlineData(18.0, 1.0, false)]
    [InlineData(-20.0, 1.0, true)]
    public void Of_UnknownOrUnfitWeather_IsTufts(double? celsius, double wind, bool dry)
    {
        FlowMethod method = FlowMethod.Of(Day(celsius, wind, dry), Eighty, Notes);
        Assert.Equal(FlowMethodKind.Tufts, method.Kind);
        Assert.Null(method.Carrier);
        Assert.NotEmpty(method.Because);
    }

    [Fact]
    public void Of_AnyTemperatureAndSpeed_AgreesWithThePaintModel()
    {
        HashSet<FlowMethodKind> seen = [];
        for (int celsius = -5; celsius <= 45; celsius += 5)
        {
            for (int kmh = 20; kmh <= 140; kmh += 20)
            {
                AirSpeed speed = AirSpeed.FromKilometresPerHour(kmh);
                FlowMethod method = FlowMethod.Of(Day(celsius, 1, true), speed, Notes);
                seen.Add(method.Kind);
                PaintWeather weather = new(Temperature.FromDegreesCelsius(celsius), 0.7, Pressure.FromPascals(101_325));
                bool any = Carrier.All.Any(c => c.HasFigures && PaintAdvice.Judge(new(c, weather, speed, Angle.FromDegrees(10))).Verdict == PaintVerdict.PaintWorks);
                Assert.Equal(any, method.Kind != FlowMethodKind.Tufts);
                if (method.Kind == FlowMethodKind.Paint)
                {
                    Assert.Equal(PaintVerdict.PaintWorks, PaintAdvice.Judge(new(method.Carrier!, weather, speed, Angle.FromDegrees(80))).Verdict);
                }
            }
        }

        Assert.Contains(FlowMethodKind.Tufts, seen);
        Assert.True(seen.Count > 1, "the weather never mattered");
    }

    private static DayWeather Day(double? celsius, double wind, bool dry) =>
        new(celsius is { } c ? Temperature.FromDegreesCelsius(c) : null, null, AirSpeed.FromMetresPerSecond(wind), dry, "test");
}
