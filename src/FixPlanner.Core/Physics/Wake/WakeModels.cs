using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Wake;

/// <summary>The wake models as the catalogue lists them.</summary>
public static class WakeModels
{
    /// <summary>Every model of this folder.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } = [BasePressureModel(), WakeTapsModel()];

    private static PhysicsModel BasePressureModel() => new()
    {
        Name = "base-pressure",
        Title = "Drag from pressure taps on the tail",
        What = "What a change of the pressure on the tail, read with a manometer before and after, means for drag.",
        Inputs =
        [
            ModelInput.Required("coefficient_before", UnitKind.Ratio, string.Empty, (-2, 1), (-0.5, 0.3), "mean base pressure coefficient before"),
            ModelInput.Required("coefficient_after", UnitKind.Ratio, string.Empty, (-2, 1), (-0.5, 0.3), "mean base pressure coefficient after"),
            ModelInput.WithDefault("base_area_m2", UnitKind.Area, "m2", (0.1, 6), (0.4, 4), new(1.0, 1.5, 1.9), "area of the tail that lies in the wake"),
            ModelInput.WithDefault("drag_area_m2", UnitKind.Area, "m2", (0.1, 4), (0.4, 2), new(0.65, 0.80, 1.0), "drag area of the whole car"),
        ],
        Outputs =
        [
            ModelOutput.Of("drag_area_change_m2", UnitKind.Area, "m2", "below 0 = less drag"),
            ModelOutput.Of("base_share_before_percent", UnitKind.Ratio, "%", "share of the drag that the suction on the tail made before"),
        ],
        Source = "dCdA = -dCpb Ab (Hucho, chapter 4, from memory)",
        Validity = "mean of at least four taps; what the part itself drags is not in it",
        Uncertainty = "taps repeat to about 0.01 from day to day: 0.015 m2",
        Compute = values =>
        {
            Area area = Area.FromSquareMetres(values["base_area_m2"]);
            return ModelAnswer.Of(
                ("drag_area_change_m2", BasePressure.DragAreaChange(values["coefficient_after"] - values["coefficient_before"], area).SquareMetres),
                ("base_share_before_percent", 100 * BasePressure.ShareOfDrag(values["coefficient_before"], area, DragArea.FromSquareMetres(values["drag_area_m2"]))));
        },
    };

    private static PhysicsModel WakeTapsModel() => new()
    {
        Name = "wake-taps",
        Title = "Which edge feeds the wake",
        What = "From four taps at the tail: whether the air of the roof or of the underbody turns into the wake more. A hint for where dirt comes from.",
        Inputs = [Tap("roof_end_coefficient", "just ahead of the rear edge of the roof"), Tap("upper_base_coefficient", "upper half of the tail"),
            Tap("lower_base_coefficient", "lower half of the tail"), Tap("underbody_exit_coefficient", "just ahead of the rear edge of the floor")],
        Outputs =
        [
            ModelOutput.Of("roof_fall", UnitKind.Ratio, string.Empty, "fall from the roof's edge to the upper tail"),
            ModelOutput.Of("floor_fall", UnitKind.Ratio, string.Empty, "fall from the floor's edge to the lower tail"),
            ModelOutput.Word("fed_from", "roof, underbody, or not told"),
        ],
        Source = "own derivation: streamlines bend towards low pressure; not checked against soiling tests",
        Validity = "square tails; straight ahead",
        Uncertainty = "a hint; under 0.03 of difference nothing is told",
        Compute = values =>
        {
            WakeTaps taps = new(values["roof_end_coefficient"], values["upper_base_coefficient"], values["lower_base_coefficient"], values["underbody_exit_coefficient"]);
            string fed = taps.FedFrom() switch { WakeEdge.Roof => "roof", WakeEdge.Underbody => "underbody", _ => "not told" };
            return ModelAnswer.Of(("roof_fall", taps.RoofEnd - taps.UpperBase), ("floor_fall", taps.UnderbodyExit - taps.LowerBase)).Saying("fed_from", fed);
        },
    };

    private static ModelInput Tap(string name, string place) =>
        ModelInput.Required(name, UnitKind.Ratio, string.Empty, (-3, 1), (-1, 0.5), $"pressure coefficient {place}");
}
