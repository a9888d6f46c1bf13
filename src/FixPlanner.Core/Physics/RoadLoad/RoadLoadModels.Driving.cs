using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>Models of the car as it drives.</summary>
public static partial class RoadLoadModels
{
    private static PhysicsModel RoadLoadModel() => new()
    {
        Name = "road-load",
        Formula = "F = m g f(V) + q C_dA; P = F V / eta; b = (V_idle + k P) / V",
        Title = "Forces, power and fuel at a steady speed",
        What = "What holds the car back at a speed, what the engine must give, and what that burns.",
        Inputs =
        [
            CommonInputs.Mass, DragAreaInput, CommonInputs.Speed, TyresInput, RollingInput, RollingStateInput, CommonInputs.Density, HeadwindInput, SlopeInput, DrivelineInput, EngineInput, SlopeOfFuelInput,
        ],
        Outputs =
        [
            ModelOutput.Of("total_force_n", UnitKind.Force, "N", "force at the driven wheels"),
            ModelOutput.Of("air_drag_n", UnitKind.Force, "N", "drag of the air"),
            ModelOutput.Of("rolling_resistance_n", UnitKind.Force, "N", "tyres"),
            ModelOutput.Of("slope_force_n", UnitKind.Force, "N", "weight along the road"),
            ModelOutput.Of("wheel_power_kw", UnitKind.Power, "kW", "power at the wheels"),
            ModelOutput.Of("engine_power_kw", UnitKind.Power, "kW", "power at the crankshaft"),
            ModelOutput.Of("fuel_l_per_100km", UnitKind.FuelConsumption, "l/100km", "fuel at this steady speed; none at a standstill"),
            ModelOutput.Of("carbon_dioxide_g_per_km", UnitKind.CarbonDioxideRate, "g/km", "carbon dioxide at this steady speed; none at a standstill"),
        ],
        Source = "Gillespie ch. 4, Wong ch. 1 (tyre curves) from memory; carbon dioxide and modern fuel slopes (EU) 2020/728; slope 0.31 l/kWh of a carburettor engine from memory",
        Validity = "steady speed, wind along the road, no slip; drag rise with yaw is not in it",
        Uncertainty = "tyres ±20 % of their part; drag area as given; fuel 10 % with guessed engine constants",
        Compute = values =>
        {
            RoadSpeed speed = RoadSpeed.FromKilometresPerHour(values["speed_kmh"]);
            RoadForces forces = RoadLoadSum.At(Car(values), Day(values), speed);
            Power wheels = RoadLoadSum.AtWheels(forces.Total, speed);
            Power engine = RoadLoadSum.AtEngine(wheels, values["driveline_efficiency"]);
            FuelLine line = Engine(values);
            FuelConsumption? fuel = speed.MetresPerSecond > 0 ? line.At(engine, speed) : null;
            return ModelAnswer.Of(
                ("total_force_n", forces.Total.Newtons),
                ("air_drag_n", forces.Air.Newtons),
                ("rolling_resistance_n", forces.Rolling.Newtons),
                ("slope_force_n", forces.Slope.Newtons),
                ("wheel_power_kw", wheels.Kilowatts),
                ("engine_power_kw", engine.Kilowatts),
                ("fuel_l_per_100km", fuel?.LitresPerHundredKilometres ?? double.NaN),
                ("carbon_dioxide_g_per_km", fuel is { } burnt ? line.CarbonDioxide(burnt).GramsPerKilometre : double.NaN))
                .Warning(wheels.Watts < 0 ? "the car rolls by itself; the engine brakes" : null);
        },
    };

