using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>The vent models as the catalogue lists them.</summary>
public static class VentModels
{
    private const string FlowUncertainty = "flows 20 to 30 % with good inputs, leaks within a factor of two to four; the direction is far surer than the amount";

    private const string NetworkValidity = "windows shut, quasi-steady, one pressure in each compartment; 0 to 250 km/h";

    private const string NetworkSource = "Wetter 2006 (orifice, crack, air columns); pressure coefficients from memory of tunnel plots; leak sizes from measured air change rates (Knibbs, de Dear and Atkinson 2009)";

    // Enough to find the usual single turn; each draw of a range scans the band once.
    private const int CatalogueSteps = 12;

    /// <summary>Every model of this folder.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } = [CabinVents(), TurningVent(), ScreenBaseModel(), LeakAreaModel(), OpeningFlow(), StackPull(), GrilleLossModel()];

    private static PhysicsModel CabinVents() => new()
    {
        Name = "cabin-vents",
        Formula = "sum of flows = 0 in cabin and bay; m = C_d A sqrt(2 rho dp)",
        Title = "Air through cabin and engine bay",
        What = "The pressure in cabin and engine bay, the flow through every opening, how often the cabin air is replaced, and how much of it came through the engine bay.",
        Inputs =
        [
            CommonInputs.Speed,
            CommonInputs.Density,
            CommonInputs.CabinVolume,
            .. VentInputs.Car,
        ],
        Outputs =
        [
            ModelOutput.Of("cabin_coefficient", UnitKind.Ratio, string.Empty, "pressure coefficient in the cabin"),
            ModelOutput.Of("cabin_pressure_pa", UnitKind.Pressure, "Pa", "pressure in the cabin at shoulder height against the free air"),
            ModelOutput.Of("bay_coefficient", UnitKind.Ratio, string.Empty, "pressure coefficient in the engine bay"),
            ModelOutput.Of("inlet_flow_l_per_s", UnitKind.VolumeFlow, "l/s", "through the cabin's intake, in positive"),
            ModelOutput.Of("outlet_flow_l_per_s", UnitKind.VolumeFlow, "l/s", "through the cabin's outlets, in positive"),
            ModelOutput.Of("door_leak_flow_l_per_s", UnitKind.VolumeFlow, "l/s", "through the door seals, in positive"),
            ModelOutput.Of("bonnet_rear_gap_flow_l_per_s", UnitKind.VolumeFlow, "l/s", "through the gap behind the bonnet, into the bay positive"),
            ModelOutput.Of("bulkhead_flow_l_per_s", UnitKind.VolumeFlow, "l/s", "from the bay into the cabin positive: fumes come this way"),
            ModelOutput.Of("bay_air_percent", UnitKind.Ratio, "%", "share of the cabin's air that came through the engine bay"),
            ModelOutput.Of("air_changes_per_h", UnitKind.Rate, "1/h", "how often the cabin air is replaced"),
        ],
        Source = NetworkSource,
        Validity = NetworkValidity,
        Uncertainty = FlowUncertainty,
        Compute = values =>
        {
            if (values["speed_kmh"] == 0)
            {
                return ModelAnswer.ThatIsImpossible("at 0 km/h a pressure coefficient has no meaning: give a speed above 0 km/h (the model stack-pull is for the parked car)");
            }

            VentSolution car = VentSolver.Solve(VentInputs.Network(values), VentInputs.Air(values, values["speed_kmh"], values["air_density_kg_per_m3"]));
            FumesPath fumes = FumesPath.Trace(car, OldCarVents.BonnetRearGap, OldCarVents.CabinIn);
            double LitresPerSecond(string opening) => 1000 * car.Flow(opening).KilogramsPerSecond / car.Air.Density.KilogramsPerCubicMetre;
            return ModelAnswer.Of(
                ("cabin_coefficient", car.PressureCoefficient(Compartment.Cabin)),
                ("cabin_pressure_pa", car.PressureIn(Compartment.Cabin, Length.FromMetres(1)).Pascals),
                ("bay_coefficient", car.PressureCoefficient(Compartment.Bay)),
                ("inlet_flow_l_per_s", LitresPerSecond(OldCarVents.CabinIn)),
                ("outlet_flow_l_per_s", LitresPerSecond(OldCarVents.CabinOut)),
                ("door_leak_flow_l_per_s", LitresPerSecond(OldCarVents.DoorSeals)),
                ("bonnet_rear_gap_flow_l_per_s", LitresPerSecond(OldCarVents.BonnetRearGap)),
                ("bulkhead_flow_l_per_s", LitresPerSecond(OldCarVents.Bulkhead)),
                ("bay_air_percent", 100 * fumes.ShareOfCabinAir),
                ("air_changes_per_h", AirChanges.PerHour(car, Compartment.Cabin, Volume.FromCubicMetres(values["cabin_volume_m3"]))))
                .Warning(fumes.InnerFlow.KilogramsPerSecond > 0 ? "air flows from the engine bay into the cabin: close the bulkhead, and check for exhaust and fuel smells before a long drive" : null)
                .Warning(fumes.ReturnsAtTheIntake ? "bay air leaves just ahead of an intake that draws in: it may come back into the cabin" : null);
        },
    };

