using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Separation;

/// <summary>The models of edges, steps and tails as the catalogue lists them.</summary>
public static class SeparationModels
{
    private static readonly string[] Obstacles = ["fence", "step-down", "rounded-step-down", "step-up"];

    /// <summary>Every model of this folder.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } = [Edge(), Landing(), Tail()];

    private static PhysicsModel Edge() => new()
    {
        Name = "front-edge",
        Title = "Whether air follows a front edge",
        What = "The radius that a corner, bonnet front or header needs for the air to stay on, against the one it has.",
        Inputs =
        [
            ModelInput.Required("radius_mm", UnitKind.Length, "mm", (0, 300), (0, 200), "radius of the edge; with a proud rim or strip, that of the strip"),
            ModelInput.Required("speed_kmh", UnitKind.Speed, "km/h", (18, 216), (30, 200), "speed of the car"),
            ModelInput.WithDefault("frontal_area_m2", UnitKind.Area, "m2", (1, 12), (1.2, 5), new(1.6, 1.8, 2.1), "frontal area"),
        ],
        Outputs =
        [
            ModelOutput.Of("needed_radius_mm", UnitKind.Length, "mm", "radius from which the air stays on"),
            ModelOutput.Of("margin", UnitKind.Ratio, string.Empty, "radius over needed radius"),
            ModelOutput.Of("for_corner_separation", UnitKind.Ratio, string.Empty, "factor on the odds of separation round the front corners, against an ordinary old car"),
            ModelOutput.Word("flow", "attached, partial, separated"),
        ],
        Source = "rule of 1985, from memory; usual radii of old cars are judgement",
        Validity = "air that turns a right angle; a raked screen asks for less",
        Uncertainty = "class and band; if tufts disagree, trust tufts",
        Compute = values =>
        {
            Length radius = Length.FromMillimetres(values["radius_mm"]);
            Area area = Area.FromSquareMetres(values["frontal_area_m2"]);
            AirSpeed speed = AirSpeed.FromKilometresPerHour(values["speed_kmh"]);
            FrontEdge edge = FrontEdge.Of(radius, area, speed);
            double factor = GeometryPriors.Of(new() { FrontEdgeRadius = radius, FrontalArea = area, Speed = speed })[0].LikelihoodRatio;
            return ModelAnswer.Of(
                ("needed_radius_mm", edge.NeededRadius.Millimetres),
                ("margin", edge.Margin),
                ("for_corner_separation", factor))
                .Saying("flow", edge.Flow switch
                {
                    EdgeFlow.Attached => "attached",
                    EdgeFlow.Partial => "partial",
                    _ => "separated",
                });
        },
    };

    private static PhysicsModel Landing() => new()
    {
        Name = "bubble-length",
        Title = "Where the air lands behind a step or strip",
        What = "The length of the bubble, and how sure it is that the air lands before the next edge.",
        Inputs =
        [
            ModelInput.Choice("obstacle", Obstacles, "what stands proud or falls away"),
            ModelInput.Required("height_mm", UnitKind.Length, "mm", (1, 500), (3, 200), "its height"),
            ModelInput.Optional("room_behind_m", UnitKind.Length, "m", (0, 6), (0, 4), "panel behind it; without it the confidence is left out"),
        ],
        Outputs =
        [
            ModelOutput.Of("shortest_m", UnitKind.Length, "m", "shortest"),
            ModelOutput.Of("bubble_m", UnitKind.Length, "m", "likely"),
            ModelOutput.Of("longest_m", UnitKind.Length, "m", "longest"),
            ModelOutput.Of("lands_within_percent", UnitKind.Ratio, "%", "how sure it lands within the room behind; none when the room is not given"),
        ],
        Source = "step 6.26 heights measured in 1985 and fence 9 to 13 heights, from memory; rounded step from flow computations",
        Validity = "turbulent layer thinner than a few heights; obstacle wider than ten heights",
        Uncertainty = "the range given",
        Compute = values =>
        {
            ObstacleKind kind = values.Word("obstacle") switch
            {
                "step-down" => ObstacleKind.StepDown,
                "rounded-step-down" => ObstacleKind.RoundedStepDown,
                "step-up" => ObstacleKind.StepUp,
                _ => ObstacleKind.Fence,
            };
            Bubble bubble = Bubble.Of(kind, Length.FromMillimetres(values["height_mm"]));
            return ModelAnswer.Of(
                ("shortest_m", bubble.Low.Metres),
                ("bubble_m", bubble.Likely.Metres),
                ("longest_m", bubble.High.Metres),
                ("lands_within_percent", values.Find("room_behind_m") is { } room ? 100 * bubble.LandsWithin(Length.FromMetres(room)) : double.NaN));
        },
    };

    private static PhysicsModel Tail() => new()
    {
        Name = "tail-slant",
        Title = "What the air does on a sloping tail",
        What = "The class of a slope from the roof end down, and whether a change may end there.",
        Inputs =
        [
            ModelInput.Required("slant_deg", UnitKind.Angle, "deg", (0, 90), (0, 90), "line from the roof end to where the flow could land, down from level"),
            ModelInput.WithDefault("length_share", UnitKind.Ratio, string.Empty, (0, 0.6), (0, 0.5), Triangle.Certain(0.2), "its length over the length of the car; a short lip is not a slant"),
        ],
        Outputs =
        [
            ModelOutput.Of("simple_body_drag_coefficient", UnitKind.Ratio, string.Empty, "of the simple body whose slant was varied: the shape of the curve, not your car"),
            ModelOutput.Word("flow", "attached, side vortices, unstable, separated, too short"),
            ModelOutput.Word("may_be_advised", "yes, no: nobody is sent into or next to the unstable range"),
        ],
        Source = "simple body of 1984, drag against slant from memory; critical angle read in a book",
        Validity = "slant at least a tenth of the car's length",
        Uncertainty = "borders shift by 2 to 4 degrees",
        Compute = values =>
        {
            Angle slant = Angle.FromDegrees(values["slant_deg"]);
            return ModelAnswer.Of(("simple_body_drag_coefficient", TailSlant.SimpleBodyDragCoefficient(slant)))
                .Saying("flow", TailSlant.Of(slant, values["length_share"]) switch
                {
                    SlantFlow.TooShort => "too short",
                    SlantFlow.Attached => "attached",
                    SlantFlow.SideVortices => "side vortices",
                    SlantFlow.Unstable => "unstable",
                    _ => "separated",
                })
                .Saying("may_be_advised", TailSlant.MayBeAdvised(slant) ? "yes" : "no");
        },
    };
}
