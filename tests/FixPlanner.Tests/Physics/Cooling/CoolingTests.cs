using CsCheck;
using FixPlanner.Core.Physics.Cooling;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Cooling;

public class CoolingTests
{
    private static readonly AirDensity Air = AirDensity.FromKilogramsPerCubicMetre(1.2041);
    private static readonly AirSpeed Motorway = AirSpeed.FromKilometresPerHour(110);
    private static readonly CoolingPath Plain = new() { CoreFace = Area.FromSquareMetres(0.16), OpenShare = 0.5, CoreLossFallsWithSpeed = false };
    private static readonly CoolingPath WithFan = Plain with
    {
        CoreLossFallsWithSpeed = true,
        FanPressure = PressureDifference.FromPascals(150),
        FanFreeFlow = VolumeFlow.FromCubicMetresPerSecond(0.6),
    };

    private static readonly Radiator Core = new()
    {
        ConductanceAtSixMetresPerSecond = Conductance.FromWattsPerKelvin(1150),
        CoolantFlow = MassFlow.FromKilogramsPerSecond(0.9),
    };

    [Fact]
    public void FaceSpeed_WithoutFanAndPlainLoss_IsAFixedShareOfSpeed() =>
        Gen.Double[3, 60].Sample(speed =>
            Assert.Equal(0.2141, Plain.FaceSpeed(AirSpeed.FromMetresPerSecond(speed), Air).MetresPerSecond / speed, 3));

    [Fact]
    public void FaceSpeed_CoreLossThatFalls_LetsTheShareGrowWithSpeed()
    {
        CoolingPath real = Plain with { CoreLossFallsWithSpeed = true };
        double Share(double ms) => real.FaceSpeed(AirSpeed.FromMetresPerSecond(ms), Air).MetresPerSecond / ms;

        Assert.True(Share(10) < Share(30));

        // By hand: (2/6)^-0.4 = 1.552 times the loss at 6 m/s.
        Assert.Equal(1.552, (real.Loss(2) - real.InletLoss - real.ExitLoss) / 5, 1e-3);
    }

    [Fact]
    public void FaceSpeed_FanAdds_AndBlankingTakes() =>
        Gen.Select(Gen.Double[0, 50], Gen.Double[0, 0.8]).Sample((speed, blanked) =>
        {
            AirSpeed air = AirSpeed.FromMetresPerSecond(speed);
            double fan = WithFan.FaceSpeed(air, Air).MetresPerSecond;
            double noFan = (WithFan with { FanFreeFlow = default }).FaceSpeed(air, Air).MetresPerSecond;
            double less = (WithFan with { BlankedShare = blanked }).FaceSpeed(air, Air).MetresPerSecond;
            Assert.True(fan >= noFan - 1e-6);
            Assert.True(less <= fan + 1e-6);
        });

    [Fact]
    public void FaceSpeed_Solution_BalancesPressures() =>
        Gen.Double[0, 50].Sample(speed =>
        {
            double face = WithFan.FaceSpeed(AirSpeed.FromMetresPerSecond(speed), Air).MetresPerSecond;
            double fanPa = 150 * Math.Max(0, 1 - (face * 0.16 / 0.6));
            double drivesPa = (0.55 * 0.5 * 1.2041 * speed * speed) + fanPa;
            Assert.Equal(drivesPa, WithFan.Loss(face) * 0.5 * 1.2041 * face * face, 1e-4);
        });

    [Fact]
    public void Heat_WorkedExample_MatchesOwnTable()
    {
        // Own computation outside the program: 1.26 kg/s, effectiveness 0.55, 48.6 kW; half the inlet blanked 0.81 kg/s, 36.7 kW.
        RadiatorHeat open = HeatAt(Plain);
        RadiatorHeat half = HeatAt(Plain with { BlankedShare = 0.5 });
        RadiatorHeat most = HeatAt(Plain with { BlankedShare = 0.7 });

        Assert.Equal(1.26, open.AirFlow.KilogramsPerSecond, 0.006);
        Assert.Equal(48.6, open.Heat.Kilowatts, 0.8);
        Assert.Equal(0.81, half.AirFlow.KilogramsPerSecond, 0.006);
        Assert.Equal(36.7, half.Heat.Kilowatts, 0.8);
        Assert.Equal(26.9, most.Heat.Kilowatts, 0.8);
    }

    [Fact]
    public void Heat_NeverMoreThanCouldPass() =>
        Gen.Select(Gen.Double[0.1, 20], Gen.Double[30, 110], Gen.Double[-20, 45]).Sample((face, coolant, air) =>
        {
            RadiatorHeat heat = Core.Heat(AirSpeed.FromMetresPerSecond(face), Plain.CoreFace, Air, Temperature.FromDegreesCelsius(coolant), Temperature.FromDegreesCelsius(air));
            Assert.InRange(heat.Effectiveness, 0, 1);
            Assert.True(heat.Heat.Watts <= (heat.AirFlow.KilogramsPerSecond * 1006 * Math.Max(0, coolant - air)) + 1e-6);
        });

