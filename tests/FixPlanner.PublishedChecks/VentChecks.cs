using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.PublishedChecks;

/// <summary>Rows of vents.csv.</summary>
internal static class VentChecks
{
    private static readonly Temperature Mild = Temperature.FromDegreesCelsius(20);

    public static IReadOnlyDictionary<string, Func<CheckRow, double>> Computed { get; } = new Dictionary<string, Func<CheckRow, double>>
    {
        ["M4-01"] = row => new Orifice(Area.FromSquareMetres(row["A_m2"]), row["Cd"])
            .FlowAt(PressureDifference.FromPascals(row["dp_Pa"]), AirDensity.FromKilogramsPerCubicMetre(row["rho_kgm3"])).KilogramsPerSecond / row["rho_kgm3"],
        ["M4-02"] = row => StackPull(row) / 2,
        ["M4-03"] = StackFlow,
        ["M4-04"] = row => DoorStreams(row).Forward.KilogramsPerSecond,
        ["M4-05"] = row => DoorStreams(row).Back.KilogramsPerSecond,
        ["M4-06"] = row => ThreeRooms(row).Flow("WT").KilogramsPerSecond,
        ["M4-09"] = row => Math.Abs(ThreeRooms(row).Flow("OT").KilogramsPerSecond),
        ["M4-11"] = LeakLitres,
        ["M4-12"] = LeakLitres,
        ["M4-15"] = _ => StackEffect.Pull(Length.FromMetres(1), Temperature.FromKelvins(300), Temperature.FromKelvins(290), Pressure.FromPascals(1)).Pascals
            / ((1 / 290.0) - (1 / 300.0)),
        ["C-06"] = _ => DemoNetwork.At(110).PressureCoefficient("bay"),
        ["C-07"] = _ => DemoNetwork.At(110).PressureCoefficient("cabin"),
        ["C-08"] = row => VentScan.Of(DemoNetwork.Car(row["T_bay_degC"]), DemoNetwork.Air(0), "bonnet-rear-gap", RoadSpeed.FromKilometresPerHour(200)).TurnsAt[0].MetresPerSecond,
        ["F-01a"] = _ => VentSolver.Solve(DemoNetwork.Sealed, DemoNetwork.Air(110)).PressureCoefficient("cabin"),
        ["F-01b"] = _ => WithGrille(0.5).PressureCoefficient("bay"),
        ["F-01e"] = _ => WithGrille(0.5).Flow("bulkhead").KilogramsPerSecond,
        ["F-01f"] = _ => WithGrille(0.25).Flow("bulkhead").KilogramsPerSecond,
        ["F-08"] = LeakArea,
        ["F-08b"] = LeakArea,
        ["F-14"] = TurnsByWind,
        ["X-01"] = _ => DemoNetwork.At(110).Flow("grille").KilogramsPerSecond,
        ["X-02"] = _ => VentSolver.Solve(DemoNetwork.Car(80), DemoNetwork.Air(0)).Flow("bonnet-rear-gap").KilogramsPerSecond,
    };

    private static double LeakLitres(CheckRow row)
    {
        // The printed form Q = 0.83 A sqrt(dp) is an orifice of 0.83 / sqrt(2 / 1.2) = 0.643 in air of 1.2 kg/m3.
        Orifice leak = new(Area.FromSquareMetres(row["A_m2"]), 0.643);
        return 1000 * leak.FlowAt(PressureDifference.FromPascals(row["dp_Pa"]), AirDensity.FromKilogramsPerCubicMetre(1.2)).KilogramsPerSecond / 1.2;
    }

    private static double StackPull(CheckRow row) => StackEffect.Pull(
        Length.FromMetres(row["H_between_m"]), Temperature.FromKelvins(row["T_in_K"]), Temperature.FromKelvins(row["T_out_K"]), Pressure.FromPascals(row["p_Pa"])).Pascals;

    private static double StackFlow(CheckRow row)
    {
        AirOnCar still = Still(row["T_out_K"]);
        VentNetwork room = new(
            [new Compartment("room", Temperature.FromKelvins(row["T_in_K"]))],
            [Hole("low", Compartment.Outside, "room", row, 0), Hole("high", Compartment.Outside, "room", row, row["H_between_m"])]);
        return VentSolver.Solve(room, still).Flow("low").KilogramsPerSecond;
    }

    private static (MassFlow Forward, MassFlow Back) DoorStreams(CheckRow row)
    {
        VentSolution rooms = ThreeRooms(row);
        return ((Doorway)rooms.Network.Named("door").Law).Streams(rooms.Across("door"), rooms.DensityIn("west"), rooms.DensityIn("east"));
    }

    private static VentSolution ThreeRooms(CheckRow row)
    {
        double middle = row["h_column_m"], high = 2 * middle;
        Opening Column(string id, string from, string to, double height) =>
            new(id, from, to, new Orifice(Area.FromSquareMetres(row["A_orifice_m2"]), row["Cd_orifice"]), Length.FromMetres(height));
        Doorway door = new(Length.FromMetres(row["door_w_m"]), Length.FromMetres(row["door_h_m"]), row["Cd_door"]);
        VentNetwork house = new(
            [Room("west", row["T_west_degC"]), Room("east", row["T_east_degC"]), Room("top", row["T_top_degC"])],
            [
                Column("OB", Compartment.Outside, "east", 0),
                Column("OT", Compartment.Outside, "east", high),
                Column("WT", "west", "top", high),
                Column("ET", "east", "top", high),
                new Opening("door", "west", "east", door, Length.FromMetres(row["door_h_m"] / 2)),
            ]);
        return VentSolver.Solve(house, Still(row["T_out_degC"] + 273.15));
    }

    private static Compartment Room(string id, double celsius) => new(id, Temperature.FromDegreesCelsius(celsius));

    private static Opening Hole(string id, string from, string to, CheckRow row, double height) =>
        new(id, from, to, new Orifice(Area.FromSquareMetres(row["A_m2"]), row["Cd"]), Length.FromMetres(height));

    /// <summary>Still dry air at 101325 Pa.</summary>
    private static AirOnCar Still(double kelvins) => new(
        RoadSpeed.FromMetresPerSecond(0), AirDensity.FromKilogramsPerCubicMetre(101325 / (287.055 * kelvins)), Temperature.FromKelvins(kelvins));

    private static VentSolution WithGrille(double share) => VentSolver.Solve(DemoNetwork.Car().Scaled(share, "grille"), DemoNetwork.Air(110));

    private static double LeakArea(CheckRow row) => AirChanges.LeakArea(
        row["n_per_h"], Volume.FromCubicMetres(row["V_m3"]), AirSpeed.FromMetresPerSecond(row["V_mps"]), row["dCp"]).SquareMetres;

    private static double TurnsByWind(CheckRow row)
    {
        // The cabin is held at its coefficient by an opening a thousand times larger than the vent.
        Opening vent = Opening.FromOutside("cowl", "cabin", new Orifice(Area.FromSquareMetres(1e-4)), row["Cp0"], Length.FromMetres(1))
            with { ChangePerDegreeOfYaw = row["per_deg"] };
        Opening held = Opening.FromOutside("held", "cabin", new Orifice(Area.FromSquareMetres(0.1)), row["Cp_cabin"], Length.FromMetres(1));
        AirOnCar windy = DemoNetwork.Air(0) with { CrossWind = AirSpeed.FromMetresPerSecond(row["wind_mps"]) };
        return VentScan.Of(new([new Compartment("cabin", Mild)], [vent, held]), windy, "cowl", RoadSpeed.FromMetresPerSecond(60)).TurnsAt[0].MetresPerSecond;
    }
}