    private static PhysicsModel TopSpeedModel() => new()
    {
        Name = "top-speed",
        Formula = "F(V) V = P eta, and no more than the gearing allows",
        Title = "Top speed by power and gearing",
        What = "Where power at the wheels and road load meet, or where the gearing ends before, and how much of it a change of drag would move.",
        Inputs =
        [
            CommonInputs.Mass, DragAreaInput,
            ModelInput.Required("engine_power_kw", UnitKind.Power, "kW", (0.5, 1500), (10, 300), "power at the crankshaft near the top; old ratings without fan and silencer are 10 to 20 % high"),
            TyresInput, RollingInput, RollingStateInput, CommonInputs.Density, HeadwindInput, SlopeInput, DrivelineInput,
            ModelInput.Optional("geared_top_speed_kmh", UnitKind.Speed, "km/h", (20, 500), (60, 350), "where top gear and the highest turning speed of the engine end, from the model gearing-speed; without it power alone decides"),
        ],
        Outputs =
        [
            ModelOutput.Of("top_speed_kmh", UnitKind.Speed, "km/h", "top speed, the lower of power and gearing; none when it lies beyond 500 km/h"),
            ModelOutput.Word("limited_by", "power, gearing, or power as far as is known"),
            ModelOutput.Of("elasticity", UnitKind.Ratio, string.Empty, "percent of top speed for one percent of drag area, in still air"),
            ModelOutput.Of("gain_for_tenth_kmh", UnitKind.Speed, "km/h", "top speed gained by 10 % less drag area"),
        ],
        Source = "Gillespie ch. 4 from memory; elasticity own derivation",
        Validity = "power constant near the top; gearing only where it is given",
        Uncertainty = "a third of the sum of those of power and drag area",
        Compute = values =>
        {
            RoadCar car = Car(values);
            RoadDay day = Day(values);
            Power wheels = Power.FromKilowatts(values["engine_power_kw"] * values["driveline_efficiency"]);
            double geared = values.Find("geared_top_speed_kmh") ?? double.PositiveInfinity;
            RoadSpeed? top = TopSpeed.ByPower(car, day, wheels);
            RoadSpeed? less = TopSpeed.ByPower(car.With(DragAreaChange.FromSquareMetres(-0.1 * values["drag_area_m2"])), day, wheels);
            double Lower(RoadSpeed? byPower) => byPower is { } speed ? Math.Min(speed.KilometresPerHour, geared) : double.IsFinite(geared) ? geared : double.NaN;
            bool byGears = double.IsFinite(geared) && !(top?.KilometresPerHour < geared);
            return ModelAnswer.Of(
                ("top_speed_kmh", Lower(top)),
                ("elasticity", byGears ? 0 : top is { } at ? TopSpeed.Elasticity(car, day, at) : double.NaN),
                ("gain_for_tenth_kmh", Lower(less) - Lower(top)))
                .Saying("limited_by", byGears ? "gearing" : double.IsFinite(geared) ? "power" : "power as far as is known");
        },
    };

    private static PhysicsModel GearingSpeedModel() => new()
    {
        Name = "gearing-speed",
        Title = "Speed at an engine speed in a gear",
        What = "The other cap on top speed: the engine's highest turning speed.",
        Inputs =
        [
            ModelInput.Required("rolling_radius_m", UnitKind.Length, "m", (0.1, 0.8), (0.22, 0.4), "loaded radius of the driven wheel, about 0.97 of half the outer diameter"),
            ModelInput.Required("engine_speed_rpm", UnitKind.TurningSpeed, "rpm", (100, 15000), (1000, 8000), "turning speed of the engine"),
            ModelInput.Required("total_ratio", UnitKind.Ratio, string.Empty, (0.5, 40), (2, 20), "gearbox ratio times axle ratio"),
        ],
        Outputs = [ModelOutput.Of("speed_kmh", UnitKind.Speed, "km/h", "road speed")],
        Source = "kinematics",
        Validity = "no slip",
        Uncertainty = "2 %, mostly the radius",
        Compute = values => ModelAnswer.Of(("speed_kmh",
            TopSpeed.ByGearing(Length.FromMetres(values["rolling_radius_m"]), values["engine_speed_rpm"], values["total_ratio"]).KilometresPerHour)),
    };

