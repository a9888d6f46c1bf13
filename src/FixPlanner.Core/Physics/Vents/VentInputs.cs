using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>The inputs of a whole car's vent network as the catalogue lists them, and the network made from their values.</summary>
internal static class VentInputs
{
    private const double SealReferencePa = 200;

    public static IReadOnlyList<ModelInput> Car { get; } =
    [
        Area("cabin_inlet_cm2", new(60, 100, 150), "free area of the cabin's intake, flap open"),
        Pressure("cabin_inlet_coefficient", new(0.05, 0.30, 0.60), "pressure coefficient at the intake; screen base from memory: 0.25 to 0.60 upright, 0.05 to 0.35 raked"),
        Area("cabin_outlet_cm2", new(15, 50, 80), "free area of the cabin's outlets; a small figure where none was found"),
        Pressure("cabin_outlet_coefficient", new(-0.50, -0.20, -0.05), "pressure coefficient at the outlets; rear pillars -0.5 to -0.1 from memory"),
        Area("door_leak_cm2", new(3, 12, 35), "leaks of all doors: area times discharge coefficient at 200 Pa; 24 in a worn small hatch, under 1 in a new one"),
        Pressure("door_leak_coefficient", new(-0.80, -0.45, -0.20), "pressure coefficient at the door gaps, from memory"),
        Area("tail_leak_cm2", new(1, 4, 12), "leak of tailgate or boot: area times discharge coefficient at 200 Pa"),
        Pressure("tail_leak_coefficient", new(-0.28, -0.18, -0.05), "pressure coefficient at the tail, from memory"),
        Area("bay_inlet_cm2", new(350, 600, 900), "free area into the engine bay"),
        Pressure("bay_inlet_coefficient", new(0.45, 0.65, 0.80), "pressure coefficient at the grille, from memory"),
        Area("bay_outlet_cm2", new(400, 800, 1300), "free area out of the engine bay below"),
        Pressure("bay_outlet_coefficient", new(-0.30, -0.15, 0.00), "pressure coefficient under the bay, from memory"),
        Area("bonnet_rear_gap_cm2", new(40, 120, 250), "gap at the rear edge of the bonnet; a small figure where it is sealed, or with a rear engine"),
        Pressure("bonnet_rear_gap_coefficient", new(0.05, 0.35, 0.60), "pressure coefficient at that gap, from memory"),
        Area("bulkhead_holes_cm2", new(2, 8, 25), "holes between bay and cabin"),
        ModelInput.WithDefault("bay_temperature_c", UnitKind.Temperature, "°C", (-40, 200), (-20, 150), new(50, 70, 90), "air in the engine bay"),
        ModelInput.WithDefault("cabin_temperature_c", UnitKind.Temperature, "°C", (-40, 80), (-20, 60), Triangle.Certain(20), "air in the cabin"),
        ModelInput.WithDefault("outside_temperature_c", UnitKind.Temperature, "°C", (-40, 60), (-20, 45), Triangle.Certain(20), "air outside"),
        ModelInput.WithDefault("cross_wind_ms", UnitKind.Speed, "m/s", (0, 30), (0, 15), Triangle.Certain(0), "natural wind across the road"),
        ModelInput.WithDefault("intake_change_per_deg", UnitKind.PerAngle, "1/deg", (-0.1, 0.1), (-0.05, 0.05), Triangle.Certain(0), "change of the coefficient at the intake for each degree of yaw"),
        ModelInput.Choice("heater_fan", ["off", "on"], "heater fan in the intake, on: 120 Pa blocked, 200 m3/h free (from memory)"),
    ];

    public static AirOnCar Air(ModelValues values, double kilometresPerHour, double density) => new(
        RoadSpeed.FromKilometresPerHour(kilometresPerHour),
        AirDensity.FromKilogramsPerCubicMetre(density),
        Temperature.FromDegreesCelsius(values["outside_temperature_c"]))
    {
        CrossWind = AirSpeed.FromMetresPerSecond(values["cross_wind_ms"]),
    };

    public static VentNetwork Network(ModelValues values) => new(
        [
            new(Compartment.Bay, Temperature.FromDegreesCelsius(values["bay_temperature_c"])),
            new(Compartment.Cabin, Temperature.FromDegreesCelsius(values["cabin_temperature_c"])),
        ],
        [
            Intake(values),
            Outer(OldCarVents.CabinOut, Compartment.Cabin, Hole(values["cabin_outlet_cm2"], 0.6), values["cabin_outlet_coefficient"], 0.9),
            Outer(OldCarVents.DoorSeals, Compartment.Cabin, Seal(values["door_leak_cm2"]), values["door_leak_coefficient"], 1.0),
            Outer(OldCarVents.TailSeal, Compartment.Cabin, Seal(values["tail_leak_cm2"]), values["tail_leak_coefficient"], 0.8),
            Outer(OldCarVents.BayIn, Compartment.Bay, Hole(values["bay_inlet_cm2"], 0.6), values["bay_inlet_coefficient"], 0.5),
            Outer(OldCarVents.BayOut, Compartment.Bay, Hole(values["bay_outlet_cm2"], 0.6), values["bay_outlet_coefficient"], 0.2),
            Outer(OldCarVents.BonnetRearGap, Compartment.Bay, Hole(values["bonnet_rear_gap_cm2"], 0.4), values["bonnet_rear_gap_coefficient"], 0.95),
            new(OldCarVents.Bulkhead, Compartment.Bay, Compartment.Cabin, Hole(values["bulkhead_holes_cm2"], Orifice.PlainHole), Length.FromMetres(0.7)),
        ]);

    private static Opening Intake(ModelValues values)
    {
        Orifice hole = Hole(values["cabin_inlet_cm2"], 0.5);
        FlowLaw law = values.Word("heater_fan") == "on"
            ? new Blower(hole, PressureDifference.FromPascals(120), VolumeFlow.FromCubicMetresPerHour(200))
            : hole;
        return Outer(OldCarVents.CabinIn, Compartment.Cabin, law, values["cabin_inlet_coefficient"], 1.0)
            with { ChangePerDegreeOfYaw = values["intake_change_per_deg"] };
    }

    private static Opening Outer(string id, string into, FlowLaw law, double coefficient, double height) =>
        Opening.FromOutside(id, into, law, coefficient, Length.FromMetres(height));

    private static Orifice Hole(double squareCentimetres, double discharge) => new(Quantities.Area.FromSquareCentimetres(squareCentimetres), discharge);

    private static Crack Seal(double squareCentimetres) => Crack.OfEffectiveArea(
        Quantities.Area.FromSquareCentimetres(squareCentimetres), PressureDifference.FromPascals(SealReferencePa), AirDensity.FromKilogramsPerCubicMetre(1.2));

    private static ModelInput Area(string name, Triangle assumed, string meaning) =>
        ModelInput.WithDefault(name, UnitKind.Area, "cm2", (0.01, 5000), (0.1, 3000), assumed, meaning);

    private static ModelInput Pressure(string name, Triangle assumed, string meaning) =>
        ModelInput.WithDefault(name, UnitKind.Ratio, string.Empty, (-4, 1), (-2, 1), assumed, meaning);
}
