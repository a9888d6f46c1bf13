using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Cooling;

/// <summary>The models of cooling as the catalogue lists them.</summary>
public static class CoolingModels
{
    private static ModelInput Power { get; } = ModelInput.Required(
        "engine_power_kw", UnitKind.Power, "kW", (0, 400), (3, 200), "power at the crankshaft in this situation; 0 stands for idle");

    private static ModelInput Idle { get; } = ModelInput.WithDefault(
        "idle_fuel_l_per_h", UnitKind.FuelRate, "l/h", (0.2, 5), (0.4, 3), new(0.7, 0.9, 1.2), "fuel burnt at idle; used when the power is 0");

    private static ModelInput Work { get; } = ModelInput.WithDefault(
        "work_share", UnitKind.Ratio, string.Empty, (0.1, 0.45), (0.18, 0.4), EngineHeat.WorkShare, "share of the fuel's heat that becomes work; old petrol engine, from memory");

    private static ModelInput AirTemperature { get; } = ModelInput.WithDefault(
        "temperature_c", UnitKind.Temperature, "°C", (-40, 55), (-20, 45), new(30, 35, 40), "air of a hot day");

    private static ModelInput Again { get; } = ModelInput.WithDefault(
        "drawn_in_again_k", UnitKind.TemperatureChange, "K", (0, 60), (0, 30), Triangle.Certain(0), "how much hotter than the day the entering air is: 0 at speed, 5 to 20 standing");

    private static ModelInput Speed { get; } = ModelInput.Required("speed_kmh", UnitKind.Speed, "km/h", (0, 250), (0, 220), "speed of the car; 0 stands for standing");

    /// <summary>Every model of this folder.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } = [Water(), Fins()];

