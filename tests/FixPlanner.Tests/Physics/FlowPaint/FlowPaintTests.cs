using CsCheck;
using FixPlanner.Core.Physics.FlowPaint;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.FlowPaint;

public class FlowPaintTests
{
    private static readonly Length OneMetre = Length.FromMetres(1);
    private static readonly Length Film = Length.FromMetres(100e-6);
    private static readonly Length HalfFilm = Length.FromMetres(50e-6);
    private static readonly Angle Upright = Angle.FromDegrees(90);

    public static TheoryData<string, double, double, double> SetMinutes => new()
    {
        // Own computation outside the program (closed form in Python), attached panel, 100 micrometres, pigment doubles the viscosity.
        { "white-spirit", 5, 80, 1.6 }, { "white-spirit", 20, 80, 0.8 }, { "white-spirit", 35, 110, 0.3 },
        { "kerosene", 5, 50, 11 }, { "kerosene", 20, 80, 3.0 }, { "kerosene", 35, 80, 1.6 },
        { "light-diesel", 20, 110, 5 }, { "diesel", 20, 80, 15 }, { "diesel", 35, 50, 21 }, { "light-lamp-oil", 20, 80, 1.6 },
    };

    private static PaintWeather Day(double celsius, double humidity = 0.5, double? panelCelsius = null) => new(
        Temperature.FromDegreesCelsius(celsius), humidity, Pressure.FromPascals(101_325),
        panelCelsius is { } panel ? Temperature.FromDegreesCelsius(panel) : null);

    [Theory]
    [MemberData(nameof(SetMinutes))]
    public void Time_Carrier_LiesByTheTable(string carrier, double celsius, double kmh, double minutes)
    {
        Duration time = FilmSetting.Time(Carrier.Find(carrier)!, Day(celsius), AirSpeed.FromKilometresPerHour(kmh), OneMetre, Film);

        // The table is rounded to two figures; the rest is properties at the film's temperature.
        Assert.InRange(time.Minutes, minutes * 0.85, minutes * 1.15);
    }

    [Fact]
    public void Time_HeavierCarrier_TakesLonger()
    {
        Carrier[] inOrder = [Carrier.Isopropanol, Carrier.WhiteSpirit, Carrier.LightLampOil, Carrier.Kerosene, Carrier.LightDiesel, Carrier.Diesel];
        Gen.Select(Gen.Double[0, 40], Gen.Double[8, 40]).Sample((celsius, speed) =>
        {
            double[] times = [.. inOrder.Select(c => FilmSetting.Time(c, Day(celsius), AirSpeed.FromMetresPerSecond(speed), OneMetre, Film).Seconds)];
            Assert.Equal(times.Order(), times);
        }, iter: 30);
    }

    [Fact]
    public void Time_FasterAirOrThinnerFilm_IsShorter() =>
        Gen.Select(Gen.Double[5, 40], Gen.Double[40e-6, 300e-6], Gen.Double[0, 40]).Sample((speed, film, celsius) =>
        {
            double At(double ms, double m) => FilmSetting.Time(Carrier.Kerosene, Day(celsius), AirSpeed.FromMetresPerSecond(ms), OneMetre, Length.FromMetres(m)).Seconds;
            Assert.True(At(speed + 2, film) < At(speed, film));
            Assert.True(At(speed, film / 2) < At(speed, film));
        }, iter: 50);

    [Fact]
    public void Seconds_WithoutEvaporation_IsTheLimitOfTheClosedForm()
    {
        double dry = FilmSetting.Seconds(1e-4, 1e-6, 5e3, 0);
        double nearly = FilmSetting.Seconds(1e-4, 1e-6, 5e3, 1e-15);

        Assert.Equal(1, nearly / dry, 1e-3);
    }

    [Fact]
    public void FluxKgM2S_WaterInDampAir_FallsToDew()
    {
        double dry = FilmEvaporation.FluxKgM2S(Carrier.Water, Day(20, 0), AirSpeed.FromMetresPerSecond(20), OneMetre);
        double damp = FilmEvaporation.FluxKgM2S(Carrier.Water, Day(20, 1), AirSpeed.FromMetresPerSecond(20), OneMetre);
        double coldPanel = FilmEvaporation.FluxKgM2S(Carrier.Water, Day(20, 0.9, 5), AirSpeed.FromMetresPerSecond(20), OneMetre);

        Assert.True(dry > 0);
        Assert.Equal(0, damp, 1e-12);
        Assert.True(coldPanel < 0);
    }

    [Fact]
    public void AdiabaticFilm_Isopropanol_FreezesDewOnACoolDay()
    {
        // Own computation outside the program: about -3 degrees in air of 5 degrees.
        double film = FilmEvaporation.AdiabaticFilm(Carrier.Isopropanol, Day(5)).DegreesCelsius;

        Assert.InRange(film, -5, -1);
    }