    private static PhysicsModel TurningVent() => new()
    {
        Name = "vent-direction",
        Formula = "sign of m(V) of the solved network",
        Title = "Which way a vent blows, and where it turns",
        What = "Whether one vent always takes in, always lets out, or turns at some speed, and what makes it turn: fan, heat, natural wind or the shape of a leak.",
        Inputs =
        [
            ModelInput.Choice("vent", ["cabin-inlet", "cabin-outlet", "bonnet-rear-gap", "bulkhead-holes"], "the vent in question"),
            ModelInput.WithDefault("fastest_kmh", UnitKind.Speed, "km/h", (10, 400), (20, 250), Triangle.Certain(160), "top of the band of speeds; it begins at 5 km/h"),
            CommonInputs.Density,
            .. VentInputs.Car,
        ],
        Outputs =
        [
            ModelOutput.Word("direction", "always in, always out, turns, or no flow; for the bulkhead in means into the cabin"),
            ModelOutput.Word("reason", "body pressure, fan, heat, natural wind, leak shape, or several"),
            ModelOutput.Word("sureness", "clear or close: close where the pressure across the vent is under 5 % of the dynamic pressure"),
            ModelOutput.Of("turns_at_kmh", UnitKind.Speed, "km/h", "lowest speed at which it turns; not a number where it does not"),
            ModelOutput.Of("in_at_top_percent", UnitKind.Ratio, "%", "100 if it takes in at the top of the band, else 0; its mean over the draws is the chance"),
        ],
        Source = NetworkSource,
        Validity = NetworkValidity + "; with body pressures and square-root openings alone no vent ever turns",
        Uncertainty = "the speed of turning often within a factor of two; a tuft or a strip of paper at the vent settles the direction in a minute",
        Compute = values =>
        {
            string vent = values.Word("vent") switch
            {
                "cabin-outlet" => OldCarVents.CabinOut,
                "bonnet-rear-gap" => OldCarVents.BonnetRearGap,
                "bulkhead-holes" => OldCarVents.Bulkhead,
                _ => OldCarVents.CabinIn,
            };
            VentNetwork network = VentInputs.Network(values);
            AirOnCar air = VentInputs.Air(values, 0, values["air_density_kg_per_m3"]);
            RoadSpeed fastest = RoadSpeed.FromKilometresPerHour(values["fastest_kmh"]);
            // Draws read the numbers only; the words ask for four scans more.
            SpeedSweep sweep = new(network, air);
            int place = network.PlaceOf(vent);
            double[] turns = VentScan.TurningSpeeds(sweep, place, fastest, CatalogueSteps);
            Lazy<VentVerdict> verdict = new(() => VentScan.Of(network, air, vent, fastest, CatalogueSteps));
            return ModelAnswer.Of(
                ("turns_at_kmh", turns.Length > 0 ? RoadSpeed.FromMetresPerSecond(turns[0]).KilometresPerHour : double.NaN),
                ("in_at_top_percent", sweep.FlowAt(place, fastest.MetresPerSecond) > 0 ? 100 : 0))
                .Saying("direction", () => VentWords.Of(verdict.Value.Direction))
                .Saying("reason", () => VentWords.Of(verdict.Value.Reason))
                .Saying("sureness", () => verdict.Value.IsClose ? "close" : "clear");
        },
    };

