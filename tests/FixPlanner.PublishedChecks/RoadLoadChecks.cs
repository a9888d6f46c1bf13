using FixPlanner.Core.Physics.Air;
using FixPlanner.Core.Physics.RoadLoad;
using FixPlanner.Core.Quantities;

namespace FixPlanner.PublishedChecks;

/// <summary>Rows of road-load.csv.</summary>
internal static class RoadLoadChecks
{
    /// <summary>The car of the worked example: 900 kg, cross-ply tyres, 110 km/h.</summary>
    private const double DemoMass = 900;
    private const double DemoDragArea = 0.7875;
    private const double DemoDensity = 1.1836;

    public static IReadOnlyDictionary<string, Func<CheckRow, double>> Computed { get; } = Table();

    private static Dictionary<string, Func<CheckRow, double>> Table()
    {
        Dictionary<string, Func<CheckRow, double>> table = new()
        {
            ["M2-01"] = row => AirPower(row["Cd"] * row["A_m2"], row["rho_kgm3"], row["V_mps"]),
            ["M2-03"] = row => TwoTermForce(row, "a_N", "b_N_per_kmh2"),
            ["M2-05"] = row => TwoTermForce(row, "a_N", "b_N_per_kmh2"),
            ["M2-07"] = Force65,
            ["M2-09"] = Force65,
            ["M2-10"] = Time70To60,
            ["M2-11"] = Force65,
            ["M2-12"] = Time70To60,
            ["M2-18"] = row => Amount($"{row["co2_g_per_usgal"]} g/gal US", UnitKind.CarbonDioxidePerFuel),
            ["M2-21"] = row => AirPower(0.7, 1.2, row["V2_mps"]) / AirPower(0.7, 1.2, row["V1_mps"]),
            ["M2-24"] = row => RelativeFuelChange(row["V_mps"], row["dCdA_frac"]),
            ["M2-25"] = row => AirShare(row["V_mps"]),
            ["M2-26"] = row => DynamicPressure.Of(AirDensity.FromKilogramsPerCubicMetre(1.2), AirSpeed.FromMetresPerSecond(row["V_mps"])).Pascals,
            ["M2-27"] = row => RollingResistance.Radial.Coefficient(RoadSpeed.FromKilometresPerHour(row["V_kmh"])),
            ["C-02"] = row => RoadLoadSum.AtWheels(Forces(row).Total, RoadSpeed.FromMetresPerSecond(row["V_mps"])).Watts,
            ["C-03"] = Top,
            ["C-04"] = Top,
            ["C-05"] = row => -DragSaving.Of(
                DragAreaChange.FromSquareMetres(-row["dCdA_m2"]), AirSpeed.FromMetresPerSecond(row["V_mps"]), AirDensity.FromKilogramsPerCubicMetre(row["rho_kgm3"]),
                FuelLine.InjectedPetrol with { LitresPerKilowattHour = row["Vpe_L_per_kWh"] }, row["eta_drive"]).Fuel.LitresPerHundredKilometres,
        };
        foreach (CheckRow row in CheckFile.Read("road-load.csv").Where(row => row.Id.StartsWith("RL-", StringComparison.Ordinal)))
        {
            table[row.Id] = row.Id.StartsWith("RL-T", StringComparison.Ordinal) ? Time70To60 : Force65;
        }

        return table;
    }

    private static double AirPower(double dragArea, double density, double metresPerSecond) => RoadLoadSum.AtWheels(
        AirDrag.Of(DragArea.FromSquareMetres(dragArea), AirSpeed.FromMetresPerSecond(metresPerSecond), AirDensity.FromKilogramsPerCubicMetre(density)),
        RoadSpeed.FromMetresPerSecond(metresPerSecond)).Watts;

    private static double Force65(CheckRow row) => TwoTermForce(row, "A_N", "C_N_per_kmh2");

    /// <summary>The road load of a car whose drag and rolling resistance are A + C V²: CdA from C, a constant f from A.</summary>
    private static double TwoTermForce(CheckRow row, string constant, string perSquare) =>
        TwoTermForce(row[constant], row[perSquare], RoadSpeed.FromKilometresPerHour(row["V_kmh"])).Newtons;

    private static Force TwoTermForce(double constantN, double perSquareKmh, RoadSpeed speed)
    {
        DragArea area = DragArea.FromSquareMetres(perSquareKmh * 3.6 * 3.6 / (0.5 * 1.2));
        return Force.FromNewtons(constantN) + AirDrag.Of(area, AirSpeed.FromMetresPerSecond(speed.MetresPerSecond), AirDensity.FromKilogramsPerCubicMetre(1.2));
    }

    private static double Time70To60(CheckRow row) => CoastDownTime.Between(
        Mass.FromKilograms(row["m_eff_kg"]),
        RoadSpeed.FromKilometresPerHour(70),
        RoadSpeed.FromKilometresPerHour(60),
        speed => TwoTermForce(row["A_N"], row["C_N_per_kmh2"], speed))!.Value.Seconds;

    private static RoadCar Demo(double dragArea) => new(Mass.FromKilograms(DemoMass), DragArea.FromSquareMetres(dragArea), RollingResistance.CrossPly);

    private static RoadDay DemoDay => RoadDay.Calm(AirDensity.FromKilogramsPerCubicMetre(DemoDensity));

    private static RoadForces Forces(CheckRow row) => RoadLoadSum.At(Demo(row["CdA_m2"]), DemoDay, RoadSpeed.FromMetresPerSecond(row["V_mps"]));

    private static double Top(CheckRow row) => TopSpeed.ByPower(Demo(row["CdA_m2"]), DemoDay, Power.FromWatts(row["P_wheel_W"]))!.Value.MetresPerSecond;

    private static double AirShare(double metresPerSecond)
    {
        RoadForces forces = RoadLoadSum.At(Demo(DemoDragArea), DemoDay, RoadSpeed.FromMetresPerSecond(metresPerSecond));
        return forces.Air.Newtons / forces.Total.Newtons;
    }

    private static double RelativeFuelChange(double metresPerSecond, double share)
    {
        RoadSpeed speed = RoadSpeed.FromMetresPerSecond(metresPerSecond);
        double Fuel(double area) => FuelLine.InjectedPetrol.At(
            RoadLoadSum.AtEngine(RoadLoadSum.AtWheels(RoadLoadSum.At(Demo(area), DemoDay, speed).Total, speed), RoadLoadSum.UsualDrivelineEfficiency), speed).LitresPerHundredKilometres;
        return 1 - (Fuel(DemoDragArea * (1 + share)) / Fuel(DemoDragArea));
    }

    private static double Amount(string text, UnitKind kind)
    {
        Assert.True(QuantityText.Read(text, kind).TryGet(out Amount amount, out _));
        return amount.BaseValue;
    }
}