    private static PhysicsModel Water() => new()
    {
        Name = "water-cooling",
        Formula = "T = T_air + Q / (eps C_min); dCp q + dp_fan = K rho v^2 / 2",
        Title = "Temperature margin of a water-cooled engine, and what blanking costs and wins",
        What = "Where the coolant settles standing, climbing or at top speed, with and without a part of the inlet blanked, and the drag of the cooling air.",
        Inputs =
        [
            Speed, Power, Idle, Work,
            ModelInput.WithDefault("coolant_share", UnitKind.Ratio, string.Empty, (0.1, 0.6), (0.2, 0.4), EngineHeat.WaterShare, "share of the fuel's heat that goes to the coolant, from memory"),
            AirTemperature, Again, CommonInputs.Density,
            ModelInput.WithDefault("core_area_m2", UnitKind.Area, "m2", (0.02, 1), (0.05, 0.5), new(0.13, 0.16, 0.20), "face of the core"),
            ModelInput.WithDefault("open_share", UnitKind.Ratio, string.Empty, (0.05, 1), (0.15, 0.95), new(0.4, 0.5, 0.6), "open area of grille and inlet over the core"),
            ModelInput.WithDefault("blanked_percent", UnitKind.Ratio, "%", (0, 95), (0, 80), Triangle.Certain(0), "share of the inlet that is blanked"),
            ModelInput.WithDefault("way_out_percent", UnitKind.Ratio, "%", (10, 1000), (30, 300), Triangle.Certain(100), "free area of the way out after work on it, over that before: its loss falls with the square"),
            ModelInput.WithDefault("ram_percent", UnitKind.Ratio, "%", (0, 400), (30, 250), Triangle.Certain(100), "pressure of the wind from inlet to bay after work on the gaps, over that before, from the vent network"),
            ModelInput.WithDefault("pressure_coefficient_difference", UnitKind.Ratio, string.Empty, (0, 1.2), (0.2, 1), new(0.4, 0.55, 0.7), "inlet minus outlet, from memory"),
            ModelInput.WithDefault("core_loss", UnitKind.Ratio, string.Empty, (1, 20), (3, 10), new(4, 5, 7), "loss of the core at 6 m/s, from memory"),
            ModelInput.WithDefault("exit_loss", UnitKind.Ratio, string.Empty, (0, 20), (1, 8), new(2, 3, 5), "loss of the way out, from memory"),
            ModelInput.WithDefault("fan_pressure_pa", UnitKind.Pressure, "Pa", (0, 600), (0, 300), new(100, 140, 200), "pressure of the fan without flow, from memory; 0 with the fan off"),
            ModelInput.WithDefault("fan_flow_m3_per_s", UnitKind.VolumeFlow, "m3/s", (0, 3), (0, 1.5), new(0.4, 0.6, 0.8), "flow of the fan without pressure, from memory; 0 without a fan"),
            ModelInput.WithDefault("core_conductance_w_per_k", UnitKind.Conductance, "W/K", (100, 10000), (400, 4000), new(850, 1150, 1450), "UA of a clean core at 6 m/s of air"),
            ModelInput.WithDefault("cleanness", UnitKind.Ratio, string.Empty, (0.2, 1), (0.4, 1), new(0.6, 0.75, 1), "what age has left of UA, from memory"),
            ModelInput.WithDefault("coolant_flow_kg_per_s", UnitKind.MassFlow, "kg/s", (0.02, 5), (0.1, 3), new(0.6, 0.9, 1.2), "flow of coolant; at idle a quarter to a third"),
            ModelInput.WithDefault("limit_c", UnitKind.Temperature, "°C", (80, 140), (90, 120), Triangle.Certain(100), "highest coolant temperature allowed: 100 open, 105 to 110 under a pressure cap"),
        ],
        Outputs =
        [
            ModelOutput.Of("heat_kw", UnitKind.Power, "kW", "heat to be carried away"),
            ModelOutput.Of("face_speed_ms", UnitKind.Speed, "m/s", "air through the face"),
            ModelOutput.Of("settles_c", UnitKind.Temperature, "°C", "where the coolant settles; above the limit it boils first"),
            ModelOutput.Of("margin_k", UnitKind.TemperatureChange, "K", "limit minus that; minus overheats"),
            ModelOutput.Of("margin_unblanked_k", UnitKind.TemperatureChange, "K", "the same with the inlet open and the ways out as they were"),
            ModelOutput.Of("margin_change_k", UnitKind.TemperatureChange, "K", "what blanking and work on the ways out change in the margin; minus is hotter"),
            ModelOutput.Of("rise_k", UnitKind.TemperatureChange, "K", "rise of the coolant over the air of the day before any of it"),
            ModelOutput.Of("blanking_drag_area_change_m2", UnitKind.Area, "m2", "what blanking wins in drag area; minus is less; none below 20 km/h"),
        ],
        Source = "effectiveness forms of heat-transfer texts (read in an open library); heat split, losses and fan from memory; core loss as v^-0.4 from memory",
        Validity = "steady state, thermostat open; a short climb ends before it is reached; at idle give the smaller coolant flow",
        Uncertainty = "20 to 30 % of the rise above the air: 12 to 20 K; read the gauge before trusting a smaller margin",
        Compute = ComputeWater,
    };

