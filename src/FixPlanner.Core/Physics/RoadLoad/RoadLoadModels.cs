using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>The models of road load as the catalogue lists them.</summary>
public static partial class RoadLoadModels
{
    private static readonly ModelInput DragAreaInput = ModelInput.Required(
        "drag_area_m2", UnitKind.Area, "m2", (0.05, 6), (0.4, 1.6), "drag coefficient times frontal area; from a coast-down, or 0.40 to 0.50 times the frontal area for a boxy old car (from memory)");

    private static readonly ModelInput TyresInput = ModelInput.Choice(
        "tyres", ["radial", "cross-ply", "own"], "kind of tyre; 'own' takes rolling-coefficient as it is");

    private static readonly ModelInput RollingInput = ModelInput.WithDefault(
        "rolling_coefficient", UnitKind.Ratio, string.Empty, (0.003, 0.1), (0.007, 0.03), Triangle.Certain(0.015), "rolling resistance for each newton of weight; used only with --tyres own");

    private static readonly ModelInput RollingStateInput = ModelInput.WithDefault(
        "rolling_state", UnitKind.Ratio, string.Empty, (0.3, 3), (0.5, 2), new(0.8, 1, 1.2), "resistance of these very tyres over that of their kind: nobody measured an old tyre to better than a fifth");

    private static readonly ModelInput SlopeInput = ModelInput.WithDefault(
        "slope_percent", UnitKind.Ratio, "%", (-40, 40), (-15, 15), Triangle.Certain(0), "slope of the road, positive uphill");

    private static readonly ModelInput HeadwindInput = ModelInput.WithDefault(
        "headwind_ms", UnitKind.Speed, "m/s", (-40, 40), (-10, 10), Triangle.Certain(0), "wind against the car; negative from behind");

    private static readonly ModelInput DrivelineInput = ModelInput.WithDefault(
        "driveline_efficiency", UnitKind.Ratio, string.Empty, (0.5, 1), (0.8, 0.98), new(0.88, RoadLoadSum.UsualDrivelineEfficiency, 0.94), "power at the wheels over power at the crankshaft; manual gearbox (from memory)");

    private static readonly ModelInput EngineInput = ModelInput.Choice(
        "engine", ["carburettor-petrol", "injected-petrol", "charged-petrol", "diesel"], "kind of engine: sets fuel for each kilowatt-hour, fuel at idle and carbon dioxide");

    private static readonly ModelInput SlopeOfFuelInput = ModelInput.Optional(
        "fuel_slope_l_per_kwh", UnitKind.FuelPerWork, "l/kWh", (0.15, 0.8), (0.2, 0.45), "fuel for each kilowatt-hour more, if you know it; otherwise that of the kind of engine");

    /// <summary>Every model of this folder.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } =
    [
        RoadLoadModel(), TopSpeedModel(), GearingSpeedModel(), DragSavingModel(), CoastDownModel(), SpeedBudgetModel(), TyreStateModel(), ProtrudingModel(),
    ];

    private static RoadCar Car(ModelValues values) =>
        new(Mass.FromKilograms(values["mass_kg"]), DragArea.FromSquareMetres(values["drag_area_m2"]), Tyres(values));

    private static RollingResistance Tyres(ModelValues values)
    {
        RollingResistance kind = values.Word("tyres") switch
        {
            "radial" => RollingResistance.Radial,
            "cross-ply" => RollingResistance.CrossPly,
            _ => RollingResistance.Own(values["rolling_coefficient"], 0),
        };
        return kind.Times(values["rolling_state"]);
    }

    private static RoadDay Day(ModelValues values) => new(
        AirDensity.FromKilogramsPerCubicMetre(values["air_density_kg_per_m3"]),
        AirSpeed.FromMetresPerSecond(values["headwind_ms"]),
        Angle.FromRadians(Math.Atan(values["slope_percent"] / 100)));

    private static FuelLine Engine(ModelValues values)
    {
        FuelLine kind = values.Word("engine") switch
        {
            "injected-petrol" => FuelLine.InjectedPetrol,
            "charged-petrol" => FuelLine.ChargedPetrol,
            "diesel" => FuelLine.Diesel,
            _ => FuelLine.CarburettorPetrol,
        };
        return values.Find("fuel_slope_l_per_kwh") is { } slope ? kind with { LitresPerKilowattHour = slope } : kind;
    }
}
