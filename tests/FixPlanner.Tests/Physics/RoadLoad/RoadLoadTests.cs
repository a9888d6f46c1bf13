using CsCheck;
using FixPlanner.Core.Physics.RoadLoad;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.RoadLoad;

public sealed class RoadLoadTests
{
    private static readonly Gen<RoadCar> Cars = Gen.Select(Gen.Double[500, 2500], Gen.Double[0.4, 1.6], Gen.Bool).Select((kilograms, area, radial) =>
        new RoadCar(Mass.FromKilograms(kilograms), DragArea.FromSquareMetres(area), radial ? RollingResistance.Radial : RollingResistance.CrossPly));

    private static readonly RoadDay Calm = RoadDay.Calm(AirDensity.FromKilogramsPerCubicMetre(1.2));

    [Fact]
    public void At_TwiceTheSpeed_FourTimesTheDrag() => Gen.Select(Cars, Gen.Double[5, 35]).Sample((car, v) =>
        Math.Abs((Drag(car, 2 * v) / Drag(car, v)) - 4) < 1e-9);

    [Fact]
    public void At_Tailwind_PushesOnceItIsFasterThanTheCar()
    {
        RoadCar car = new(Mass.FromKilograms(900), DragArea.FromSquareMetres(0.8), RollingResistance.Radial);
        RoadForces forces = RoadLoadSum.At(car, Calm with { Headwind = AirSpeed.FromMetresPerSecond(-10) }, RoadSpeed.FromMetresPerSecond(5));
        Assert.Equal(-0.5 * 1.2 * 25 * 0.8, forces.Air.Newtons, 1e-12);
    }

    [Fact]
    public void At_SpeedingUp_AddsMassTimesAcceleration()
    {
        RoadCar car = new(Mass.FromKilograms(900), DragArea.FromSquareMetres(0.8), RollingResistance.Radial);
        RoadForces forces = RoadLoadSum.At(car, Calm, RoadSpeed.FromMetresPerSecond(20), Acceleration.FromMetresPerSecondSquared(0.5), RotatingMass.OutOfGear(car.Mass));
        Assert.Equal(900 * 1.03 * 0.5, forces.Inertia.Newtons, 1e-9);
    }

    [Fact]
    public void InGear_LowerGears_WeighMore() => Assert.True(RotatingMass.InGear(Mass.FromKilograms(900), 12) > RotatingMass.InGear(Mass.FromKilograms(900), 4));

    [Fact]
    public void ByPower_AnyCar_SpendsExactlyThatPower() => Gen.Select(Cars, Gen.Double[5, 300]).Sample((car, kilowatts) =>
    {
        if (TopSpeed.ByPower(car, Calm, Power.FromKilowatts(kilowatts)) is not { } top)
        {
            return true;
        }

        return Math.Abs(RoadLoadSum.AtWheels(RoadLoadSum.At(car, Calm, top).Total, top).Kilowatts - kilowatts) < 1e-6 * kilowatts;
    });

    [Fact]
    public void ByPower_OnlyAir_IsTheCubeRoot()
    {
        RoadCar car = new(Mass.FromKilograms(0.001), DragArea.FromSquareMetres(0.8), RollingResistance.Radial);
        double expected = Math.Cbrt(2 * 50e3 / (1.2 * 0.8));
        Assert.Equal(expected, TopSpeed.ByPower(car, Calm, Power.FromKilowatts(50))!.Value.MetresPerSecond, 1e-4);
        Assert.Equal(1.0 / 3, TopSpeed.Elasticity(car, Calm, RoadSpeed.FromMetresPerSecond(expected)), 1e-6);
    }

    [Fact]
    public void ByPower_SteepDescent_HasNoTopSpeed()
    {
        RoadCar car = new(Mass.FromKilograms(2500), DragArea.FromSquareMetres(0.1), RollingResistance.Radial);
        Assert.Null(TopSpeed.ByPower(car, Calm with { Slope = Angle.FromDegrees(-20) }, Power.FromKilowatts(100)));
    }