    private static ModelAnswer ComputeWater(ModelValues values)
    {
        CoolingPath open = new()
        {
            CoreFace = Area.FromSquareMetres(values["core_area_m2"]),
            OpenShare = values["open_share"],
            PressureCoefficientDifference = values["pressure_coefficient_difference"],
            CoreLoss = values["core_loss"],
            ExitLoss = values["exit_loss"],
            FanPressure = PressureDifference.FromPascals(values["fan_pressure_pa"]),
            FanFreeFlow = VolumeFlow.FromCubicMetresPerSecond(values["fan_flow_m3_per_s"]),
        };
        double blanked = values["blanked_percent"] / 100, way = values["way_out_percent"] / 100, ram = values["ram_percent"] / 100;
        CoolingPath worked = open with { BlankedShare = blanked, ExitLoss = Math.Min(20, open.ExitLoss / (way * way)), PressureCoefficientDifference = Math.Min(1.2, open.PressureCoefficientDifference * ram) };
        if ((TooFast(open, values) ?? TooFast(worked, values)) is { } reason)
        {
            return ModelAnswer.ThatIsImpossible(reason);
        }

        Radiator core = new()
        {
            ConductanceAtSixMetresPerSecond = Conductance.FromWattsPerKelvin(values["core_conductance_w_per_k"]),
            CoolantFlow = MassFlow.FromKilogramsPerSecond(values["coolant_flow_kg_per_s"]),
            Cleanness = values["cleanness"],
        };
        CoolingSituation situation = Situation(values, values["coolant_share"]);
        Temperature limit = Temperature.FromDegreesCelsius(values["limit_c"]);
        CoolingMargin before = CoolingMargin.OfWater(core, open, situation, limit);
        CoolingMargin margin = worked == open ? before : CoolingMargin.OfWater(core, worked, situation, limit);
        return ModelAnswer.Of(
            ("heat_kw", situation.Heat.Kilowatts),
            ("face_speed_ms", worked.FaceSpeed(situation.Speed, situation.Density).MetresPerSecond),
            ("settles_c", margin.Settles.DegreesCelsius),
            ("margin_k", margin.Margin.Kelvins),
            ("margin_unblanked_k", before.Margin.Kelvins),
            ("margin_change_k", (margin.Margin - before.Margin).Kelvins),
            ("rise_k", (before.Settles - situation.Air).Kelvins),
            ("blanking_drag_area_change_m2", values["speed_kmh"] < 20 ? double.NaN : CoolingDrag.OfBlanking(open, blanked, situation.Speed, situation.Density).SquareMetres))
            .Warning(margin.Margin.Kelvins < 15 ? "the margin is smaller than the model's own error: watch a gauge that works" : null);
    }

    /// <summary>No core lets the air through at more than 30 m/s or at more than 0.6 of the speed of the car: the losses given are too small for the opening.</summary>
    private static string? TooFast(CoolingPath open, ModelValues values)
    {
        AirDensity density = AirDensity.FromKilogramsPerCubicMetre(values["air_density_kg_per_m3"]);
        AirSpeed speed = AirSpeed.FromKilometresPerHour(values["speed_kmh"]);
        double face = open.FaceSpeed(speed, density).MetresPerSecond;
        double withoutFan = (open with { FanPressure = default, FanFreeFlow = default }).FaceSpeed(speed, density).MetresPerSecond;

        // The face speed is good to a billionth of a metre per second.
        return face > 30 || withoutFan > (0.6 * speed.MetresPerSecond) + 1e-6
            ? $"the air would pass the core at {NumberText.Significant(face, 3)} m/s; no more than 30 m/s and 0.6 of the speed of the car is possible: core_loss and exit_loss are too small, or the fan is too large"
            : null;
    }