    private static PhysicsModel ScreenBaseModel() => new()
    {
        Name = "screen-base",
        Title = "A vent along the base of the windscreen: middle against sides",
        What = "Which part of a vent along the base of the windscreen takes in and which lets out, when the pressure behind it is the same all along.",
        Inputs =
        [
            ModelInput.WithDefault("middle_coefficient", UnitKind.Ratio, string.Empty, (-2, 1), (-1, 1), new(0.05, 0.30, 0.60), "pressure coefficient in the middle, from memory unless a tap was read"),
            ModelInput.WithDefault("outer_third_coefficient", UnitKind.Ratio, string.Empty, (-2, 1), (-1, 1), new(-0.15, 0.05, 0.25), "mean pressure coefficient of the outer thirds, from memory unless a tap was read"),
            ModelInput.WithDefault("behind_coefficient", UnitKind.Ratio, string.Empty, (-2, 1), (-1, 1), new(-0.10, 0.05, 0.20), "pressure coefficient behind the vent: of the cabin or the scuttle box, from the model cabin-vents"),
        ],
        Outputs =
        [
            ModelOutput.Of("middle_across", UnitKind.Ratio, string.Empty, "outside minus behind in the middle: above 0 takes in"),
            ModelOutput.Of("sides_across", UnitKind.Ratio, string.Empty, "outside minus behind at the pillars: above 0 takes in"),
            ModelOutput.Of("turns_at_percent", UnitKind.Ratio, "%", "where along the half width it turns, from the middle; not a number where it is one way all along"),
            ModelOutput.Word("middle", "in or out"),
            ModelOutput.Word("sides", "in or out"),
        ],
        Source = "own derivation: a parabola between a middle and an outer coefficient, both from memory of tunnel plots",
        Validity = "straight ahead; one box behind the whole vent; a raised or leaking bonnet edge can turn the picture round",
        Uncertainty = "coefficients within 0.15 to 0.2; under 0.05 across the direction is not worth stating",
        Compute = values =>
        {
            double Across(double place) =>
                ScreenBase.PressureCoefficient(place, values["middle_coefficient"], values["outer_third_coefficient"]) - values["behind_coefficient"];
            double middle = Across(0), side = Across(1);
            double turns = middle * side < 0 ? Math.Sqrt(middle / (middle - side)) : double.NaN;
            return ModelAnswer.Of(("middle_across", middle), ("sides_across", side), ("turns_at_percent", 100 * turns))
                .Saying("middle", middle >= 0 ? "in" : "out").Saying("sides", side >= 0 ? "in" : "out");
        },
    };

    private static PhysicsModel LeakAreaModel() => new()
    {
        Name = "leak-area",
        Title = "Leak area from air changes",
        What = "How large the leaks of a cabin are, from how often its air is replaced with all vents shut.",
        Inputs =
        [
            ModelInput.Required("air_changes_per_h", UnitKind.Rate, "1/h", (0, 500), (0.5, 100), "air changes of the shut cabin in an hour"),
            ModelInput.Required("speed_kmh", UnitKind.Speed, "km/h", (1, 400), (30, 250), "speed of the air past the car"),
            CommonInputs.CabinVolume,
            ModelInput.WithDefault("coefficient_across", UnitKind.Ratio, string.Empty, (0.01, 3), (0.1, 1.5), new(0.2, 0.4, 0.8), "pressure coefficient where air comes in minus where it goes out, a guess"),
        ],
        Outputs = [ModelOutput.Of("leak_area_cm2", UnitKind.Area, "cm2", "area times discharge coefficient, ways in and out in series")],
        Source = "own derivation; rates of 33.1 and 1.0 an hour at 60 km/h from Knibbs, de Dear and Atkinson 2009 give 24 and 0.7 cm2",
        Validity = "vents shut, leaks alone",
        Uncertainty = "40 %, nearly all of it the guessed pressure",
        Compute = values => ModelAnswer.Of(("leak_area_cm2", AirChanges.LeakArea(
            values["air_changes_per_h"], Volume.FromCubicMetres(values["cabin_volume_m3"]),
            AirSpeed.FromKilometresPerHour(values["speed_kmh"]), values["coefficient_across"]).SquareCentimetres)),
    };