    [Fact]
    public void Elasticity_AnyCar_IsTheSlopeOfTopSpeed() => Gen.Select(Cars, Gen.Double[20, 200]).Sample((car, kilowatts) =>
    {
        Power power = Power.FromKilowatts(kilowatts);
        double Top(double change) => TopSpeed.ByPower(car.With(DragAreaChange.FromSquareMetres(change * car.DragArea.SquareMetres)), Calm, power)!.Value.MetresPerSecond;
        double numeric = -(Math.Log(Top(1e-4)) - Math.Log(Top(-1e-4))) / 2e-4;
        return Math.Abs(numeric - TopSpeed.Elasticity(car, Calm, RoadSpeed.FromMetresPerSecond(Top(0)))) < 1e-4;
    });

    [Fact]
    public void DragSaving_AnyCar_IsTheDifferenceOfItsFuel() => Gen.Select(Cars, Gen.Double[-0.2, 0.2], Gen.Double[15, 50]).Sample((car, change, v) =>
    {
        RoadSpeed speed = RoadSpeed.FromMetresPerSecond(v);
        double Fuel(RoadCar one) => FuelLine.CarburettorPetrol.At(RoadLoadSum.AtEngine(RoadLoadSum.AtWheels(RoadLoadSum.At(one, Calm, speed).Total, speed), 0.92), speed).LitresPerHundredKilometres;
        DragSaving saving = DragSaving.Of(DragAreaChange.FromSquareMetres(change), AirSpeed.FromMetresPerSecond(v), Calm.Density, FuelLine.CarburettorPetrol, 0.92);
        return Math.Abs(Fuel(car.With(DragAreaChange.FromSquareMetres(change))) - Fuel(car) - saving.Fuel.LitresPerHundredKilometres) < 1e-9;
    });

    // 1e-9 against the closed form of a force A + C v².
    [Fact]
    public void CoastDown_ByQuadrature_IsTheClosedForm() =>
        Gen.Select(Gen.Double[300, 2500], Gen.Double[10, 400], Gen.Double[0.1, 1.5], Gen.Double[1, 20], Gen.Double[1, 40]).Sample((mass, a, c, slow, more) =>
        {
            Mass effective = Mass.FromKilograms(mass);
            RoadSpeed from = RoadSpeed.FromMetresPerSecond(slow + more);
            RoadSpeed to = RoadSpeed.FromMetresPerSecond(slow);
            double numeric = CoastDownTime.Between(effective, from, to, v => Force.FromNewtons(a + (c * v.MetresPerSecond * v.MetresPerSecond)))!.Value.Seconds;
            double exact = CoastDownTime.Between(effective, from, to, Force.FromNewtons(a), c).Seconds;
            return Math.Abs((numeric / exact) - 1) < 1e-9;
        });

    // Distance under A + C v²: m/(2C) ln((A + C v1²)/(A + C v2²)).
    [Fact]
    public void CoastDownDistance_ByQuadrature_IsTheClosedForm()
    {
        double numeric = CoastDownTime.Distance(Mass.FromKilograms(900), RoadSpeed.FromMetresPerSecond(30), RoadSpeed.FromMetresPerSecond(10), v => Force.FromNewtons(150 + (0.45 * v.MetresPerSecond * v.MetresPerSecond)))!.Value.Metres;
        Assert.Equal(900 / 0.9 * Math.Log((150 + (0.45 * 900)) / (150 + (0.45 * 100))), numeric, 1e-8);
    }

    [Fact]
    public void CoastDown_ForceThatTurns_NeverGetsThere() =>
        Assert.Null(CoastDownTime.Between(Mass.FromKilograms(900), RoadSpeed.FromMetresPerSecond(20), RoadSpeed.FromMetresPerSecond(5), v => Force.FromNewtons(v.MetresPerSecond - 10)));

    // Own worked example, by hand: 3.308 bar absolute... (2.0 + 1.01325) * 323.15 / 293.15 - 1.01325 bar.
    [Fact]
    public void TyreState_Warmed_RaisesPressureAndEasesRolling()
    {
        PressureDifference cold = PressureDifference.FromBars(2);
        PressureDifference warm = TyreState.Warmed(cold, Temperature.FromDegreesCelsius(20), Temperature.FromDegreesCelsius(50));
        Assert.Equal(2.308, warm.Bars, 5e-4);
        Assert.Equal(0.944, TyreState.ResistanceFactor(cold, warm), 5e-4);
    }

