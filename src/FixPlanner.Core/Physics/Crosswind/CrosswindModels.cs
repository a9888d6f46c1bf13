using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Crosswind;

/// <summary>The models of side wind as the catalogue lists them.</summary>
public static class CrosswindModels
{
    // Side force of an axle for each degree of slip, over its load: 0.14 for radials, 0.10 for cross-ply (from memory).
    private static readonly Triangle StiffnessOverLoad = new(0.09, 0.12, 0.16);

    /// <summary>Every model of this folder.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } = [Crosswind(), Averaged()];

    private static PhysicsModel Crosswind() => new()
    {
        Name = "crosswind",
        Formula = "F = q_r A C_Y' psi; N = q_r A l C_N' psi",
        Title = "Side force, yaw moment and the steering they ask for",
        What = "What a wind from the side does to the car at a speed.",
        Inputs =
        [
            CommonInputs.Speed,
            ModelInput.Required("crosswind_ms", UnitKind.Speed, "m/s", (0, 60), (0, 30), "wind across the road, at the height of the car"),
            ModelInput.WithDefault("headwind_ms", UnitKind.Speed, "m/s", (-40, 40), (-15, 15), Triangle.Certain(0), "wind against the car"),
            ModelInput.WithDefault("gust_factor", UnitKind.Ratio, string.Empty, (0.5, 3), (1, 2), Triangle.Certain(1), "factor on the wind across; 1.5 on exposed bridges (from memory)"),
            CommonInputs.FrontalArea,
            CommonInputs.Wheelbase,
            CommonInputs.FrontAxle,
            CommonInputs.RearAxle,
            CommonInputs.Density,
            ModelInput.Choice("body", ["car", "van"], "van: forward control, flat sides; sets the side force when it is not given"),
            ModelInput.Optional("side_force_per_deg", UnitKind.PerAngle, "1/deg", (0, 0.3), (0.02, 0.09), "side force coefficient for each degree; otherwise 0.04 for a car, 0.06 for a van, within a quarter"),
            ModelInput.WithDefault("side_state", UnitKind.Ratio, string.Empty, (0.3, 3), (0.5, 2), new(0.75, 1, 1.25), "side force of this very body over that of its kind"),
            ModelInput.WithDefault("yaw_moment_per_deg", UnitKind.PerAngle, "1/deg", (-0.03, 0.05), (0, 0.02), SideCoefficients.Car.YawMomentPerDegree, "yaw moment coefficient for each degree, on the wheelbase (from memory)"),
            ModelInput.WithDefault("axle_stiffness_per_deg", UnitKind.PerAngle, "1/deg", (0.02, 0.5), (0.06, 0.25), StiffnessOverLoad, "side force of an axle for each degree of slip, over its load: radial 0.14, cross-ply 0.10 (from memory)"),
        ],
        Outputs =
        [
            ModelOutput.Of("side_force_n", UnitKind.Force, "N", "side force, downwind"),
            ModelOutput.Of("yaw_deg", UnitKind.Angle, "deg", "angle at which the air meets the car"),
            ModelOutput.Of("yaw_moment_nm", UnitKind.Moment, "N m", "moment that turns the nose downwind"),
            ModelOutput.Of("path_demand", UnitKind.Ratio, string.Empty, "side force over weight: what the tyres must hold, in g"),
            ModelOutput.Of("steer_to_hold_deg", UnitKind.Angle, "deg", "angle of the front wheels that keeps the car straight; times about 16 at the steering wheel of an old car"),
        ],
        Source = "Hucho ch. 4 and 5 (definitions, from memory); coefficients from memory; steering own derivation",
        Validity = "steady wind; straight up to 20 degrees of yaw, then flat",
        Uncertainty = "25 % for the forces, 40 % for the steering",
        Compute = Compute,
    };

    private static ModelAnswer Compute(ModelValues values)
    {
        double perDegree = (values.Find("side_force_per_deg") ?? (values.Word("body") == "van" ? SideCoefficients.ForwardControlVan : SideCoefficients.Car).SideForcePerDegree.Likely) * values["side_state"];
        Length wheelbase = Length.FromMetres(values["wheelbase_m"]);
        ApparentWind wind = ApparentWind.Of(
            RoadSpeed.FromKilometresPerHour(values["speed_kmh"]),
            AirSpeed.FromMetresPerSecond(values["headwind_ms"]),
            AirSpeed.FromMetresPerSecond(values["crosswind_ms"] * values["gust_factor"]));
        SideLoad load = SideLoad.Of(
            wind, AirDensity.FromKilogramsPerCubicMetre(values["air_density_kg_per_m3"]), Area.FromSquareMetres(values["frontal_area_m2"]), wheelbase, perDegree, values["yaw_moment_per_deg"]);
        double stiffnessPerKilogram = values["axle_stiffness_per_deg"] * 180 / Math.PI * RoadLoad.RoadLoadSum.StandardGravity;
        return ModelAnswer.Of(
            ("side_force_n", load.Force.Newtons),
            ("yaw_deg", wind.Yaw.Degrees),
            ("yaw_moment_nm", load.YawMoment.NewtonMetres),
            ("path_demand", load.PathDemand(Mass.FromKilograms(values["front_axle_kg"] + values["rear_axle_kg"]))),
            ("steer_to_hold_deg", load.SteerToHold(wheelbase, values["front_axle_kg"] * stiffnessPerKilogram, values["rear_axle_kg"] * stiffnessPerKilogram).Degrees))
            .Warning(wind.Yaw.Degrees > SideLoad.StraightUpToDegrees ? "beyond 20 degrees of yaw the coefficients are held; the answer is rough" : null)
            .Warning(values["crosswind_ms"] >= WindThresholds.HighWindGust.MetresPerSecond ? "weather services warn of high wind at this speed: do not drive to test" : null);
    }

    private static PhysicsModel Averaged() => new()
    {
        Name = "wind-averaged-drag",
        Title = "Drag on days with wind",
        What = "Drag area felt over all wind directions, over that in still air: why a calm-day figure never shows in the fuel.",
        Inputs =
        [
            ModelInput.Required("speed_kmh", UnitKind.Speed, "km/h", (20, 400), (60, 200), "road speed"),
            ModelInput.Required("wind_ms", UnitKind.Speed, "m/s", (0, 30), (0, 10), "wind at the height of the car, from any direction"),
            ModelInput.WithDefault("rise_per_square_radian", UnitKind.Ratio, string.Empty, (0, 20), (0, 10), new(1, 3.3, 6), "drag grows by this times the square of the yaw in radians; 3.3 is 10 % at 10 degrees"),
        ],
        Outputs = [ModelOutput.Of("drag_ratio", UnitKind.Ratio, string.Empty, "drag over all directions over drag in still air")],
        Source = "idea: SAE J1252 (from memory); integral own derivation",
        Validity = "yaw up to about 20 degrees",
        Uncertainty = "the rise with yaw is known for few old cars",
        Compute = values => values["wind_ms"] >= values["speed_kmh"] / 3.6
            ? ModelAnswer.ThatIsImpossible("the wind must be slower than the car: give wind_ms below speed_kmh / 3.6 (m/s)")
            : ModelAnswer.Of(("drag_ratio", WindAveragedDrag.Ratio(
                RoadSpeed.FromKilometresPerHour(values["speed_kmh"]), AirSpeed.FromMetresPerSecond(values["wind_ms"]), values["rise_per_square_radian"]))),
    };
}
