using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.FrontalArea;

/// <summary>The models of frontal area as the catalogue lists them.</summary>
public static class FrontalAreaModels
{
    /// <summary>Every model of this folder.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } = [Measured(), FromMassAlone()];

    private static PhysicsModel Measured() => new()
    {
        Name = "frontal-area",
        Title = "Frontal area from a tape measure and a photo",
        What = "Frontal area in up to three ways with the spread of each, and joined. Needed to turn a drag coefficient into a drag area; not needed to compare two runs.",
        Inputs =
        [
            ModelInput.Required("width_m", UnitKind.Length, "m", (0.8, 3), (1.2, 2.1), "width of the body without mirrors"),
            ModelInput.Required("height_m", UnitKind.Length, "m", (0.6, 4), (1.0, 2.2), "height from the road to the top of the roof"),
            ModelInput.Choice("body", ["usual", "boxy"], "boxy: the sides hardly lean inwards"),
            ModelInput.Optional("clearance_m", UnitKind.Length, "m", (0, 0.5), (0.08, 0.25), "ground clearance under the apron; with the tyre width it gives a second way"),
            ModelInput.Optional("tyre_width_m", UnitKind.Length, "m", (0.08, 0.4), (0.12, 0.26), "width of one front tyre"),
            ModelInput.WithDefault("mirrors_m2", UnitKind.Area, "m2", (0, 0.5), (0, 0.12), new(0, 0.02, 0.07), "area of all mirrors, 0.03 to 0.04 for each large one; used with the parts"),
            ModelInput.Optional("outline_pixels", UnitKind.Count, string.Empty, (1000, 1e9), (2e4, 1e8), "pixels inside the outline of a photo from the front; with the next three it gives the third and best way"),
            ModelInput.Optional("reference_m", UnitKind.Length, "m", (0.05, 5), (0.3, 2.5), "true length of something across the car in the photo"),
            ModelInput.Optional("reference_pixels", UnitKind.Count, string.Empty, (10, 1e5), (100, 2e4), "its length in pixels"),
            ModelInput.Optional("camera_distance_m", UnitKind.Length, "m", (3, 1000), (10, 200), "from the camera to that reference"),
            ModelInput.WithDefault("widest_behind_m", UnitKind.Length, "m", (-3, 6), (-1, 3), Triangle.Certain(0), "how far the widest part stands behind the reference"),
        ],
        Outputs =
        [
            ModelOutput.Of("frontal_area_m2", UnitKind.Area, "m2", "the ways joined"),
            ModelOutput.Of("frontal_area_deviation_m2", UnitKind.Area, "m2", "standard deviation of that"),
            ModelOutput.Of("by_rule_m2", UnitKind.Area, "m2", "by width times height"),
            ModelOutput.Of("from_parts_m2", UnitKind.Area, "m2", "from body, tyres and mirrors; none without clearance and tyre width"),
            ModelOutput.Of("from_photo_m2", UnitKind.Area, "m2", "from the photo; none without its four figures"),
        ],
        Source = "EPA LDTP 77-11-1 (fill 0.80, spread), Hucho (0.81, from memory); parts and photo own derivation",
        Validity = "cars and car-like vans",
        Uncertainty = "rule 4 %, parts 3.5 %, photo 2.6 % from 25 m; joined never below 2 %",
        Compute = Compute,
    };

    private static ModelAnswer Compute(ModelValues values)
    {
        if (values.Find("camera_distance_m") is { } away && away + values["widest_behind_m"] < 1)
        {
            return ModelAnswer.ThatIsImpossible("the widest part would stand less than 1 m from the camera: give a larger camera_distance_m (m)");
        }

        Length width = Length.FromMetres(values["width_m"]);
        Length height = Length.FromMetres(values["height_m"]);
        AreaEstimate rule = AreaRules.ByWidthAndHeight(width, height, values.Word("body") == "boxy" ? AreaRules.BoxyFill : AreaRules.UsualFill);
        AreaEstimate? parts = values.Find("clearance_m") is { } clearance && values.Find("tyre_width_m") is { } tyre
            ? AreaRules.FromParts(width, height, Length.FromMetres(clearance), Length.FromMetres(tyre), Area.FromSquareMetres(values["mirrors_m2"]))
            : null;
        AreaEstimate? photo = Photo(values);
        AreaEstimate[] ways = [.. new[] { rule, parts, photo }.OfType<AreaEstimate>()];
        AreaEstimate joined = AreaRules.Joined(ways);
        bool apart = ways.Length > 1 && ways.Max(way => way.Value.SquareMetres) - ways.Min(way => way.Value.SquareMetres) > 0.12 * joined.Value.SquareMetres;
        return ModelAnswer.Of(
            ("frontal_area_m2", joined.Value.SquareMetres),
            ("frontal_area_deviation_m2", joined.Deviation.SquareMetres),
            ("by_rule_m2", rule.Value.SquareMetres),
            ("from_parts_m2", parts?.Value.SquareMetres ?? double.NaN),
            ("from_photo_m2", photo?.Value.SquareMetres ?? double.NaN))
            .Warning(apart ? "the ways differ by more than an eighth; one of the measures is probably wrong" : null);
    }

    private static AreaEstimate? Photo(ModelValues values) =>
        values.Find("outline_pixels") is { } outline && values.Find("reference_m") is { } reference
        && values.Find("reference_pixels") is { } pixels && values.Find("camera_distance_m") is { } distance
            ? AreaRules.FromPhoto(outline, Length.FromMetres(reference), pixels, Length.FromMetres(distance), Length.FromMetres(values["widest_behind_m"]))
            : null;

    private static PhysicsModel FromMassAlone() => new()
    {
        Name = "frontal-area-from-mass",
        Title = "Frontal area from the mass alone",
        What = "The last resort, when nobody can measure the car.",
        Inputs = [ModelInput.Required("mass_kg", UnitKind.Mass, "kg", (500, 3000), (800, 2000), "mass of the car, empty with driver")],
        Outputs =
        [
            ModelOutput.Of("frontal_area_m2", UnitKind.Area, "m2", "frontal area"),
            ModelOutput.Of("frontal_area_deviation_m2", UnitKind.Area, "m2", "standard deviation"),
        ],
        Source = "Wong, Theory of Ground Vehicles, ch. 3 (from memory)",
        Validity = "800 to 2000 kg",
        Uncertainty = "10 % (own choice)",
        Compute = values =>
        {
            AreaEstimate estimate = AreaRules.FromMass(Mass.FromKilograms(values["mass_kg"]));
            return ModelAnswer.Of(("frontal_area_m2", estimate.Value.SquareMetres), ("frontal_area_deviation_m2", estimate.Deviation.SquareMetres));
        },
    };
}