    [Fact]
    public void AmbientFactor_At20Degrees_IsOneAndFallsWithWarmth()
    {
        Assert.Equal(1, TyreState.AmbientFactor(Temperature.FromDegreesCelsius(20)));
        Assert.True(TyreState.AmbientFactor(Temperature.FromDegreesCelsius(5)) > TyreState.AmbientFactor(Temperature.FromDegreesCelsius(30)));
    }

    // Own worked example: 1.2 m x 15 mm, Cd 1.2, Cp -0.6, layer 30 mm.
    [Fact]
    public void ProtrudingDrag_CrossGutter_IsTheWorkedExample() => Assert.Equal(
        0.0206,
        ProtrudingDrag.Of(1.2, Area.FromSquareMetres(1.2 * 0.015), -0.6, Length.FromMillimetres(15), Length.FromMillimetres(30)).SquareMetres,
        5e-5);

    [Fact]
    public void LayerFactor_Taller_NeverFallsAndStaysUnderOne() => Gen.Select(Gen.Double[0.001, 0.3], Gen.Double[0.001, 0.1]).Sample((height, layer) =>
        ProtrudingDrag.LayerFactor(height * 1.01, layer) >= ProtrudingDrag.LayerFactor(height, layer) && ProtrudingDrag.LayerFactor(height, layer) <= 1);

    [Fact]
    public void LayerFactor_AtTheEdgeOfTheLayer_HasNoStep() =>
        Assert.Equal(ProtrudingDrag.LayerFactor(0.03 - 1e-12, 0.03), ProtrudingDrag.LayerFactor(0.03, 0.03), 1e-9);

    // Own worked example: 900 kg, 0.587 MJ at 130 and 1.389 MJ at 200 km/h.
    [Fact]
    public void SpeedBudget_From130To200_IsTheSquareAndNamesTheTyre()
    {
        SpeedBudget budget = SpeedBudget.Of(Mass.FromKilograms(900), RoadSpeed.FromKilometresPerHour(130), RoadSpeed.FromKilometresPerHour(200));
        Assert.Equal(2.367, budget.LoadRatio, 5e-4);
        Assert.Equal(0.587, budget.BrakeEnergyBefore.Megajoules, 5e-4);
        Assert.Equal(1.389, budget.BrakeEnergyAfter.Megajoules, 5e-4);
        Assert.Equal("U", budget.Tyre!.Letter);
    }

    [Theory]
    [InlineData(180, "S")]
    [InlineData(180.1, "T")]
    [InlineData(210, "H")]
    public void TyreSpeedSymbol_ForASpeed_IsTheSlowestThatAllowsIt(double kilometresPerHour, string letter) =>
        Assert.Equal(letter, TyreSpeedSymbol.For(RoadSpeed.FromKilometresPerHour(kilometresPerHour))!.Letter);

    [Fact]
    public void TyreSpeedSymbol_BeyondAll_IsNone() => Assert.Null(TyreSpeedSymbol.For(RoadSpeed.FromKilometresPerHour(301)));

    // r 0.28 m, 5500 1/min, 3.9 : 2 pi 0.28 5500 / (60 * 3.9) = 41.35 m/s.
    [Fact]
    public void ByGearing_TopGear_IsKinematics() =>
        Assert.Equal(41.351, TopSpeed.ByGearing(Length.FromMetres(0.28), 5500, 3.9).MetresPerSecond, 5e-4);

    [Fact]
    public void FuelLine_OldEngine_SavesMoreForTheSameDrag()
    {
        double Saved(FuelLine engine) => -DragSaving.Of(DragAreaChange.FromSquareMetres(-0.05), AirSpeed.FromKilometresPerHour(110), AirDensity.FromKilogramsPerCubicMetre(1.1836), engine, 0.92).Fuel.LitresPerHundredKilometres;
        Assert.InRange(Saved(FuelLine.CarburettorPetrol) / Saved(FuelLine.InjectedPetrol), 1.14, 1.25);
    }

    private static double Drag(RoadCar car, double metresPerSecond) => RoadLoadSum.At(car, Calm, RoadSpeed.FromMetresPerSecond(metresPerSecond)).Air.Newtons;
}