    private static PhysicsModel OpeningFlow() => new()
    {
        Name = "opening-flow",
        Title = "Flow through one opening",
        What = "What a hole, louvre or gap passes at a pressure read with a manometer.",
        Inputs =
        [
            ModelInput.Required("area_cm2", UnitKind.Area, "cm2", (0.001, 10000), (0.1, 3000), "free area"),
            ModelInput.Required("pressure_pa", UnitKind.Pressure, "Pa", (-5000, 5000), (-2000, 2000), "pressure across it"),
            ModelInput.WithDefault("discharge_coefficient", UnitKind.Ratio, string.Empty, (0.01, 1.2), (0.2, 1), new(0.5, 0.61, 0.75), "0.61 plain hole, 0.35 to 0.5 louvre, 0.4 gap behind a lip (the last two from memory)"),
            CommonInputs.Density,
        ],
        Outputs = [ModelOutput.Of("flow_l_per_s", UnitKind.VolumeFlow, "l/s", "volume flow"), ModelOutput.Of("flow_kg_per_s", UnitKind.MassFlow, "kg/s", "mass flow")],
        Source = "Wetter 2006, eq. 1; discharge coefficients van der Maas et al. as quoted there, and from memory",
        Validity = "short openings, steady flow, no speed carried in",
        Uncertainty = "10 to 20 % from the discharge coefficient",
        Compute = values =>
        {
            AirDensity density = AirDensity.FromKilogramsPerCubicMetre(values["air_density_kg_per_m3"]);
            Orifice hole = new(Area.FromSquareCentimetres(values["area_cm2"]), values["discharge_coefficient"]);
            double flow = hole.FlowAt(PressureDifference.FromPascals(values["pressure_pa"]), density).KilogramsPerSecond;
            return ModelAnswer.Of(("flow_l_per_s", 1000 * flow / density.KilogramsPerCubicMetre), ("flow_kg_per_s", flow));
        },
    };

    private static PhysicsModel StackPull() => new()
    {
        Name = "stack-pull",
        Title = "Pull of hot air in a parked car",
        What = "The pressure that drives air in below and out above in a hot bay or cabin at rest.",
        Inputs =
        [
            ModelInput.Required("height_m", UnitKind.Length, "m", (0, 5), (0.1, 2), "between the lower and the upper opening"),
            ModelInput.Required("inside_temperature_c", UnitKind.Temperature, "°C", (-40, 250), (-20, 150), "air inside"),
            ModelInput.WithDefault("outside_temperature_c", UnitKind.Temperature, "°C", (-60, 60), (-20, 45), Triangle.Certain(20), "air outside"),
            ModelInput.WithDefault("pressure_hpa", UnitKind.Pressure, "hPa", (500, 1100), (800, 1080), Triangle.Certain(1013), "pressure of the air on the day"),
        ],
        Outputs = [ModelOutput.Of("pull_pa", UnitKind.Pressure, "Pa", "over both openings together")],
        Source = "stack-effect notes, SI form dp = 0.0342 p h (1/To - 1/Ti)",
        Validity = "still air; on the move wind outdoes it from walking pace upward",
        Uncertainty = "a few per cent, and the mean temperature",
        Compute = values => ModelAnswer.Of(("pull_pa", StackEffect.Pull(
            Length.FromMetres(values["height_m"]), Temperature.FromDegreesCelsius(values["inside_temperature_c"]),
            Temperature.FromDegreesCelsius(values["outside_temperature_c"]), Pressure.FromHectopascals(values["pressure_hpa"])).Pascals)),
    };

    private static PhysicsModel GrilleLossModel() => new()
    {
        Name = "grille-loss",
        Title = "Loss of a grille or mesh",
        What = "How much a grille of a given open share holds back, and the discharge coefficient of an opening behind it.",
        Inputs = [ModelInput.Required("open_percent", UnitKind.Ratio, "%", (1, 100), (10, 95), "free area of the grille in its frame")],
        Outputs =
        [
            ModelOutput.Of("slats_loss", UnitKind.Ratio, string.Empty, "loss coefficient of sharp slats on the speed ahead"),
            ModelOutput.Of("mesh_loss", UnitKind.Ratio, string.Empty, "loss coefficient of an open mesh of round wire on the speed ahead"),
            ModelOutput.Of("discharge_behind_slats", UnitKind.Ratio, string.Empty, "discharge coefficient on the frame's area, jet head lost as well"),
        ],
        Source = "Blevins 1984, through an open code listing",
        Validity = "air straight on, clean",
        Uncertainty = "15 %; flies, dents and a second mesh add to it",
        Compute = values =>
        {
            double slats = EffectiveArea.GrilleLoss(values["open_percent"] / 100);
            return ModelAnswer.Of(("slats_loss", slats), ("mesh_loss", EffectiveArea.MeshLoss(values["open_percent"] / 100)), ("discharge_behind_slats", EffectiveArea.Discharge(slats)));
        },
    };
}
