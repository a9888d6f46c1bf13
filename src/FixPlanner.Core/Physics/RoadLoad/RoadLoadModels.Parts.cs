using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>Models of single parts and of a change of speed.</summary>
public static partial class RoadLoadModels
{
    private static PhysicsModel SpeedBudgetModel() => new()
    {
        Name = "speed-budget",
        Formula = "loads ~ V^2; power ~ V^3; E = m V^2 / 2",
        Title = "What a higher planned speed does",
        What = "Loads, power, brake energy and tyres when the car is to go faster than now.",
        Inputs =
        [
            CommonInputs.Mass,
            ModelInput.Required("now_kmh", UnitKind.Speed, "km/h", (10, 400), (60, 250), "highest speed now"),
            ModelInput.Required("planned_kmh", UnitKind.Speed, "km/h", (10, 400), (60, 250), "highest speed planned"),
        ],
        Outputs =
        [
            ModelOutput.Of("load_ratio", UnitKind.Ratio, string.Empty, "every air load (glass, bonnet, lift, seals), new over old"),
            ModelOutput.Of("air_power_ratio", UnitKind.Ratio, string.Empty, "power to overcome the air, new over old"),
            ModelOutput.Of("brake_energy_now_mj", UnitKind.Energy, "MJ", "energy of one stop from the speed now"),
            ModelOutput.Of("brake_energy_planned_mj", UnitKind.Energy, "MJ", "energy of one stop from the planned speed"),
            ModelOutput.Word("tyre_symbol", "slowest speed symbol of tyre that allows the planned speed, or 'none'"),
        ],
        Source = "definitions; tyre speed symbols from memory",
        Validity = "same air and same coefficients; sound tyres at their pressure and load, not over age",
        Uncertainty = "3 % (rotating parts, drag during the stop)",
        Compute = values =>
        {
            SpeedBudget budget = SpeedBudget.Of(
                Mass.FromKilograms(values["mass_kg"]), RoadSpeed.FromKilometresPerHour(values["now_kmh"]), RoadSpeed.FromKilometresPerHour(values["planned_kmh"]));
            return ModelAnswer.Of(
                ("load_ratio", budget.LoadRatio),
                ("air_power_ratio", budget.PowerRatio),
                ("brake_energy_now_mj", budget.BrakeEnergyBefore.Megajoules),
                ("brake_energy_planned_mj", budget.BrakeEnergyAfter.Megajoules))
                .Saying("tyre_symbol", budget.Tyre?.Letter ?? "none")
                .Warning(budget.LoadRatio > 1.2 ? "the glass, the catches, the brakes and the tyres must be checked for the planned speed before it is driven" : null);
        },
    };

    private static PhysicsModel TyreStateModel() => new()
    {
        Name = "tyre-state",
        Title = "Tyre pressure and rolling resistance with temperature",
        What = "How far pressure and rolling resistance move when the tyre warms: log both at every pair of runs.",
        Inputs =
        [
            ModelInput.Required("pressure_bar", UnitKind.Pressure, "bar", (0.5, 6), (1.2, 3.5), "gauge pressure at the first temperature"),
            ModelInput.Required("from_c", UnitKind.Temperature, "°C", (-40, 120), (-10, 80), "first temperature of the air in the tyre"),
            ModelInput.Required("to_c", UnitKind.Temperature, "°C", (-40, 120), (-10, 80), "second temperature"),
        ],
        Outputs =
        [
            ModelOutput.Of("warm_pressure_bar", UnitKind.Pressure, "bar", "gauge pressure at the second temperature"),
            ModelOutput.Of("resistance_ratio", UnitKind.Ratio, string.Empty, "rolling resistance from the pressure alone, second over first"),
        ],
        Source = "ideal gas; exponent -0.4 from Clark, Mechanics of Pneumatic Tires (from memory)",
        Validity = "1.2 to 3.5 bar, load unchanged",
        Uncertainty = "2 % of the pressure; exponent 0.3 to 0.5",
        Compute = values =>
        {
            PressureDifference cold = PressureDifference.FromBars(values["pressure_bar"]);
            PressureDifference warm = TyreState.Warmed(cold, Temperature.FromDegreesCelsius(values["from_c"]), Temperature.FromDegreesCelsius(values["to_c"]));
            return warm.Pascals <= 0
                ? ModelAnswer.ThatIsImpossible("at the second temperature the tyre has no pressure above the air outside: 0 bar or less")
                : ModelAnswer.Of(("warm_pressure_bar", warm.Bars), ("resistance_ratio", TyreState.ResistanceFactor(cold, warm)));
        },
    };

    private static PhysicsModel ProtrudingModel() => new()
    {
        Name = "protruding-drag",
        Title = "Drag of what sticks out",
        What = "Drag area of a gutter, mirror, rack, lamp or badge by itself.",
        Inputs =
        [
            ModelInput.Required("frontal_area_m2", UnitKind.Area, "m2", (1e-5, 2), (1e-4, 0.3), "area of the part seen from the front; for a gutter along the wind its front face only"),
            ModelInput.WithDefault("shape_coefficient", UnitKind.Ratio, string.Empty, (0, 2.5), (0.1, 2), new(0.9, 1.2, 1.4), "strip across the wind 1.2, round bar 1.1, rounded mirror 0.4 to 0.5, faired 0.1 to 0.2 (from memory)"),
            ModelInput.WithDefault("pressure_coefficient", UnitKind.Ratio, string.Empty, (-6, 1), (-2, 0.9), new(-1, -0.5, 0), "of the skin where it stands; below zero the air there is faster than the car"),
            ModelInput.Required("height_mm", UnitKind.Length, "mm", (0.1, 1500), (3, 500), "height above the skin"),
            ModelInput.WithDefault("boundary_layer_mm", UnitKind.Length, "mm", (0, 300), (1, 100), new(10, 20, 40), "thickness of the slow layer on the skin: 10 mm near a front edge, 30 mm at the end of a roof (from memory)"),
        ],
        Outputs = [ModelOutput.Of("drag_area_m2", UnitKind.Area, "m2", "drag area of the part")],
        Source = "Hoerner, Fluid-Dynamic Drag, ch. 5 and 8 (from memory)",
        Validity = "one part on an attached surface; in dead air it costs nothing; separation that it causes is extra",
        Uncertainty = "±40 %",
        Compute = values => ModelAnswer.Of(("drag_area_m2", ProtrudingDrag.Of(
            values["shape_coefficient"],
            Area.FromSquareMetres(values["frontal_area_m2"]),
            values["pressure_coefficient"],
            Length.FromMillimetres(values["height_mm"]),
            Length.FromMillimetres(values["boundary_layer_mm"])).SquareMetres)),
    };
}