    private static PhysicsModel DragSavingModel() => new()
    {
        Name = "drag-saving",
        Formula = "dF = q dC_dA; dP = dF V / eta; db = dF / 36 x k / eta",
        Title = "What a change of drag area is worth",
        What = "Force, power, fuel and carbon dioxide for a change of drag area at a steady speed, and the far smaller figure of mixed driving beside it.",
        Inputs =
        [
            ModelInput.Required("drag_area_change_m2", UnitKind.Area, "m2", (-2, 2), (-0.3, 0.3), "negative for less drag"),
            CommonInputs.Speed, CommonInputs.Density, DrivelineInput, EngineInput, SlopeOfFuelInput,
            ModelInput.Optional("drag_area_m2", UnitKind.Area, "m2", (0.05, 6), (0.4, 1.6), "drag area before the change; without it there is no figure for mixed driving"),
        ],
        Outputs =
        [
            ModelOutput.Of("force_change_n", UnitKind.Force, "N", "change of drag"),
            ModelOutput.Of("engine_power_change_kw", UnitKind.Power, "kW", "change of power at the crankshaft"),
            ModelOutput.Of("fuel_change_l_per_100km", UnitKind.FuelConsumption, "l/100km", "change of fuel at this steady speed"),
            ModelOutput.Of("carbon_dioxide_change_g_per_km", UnitKind.CarbonDioxideRate, "g/km", "change of carbon dioxide at this steady speed"),
            ModelOutput.Of("mixed_fuel_change_percent", UnitKind.Ratio, "%", "change of fuel in mixed driving: 2 to 2.5 % for 10 % of drag; none without the drag area"),
        ],
        Source = "own derivation (1 N over 100 km is 1/36 kWh); fuel slopes as in road-load; mixed driving: US Office of Technology Assessment, advanced automotive technology",
        Validity = "steady speed, still air, level road, gearing unchanged",
        Uncertainty = "fuel slope 5 to 10 %; the change itself usually far more",
        Compute = values =>
        {
            DragSaving saving = DragSaving.Of(
                DragAreaChange.FromSquareMetres(values["drag_area_change_m2"]),
                AirSpeed.FromKilometresPerHour(values["speed_kmh"]),
                AirDensity.FromKilogramsPerCubicMetre(values["air_density_kg_per_m3"]),
                Engine(values),
                values["driveline_efficiency"]);
            double share = values["drag_area_change_m2"] / (values.Find("drag_area_m2") ?? double.NaN);
            return ModelAnswer.Of(
                ("force_change_n", saving.Force.Newtons),
                ("engine_power_change_kw", saving.AtEngine.Kilowatts),
                ("fuel_change_l_per_100km", saving.Fuel.LitresPerHundredKilometres),
                ("carbon_dioxide_change_g_per_km", saving.CarbonDioxide.GramsPerKilometre),
                ("mixed_fuel_change_percent", 100 * share * DragSaving.MixedDrivingShare.Likely))
                .Warning(share <= -1 ? "the change takes away more drag than there is" : null);
        },
    };

    private static PhysicsModel CoastDownModel() => new()
    {
        Name = "coast-down-time",
        Title = "Time to roll from one speed to another",
        What = "How long the car rolls out of gear between two speeds: to plan a test road, and to see what a change of drag would do to it.",
        Inputs =
        [
            CommonInputs.Mass, DragAreaInput,
            ModelInput.Required("from_kmh", UnitKind.Speed, "km/h", (1, 400), (40, 140), "speed at the start"),
            ModelInput.Required("to_kmh", UnitKind.Speed, "km/h", (0, 399), (10, 100), "speed at the end"),
            TyresInput, RollingInput, RollingStateInput, CommonInputs.Density, HeadwindInput, SlopeInput,
        ],
        Outputs =
        [
            ModelOutput.Of("time_s", UnitKind.Duration, "s", "time; none when the car does not get that slow"),
            ModelOutput.Of("distance_m", UnitKind.Length, "m", "road needed; none when the car does not get that slow"),
        ],
        Source = "Newton's second law by quadrature; 3 % for what rotates (from memory); reproduces 24 of the 25 times of 40 CFR 86.529-98 to 0.3 %",
        Validity = "out of gear, constant slope, steady wind along the road",
        Uncertainty = "1 % from the rotating mass; tyres and drag area as given",
        Compute = CoastDown,
    };

    private static ModelAnswer CoastDown(ModelValues values)
    {
        if (values["to_kmh"] >= values["from_kmh"])
        {
            return ModelAnswer.ThatIsImpossible("a coast-down ends slower than it starts: to must be below from, in km/h");
        }

        RoadCar car = Car(values);
        RoadDay day = Day(values);
        Mass effective = RotatingMass.OutOfGear(car.Mass);
        RoadSpeed from = RoadSpeed.FromKilometresPerHour(values["from_kmh"]);
        RoadSpeed to = RoadSpeed.FromKilometresPerHour(values["to_kmh"]);
        Duration? time = CoastDownTime.Between(effective, from, to, speed => RoadLoadSum.At(car, day, speed).Total);
        Length? road = CoastDownTime.Distance(effective, from, to, speed => RoadLoadSum.At(car, day, speed).Total);
        return ModelAnswer.Of(("time_s", time?.Seconds ?? double.NaN), ("distance_m", road?.Metres ?? double.NaN));
    }
}