    [Theory]
    [InlineData(30, 0.68)]
    [InlineData(50, 1.7)]
    [InlineData(80, 3.9)]
    [InlineData(100, 5.9)]
    public void Ratio_UprightPanel_GrowsWithSpeed(double kmh, double expected)
    {
        // Own computation outside the program, on a carrier 5 % heavier than dodecane; 30 km/h from 50 by the power 1.8.
        double ratio = StreakOrDrip.Ratio(Carrier.Kerosene, Day(20), AirSpeed.FromKilometresPerHour(kmh), OneMetre, HalfFilm, Upright);

        Assert.InRange(ratio, expected * 0.85, expected * 1.15);
    }

    [Fact]
    public void Ratio_LevelPanel_HasNoGravityToFight() =>
        Assert.Equal(double.PositiveInfinity, StreakOrDrip.Ratio(Carrier.Kerosene, Day(20), AirSpeed.FromKilometresPerHour(50), OneMetre, HalfFilm, Angle.FromDegrees(0)));

    [Fact]
    public void RatioWhereSeparated_AlwaysBelowAttached()
    {
        AirSpeed speed = AirSpeed.FromKilometresPerHour(80);
        Triangle separated = StreakOrDrip.RatioWhereSeparated(Carrier.Kerosene, Day(20), speed, HalfFilm, Upright);

        Assert.True(separated.High < StreakOrDrip.Ratio(Carrier.Kerosene, Day(20), speed, OneMetre, HalfFilm, Upright));
    }

    [Fact]
    public void StreakAngle_StrongWind_IsThatOfTheFlow()
    {
        Assert.Equal(10, StreakOrDrip.StreakAngle(1e6, Angle.FromDegrees(10)).Degrees, 1e-3);
        Assert.Equal(-45, StreakOrDrip.StreakAngle(1, Angle.FromDegrees(0)).Degrees, 1e-9);
    }

    [Fact]
    public void Judge_MotorwaySpeedInSpring_KeroseneWorks()
    {
        PaintAnswer answer = PaintAdvice.Judge(new(Carrier.Kerosene, Day(15), AirSpeed.FromKilometresPerHour(90), Upright));

        Assert.Equal(PaintVerdict.PaintWorks, answer.Verdict);
        Assert.Empty(answer.Obstacles);
        Assert.True(answer.Figures!.SetQuickest < answer.Figures.SetLikely);
    }

    [Fact]
    public void Judge_TownSpeedOnAnUprightPanel_SaysTuftsAndTheSpeedThatWouldDo()
    {
        PaintAnswer answer = PaintAdvice.Judge(new(Carrier.Kerosene, Day(15), AirSpeed.FromKilometresPerHour(40), Upright));

        Assert.Equal(PaintVerdict.UseTufts, answer.Verdict);
        Assert.Contains(PaintObstacle.Drips, answer.Obstacles);
        PaintChange speed = Assert.Single(answer.Changes, change => change.FromSpeed is not null);
        Assert.InRange(speed.FromSpeed!.Value.KilometresPerHour, 45, 75);
    }

    [Fact]
    public void Judge_QuickCarrier_NamesCarriersThatWork()
    {
        PaintAnswer answer = PaintAdvice.Judge(new(Carrier.Isopropanol, Day(20), AirSpeed.FromKilometresPerHour(90), Upright));

        Assert.Equal(PaintVerdict.UseTufts, answer.Verdict);
        Assert.Contains(PaintObstacle.DriesTooSoon, answer.Obstacles);
        Assert.Contains(PaintObstacle.CanBeLit, answer.Obstacles);
        Assert.Contains(answer.Changes, change => change.Carrier == Carrier.Kerosene);
    }

    [Theory]
    [InlineData("water-and-glycerine")]
    [InlineData("food-oil")]
    public void Judge_CarrierWithoutFigures_SaysSo(string id)
    {
        PaintAnswer answer = PaintAdvice.Judge(new(Carrier.Find(id)!, Day(20), AirSpeed.FromKilometresPerHour(90), Upright));

        Assert.Equal(PaintVerdict.NotKnown, answer.Verdict);
        Assert.Null(answer.Figures);
        Assert.Contains("not known", Carrier.Find(id)!.Note, StringComparison.Ordinal);
    }

    [Fact]
    public void Judge_SunHotPanel_RefusesWhatCouldBeLit()
    {
        PaintAnswer answer = PaintAdvice.Judge(new(Carrier.Kerosene, Day(30, 0.4, 60), AirSpeed.FromKilometresPerHour(90), Upright));

        Assert.Contains(PaintObstacle.CanBeLit, answer.Obstacles);
    }

    [Fact]
    public void Judge_AnythingThatIsSaidToWork_Works() =>
        Gen.Select(Gen.Int[0, Carrier.All.Count - 1].Select(i => Carrier.All[i]), Gen.Double[-5, 45], Gen.Double[20, 150], Gen.Double[0, 90]).Sample((carrier, celsius, kmh, slope) =>
        {
            PaintRun run = new(carrier, Day(celsius), AirSpeed.FromKilometresPerHour(kmh), Angle.FromDegrees(slope));
            foreach (PaintChange change in PaintAdvice.Judge(run).Changes)
            {
                PaintRun changed = run with { Carrier = change.Carrier ?? carrier, Speed = change.FromSpeed ?? run.Speed };
                Assert.Equal(PaintVerdict.PaintWorks, PaintAdvice.Judge(changed).Verdict);
            }
        }, iter: 40);
}