    [Fact]
    public void Of_Effectiveness_GrowsWithSizeAndStaysUnderCounterflow() =>
        Gen.Select(Gen.Double[0.05, 6], Gen.Double[0, 1], Gen.Enum<StreamArrangement>()).Sample((units, ratio, arrangement) =>
        {
            double eps = ExchangerEffectiveness.Of(arrangement, units, ratio);
            Assert.InRange(eps, 0, 1);
            Assert.True(ExchangerEffectiveness.Of(arrangement, units + 0.1, ratio) >= eps);

            // Counterflow is the best there is; the unmixed form is a fit and may lie a hair above it.
            Assert.True(eps <= ExchangerEffectiveness.Of(StreamArrangement.Counter, units, ratio) + 0.01);
        });

    [Fact]
    public void OfWater_HotterDayOrSteeperHill_LeavesLessMargin() =>
        Gen.Select(Gen.Double[-10, 40], Gen.Double[5, 40]).Sample((celsius, kilowatts) =>
        {
            double Margin(double t, double kw) => CoolingMargin.OfWater(Core, WithFan, At("climb", 15, kw, t), Temperature.FromDegreesCelsius(100)).Margin.Kelvins;
            Assert.Equal(1, Margin(celsius, kilowatts) - Margin(celsius + 1, kilowatts), 1e-6);
            Assert.True(Margin(celsius, kilowatts + 1) < Margin(celsius, kilowatts));
        });

    [Fact]
    public void OfWater_StandingWithoutFan_OverheatsAndWithFanDoesNot()
    {
        CoolingSituation standing = At("standing", 0, 2.2, 35) with { DrawnInAgain = TemperatureChange.FromKelvins(10) };
        Radiator idle = Core with { CoolantFlow = MassFlow.FromKilogramsPerSecond(0.25) };
        Temperature limit = Temperature.FromDegreesCelsius(100);

        Assert.True(CoolingMargin.OfWater(idle, WithFan, standing, limit).Margin.Kelvins > 20);
        Assert.True(CoolingMargin.OfWater(idle, Plain, standing, limit).Margin.Kelvins < -100);
    }

    [Fact]
    public void OfWater_BalancesTheHeat() =>
        Gen.Double[5, 50].Sample(speed =>
        {
            CoolingSituation situation = At("run", speed, 20, 20);
            CoolingMargin margin = CoolingMargin.OfWater(Core, WithFan, situation, Temperature.FromDegreesCelsius(100));
            AirSpeed face = WithFan.FaceSpeed(situation.Speed, Air);
            Assert.Equal(20, Core.Heat(face, WithFan.CoreFace, Air, margin.Settles, situation.InletAir).Heat.Kilowatts, 1e-6);
        });

    [Fact]
    public void OfAir_FanTurnsFasterOrWindHelps_RunsCooler()
    {
        CoolingFins fins = new()
        {
            FanFlow = VolumeFlow.FromCubicMetresPerSecond(0.5),
            ReferenceFlow = VolumeFlow.FromCubicMetresPerSecond(0.5),
            Conductance = Conductance.FromWattsPerKelvin(250),
        };
        Temperature limit = Temperature.FromDegreesCelsius(200);
        Gen.Select(Gen.Double[0.3, 1.5], Gen.Double[0, 40]).Sample((turns, speed) =>
        {
            CoolingSituation situation = At("climb", speed, 25, 25);
            double slow = CoolingMargin.OfAir(fins, turns, situation, limit).Margin.Kelvins;
            Assert.True(CoolingMargin.OfAir(fins, turns + 0.1, situation, limit).Margin.Kelvins > slow);
            Assert.True(CoolingMargin.OfAir(fins with { ScoopArea = Area.FromSquareMetres(0.05) }, turns, situation, limit).Margin.Kelvins >= slow);
        });
    }

    [Fact]
    public void OfBlanking_HalfTheInlet_MatchesTheMomentumBalance()
    {
        // By hand: 2 * 0.16 * 0.2141 = 0.0685 m2; half blanked 0.0441 m2; gain 0.0244 m2.
        Assert.Equal(0.0685, CoolingDrag.Of(Area.FromSquareMetres(0.16), 0.2141, 0, Angle.FromDegrees(0)).SquareMetres, 1e-4);
        Assert.Equal(-0.0244, CoolingDrag.OfBlanking(Plain, 0.5, Motorway, Air).SquareMetres, 1e-4);
    }

    [Fact]
    public void UnderLoad_OldEngine_GivesTheCoolantAboutItsOwnPower()
    {
        double share = EngineHeat.UnderLoad(Power.FromKilowatts(20), EngineHeat.WaterShare.Likely, EngineHeat.WorkShare.Likely).Kilowatts / 20;

        // Engine texts, from memory: 1.0 to 1.2 times the power of an old engine.
        Assert.InRange(share, 1.0, 1.2);
        Assert.InRange(EngineHeat.AtIdle(0.9, 0.3).Kilowatts, 1.5, 3.5);
    }

    private static RadiatorHeat HeatAt(CoolingPath path) => Core.Heat(
        path.FaceSpeed(Motorway, Air), path.CoreFace, Air, Temperature.FromDegreesCelsius(90), Temperature.FromDegreesCelsius(20));

    private static CoolingSituation At(string name, double ms, double kilowatts, double celsius) => new(
        name, AirSpeed.FromMetresPerSecond(ms), Power.FromKilowatts(kilowatts), Temperature.FromDegreesCelsius(celsius), Air);
}