    private static PhysicsModel Fins() => new()
    {
        Name = "air-cooling",
        Formula = "T = T_air + Q / (m c_p (1 - exp(-UA / (m c_p))))",
        Title = "Temperature margin of an air-cooled engine",
        What = "Where the fins settle standing, climbing or at top speed, with the fan and what the wind adds.",
        Inputs =
        [
            Speed, Power, Idle, Work,
            ModelInput.WithDefault("fin_share", UnitKind.Ratio, string.Empty, (0.1, 0.6), (0.25, 0.5), EngineHeat.AirShare, "share of the fuel's heat that goes to fins and oil, from memory"),
            AirTemperature, Again, CommonInputs.Density,
            ModelInput.WithDefault("fan_flow_m3_per_s", UnitKind.VolumeFlow, "m3/s", (0, 3), (0, 1.5), new(0.4, 0.5, 0.6), "flow of the fan at its rated speed, from memory"),
            ModelInput.WithDefault("fan_turns", UnitKind.Ratio, string.Empty, (0, 2), (0.1, 1.5), Triangle.Certain(1), "speed of the fan over its rated speed: about a quarter at idle"),
            ModelInput.WithDefault("scoop_area_m2", UnitKind.Area, "m2", (0, 0.3), (0, 0.15), Triangle.Certain(0), "opening through which the wind adds air"),
            ModelInput.WithDefault("scoop_share", UnitKind.Ratio, string.Empty, (0, 0.6), (0, 0.4), new(0.05, 0.15, 0.3), "speed in that opening over the road speed, from memory"),
            ModelInput.WithDefault("fin_conductance_w_per_k", UnitKind.Conductance, "W/K", (20, 3000), (80, 1000), new(250, 330, 420), "UA of all fins at the fan's rated flow; fitted so that an ordinary engine holds its temperature, no source"),
            ModelInput.WithDefault("limit_c", UnitKind.Temperature, "°C", (120, 300), (160, 240), Triangle.Certain(200), "highest fin temperature allowed; 180 to 220 at the head, from memory"),
        ],
        Outputs =
        [
            ModelOutput.Of("heat_kw", UnitKind.Power, "kW", "heat to be carried away"),
            ModelOutput.Of("settles_c", UnitKind.Temperature, "°C", "where the fins settle"),
            ModelOutput.Of("margin_k", UnitKind.TemperatureChange, "K", "limit minus that; minus overheats"),
            ModelOutput.Of("rise_k", UnitKind.TemperatureChange, "K", "rise of the fins over the air of the day"),
        ],
        Source = "own derivation: one stream along a wall of one temperature; shares, exponent and conductance from memory",
        Validity = "all heat in one stream; hot spots run hotter than the mean; wind and fan add as flows, which is generous for the wind",
        Uncertainty = "25 to 35 % of the rise above the air: 40 to 60 K; a comparison before and after is better than the figure itself",
        Compute = values =>
        {
            CoolingFins fins = new()
            {
                FanFlow = VolumeFlow.FromCubicMetresPerSecond(values["fan_flow_m3_per_s"]),
                ReferenceFlow = VolumeFlow.FromCubicMetresPerSecond(Math.Max(values["fan_flow_m3_per_s"], 0.05)),
                Conductance = Conductance.FromWattsPerKelvin(values["fin_conductance_w_per_k"]),
                ScoopArea = Area.FromSquareMetres(values["scoop_area_m2"]),
                ScoopShare = values["scoop_share"],
            };
            CoolingSituation situation = Situation(values, values["fin_share"]);
            CoolingMargin margin = CoolingMargin.OfAir(fins, values["fan_turns"], situation, Temperature.FromDegreesCelsius(values["limit_c"]));
            return ModelAnswer.Of(
                ("heat_kw", situation.Heat.Kilowatts),
                ("settles_c", margin.Settles.DegreesCelsius),
                ("margin_k", margin.Margin.Kelvins),
                ("rise_k", (margin.Settles - situation.Air).Kelvins))
                .Warning(margin.Margin.Kelvins < 50 ? "the margin is smaller than the model's own error: fit and watch an oil temperature gauge" : null);
        },
    };

    private static CoolingSituation Situation(ModelValues values, double coolingShare)
    {
        double kilowatts = values["engine_power_kw"];
        Quantities.Power heat = kilowatts == 0
            ? EngineHeat.AtIdle(values["idle_fuel_l_per_h"], coolingShare)
            : EngineHeat.UnderLoad(Quantities.Power.FromKilowatts(kilowatts), coolingShare, values["work_share"]);
        return new(
            "as given",
            AirSpeed.FromKilometresPerHour(values["speed_kmh"]),
            heat,
            Temperature.FromDegreesCelsius(values["temperature_c"]),
            AirDensity.FromKilogramsPerCubicMetre(values["air_density_kg_per_m3"]))
        {
            DrawnInAgain = TemperatureChange.FromKelvins(values["drawn_in_again_k"]),
        };
    }
}
