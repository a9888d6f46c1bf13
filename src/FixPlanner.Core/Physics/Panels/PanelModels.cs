using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Panels;

/// <summary>The panel models as the catalogue lists them, and the air of a load from the inputs that all loads share.</summary>
public static class PanelModels
{
    private static readonly ModelInput Speed = ModelInput.Required("speed_kmh", UnitKind.Speed, "km/h", (0, 400), (30, 320), "speed of the car in still air; the gust comes on top");

    // Stands below the shared inputs, which must exist before the models that use them.
    /// <summary>Every model of this folder.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } = [PanelLoadModel(), DoorSealLift(), DoorFrameModel(), LoadRise()];

    /// <summary>The air of a load from the shared inputs.</summary>
    internal static LoadAir Air(ModelValues values, double kilometresPerHour) => new(AirSpeed.FromKilometresPerHour(kilometresPerHour))
    {
        Density = AirDensity.FromKilogramsPerCubicMetre(values["air_density_kg_per_m3"]),
        Gust = AirSpeed.FromMetresPerSecond(values["gust_ms"]),
        PassingFactor = values["passing_factor"],
    };

    private static PhysicsModel PanelLoadModel() => new()
    {
        Name = "panel-load",
        Formula = "F = (Cp under - Cp over) rho f (V + w)^2 / 2 x A; latch = F x_F - m g x_W",
        Title = "Pull on a bonnet, roof panel or tailgate, and at its latch",
        What = "How hard the air lifts a panel, what its latch must hold, and at what speed it would lift with no latch at all.",
        Inputs =
        [
            Speed,
            ModelInput.WithDefault("area_m2", UnitKind.Area, "m2", (0.001, 6), (0.02, 3), new(1.0, 1.2, 1.5), "area of the panel"),
            ModelInput.WithDefault("inside_coefficient", UnitKind.Ratio, string.Empty, (-3, 1), (-1, 1), new(-0.1, 0.15, 0.30), "pressure coefficient under it; engine bay -0.1 to 0.3 from memory, or from the model cabin-vents"),
            ModelInput.WithDefault("outside_coefficient", UnitKind.Ratio, string.Empty, (-3, 1), (-2, 1), new(-0.60, -0.30, -0.10), "mean pressure coefficient over it; from memory"),
            ModelInput.WithDefault("mass_kg", UnitKind.Mass, "kg", (0, 100), (0.5, 40), new(12, 15, 20), "mass of the panel"),
            ModelInput.WithDefault("load_place", UnitKind.Ratio, string.Empty, (0, 1), (0.3, 0.9), new(0.5, 0.6, 0.75), "where the pull acts, as a share of the way from hinge to latch"),
            ModelInput.WithDefault("weight_place", UnitKind.Ratio, string.Empty, (0, 1), (0.3, 0.7), Triangle.Certain(0.5), "where the weight acts, as a share of the way from hinge to latch"),
            CommonInputs.Gust, CommonInputs.ColdDensity, CommonInputs.Passing,
        ],
        Outputs =
        [
            ModelOutput.Of("pull_n", UnitKind.Force, "N", "outward force on the panel in the gust"),
            ModelOutput.Of("latch_load_n", UnitKind.Force, "N", "what all latches together hold; below 0 the weight still presses"),
            ModelOutput.Of("lifts_unlatched_kmh", UnitKind.Speed, "km/h", "speed at which it lifts with no latch; not a number where the air presses it down"),
        ],
        Source = "pressure difference times area (Hucho, pressure chapter, from memory); moments about the hinge",
        Validity = "shut panel that keeps its shape; once the edge lifts the force jumps",
        Uncertainty = "30 to 50 % from coefficients that were not measured",
        Compute = values =>
        {
            LoadAir air = Air(values, values["speed_kmh"]);
            Area area = Area.FromSquareMetres(values["area_m2"]);
            HingedPanel panel = new(area, Mass.FromKilograms(values["mass_kg"]), values["weight_place"], values["load_place"]);
            (double inside, double outside) = (values["inside_coefficient"], values["outside_coefficient"]);
            Force pull = PanelLoad.Outward(inside, outside, area, air);
            return ModelAnswer.Of(
                ("pull_n", pull.Newtons),
                ("latch_load_n", panel.LatchLoad(pull).Newtons),
                ("lifts_unlatched_kmh", panel.LiftsAt(inside, outside, air)?.KilometresPerHour ?? double.NaN))
                .Warning("one worn catch may carry it all; both stages of the latch and a second catch are checked by hand before a faster run");
        },
    };

    private static PhysicsModel DoorSealLift() => new()
    {
        Name = "door-seal-lift",
        Formula = "V = sqrt(2 F' L / (A rho dCp)) - w",
        Title = "Speed at which suction lifts a door off its seal",
        What = "Where leak noise jumps because the suction over the door beats the push of its seal.",
        Inputs =
        [
            ModelInput.WithDefault("seal_force_n_per_m", UnitKind.ForcePerLength, "N/m", (0, 2000), (10, 300), new(20, 60, 120), "push of the seal on each metre, from a strip of paper and a spring balance; the default is a guess"),
            ModelInput.WithDefault("seal_length_m", UnitKind.Length, "m", (0.1, 8), (1.5, 5), new(3.2, 3.6, 4.0), "length of seal that carries the load"),
            ModelInput.WithDefault("area_m2", UnitKind.Area, "m2", (0.05, 4), (0.3, 1.6), new(0.6, 0.8, 1.0), "area of the door inside the seal"),
            ModelInput.WithDefault("coefficient_across", UnitKind.Ratio, string.Empty, (0.01, 4), (0.2, 2), new(0.4, 0.7, 1.2), "pressure coefficient inside minus outside"),
            CommonInputs.Gust, CommonInputs.ColdDensity, CommonInputs.Passing,
        ],
        Outputs = [ModelOutput.Of("lifts_at_kmh", UnitKind.Speed, "km/h", "speed of the car at which the seal lifts in the gust: an upper bound, the frame's corner opens first")],
        Source = "own derivation: suction force against seal force",
        Validity = "stiff door; the latch carries nothing at the seal",
        Uncertainty = "25 % with a measured seal force, a factor of two with the default",
        Compute = values => ModelAnswer.Of(("lifts_at_kmh", DoorFrame.SealLiftsAt(
            LineLoad.FromNewtonsPerMetre(values["seal_force_n_per_m"]), Length.FromMetres(values["seal_length_m"]),
            Area.FromSquareMetres(values["area_m2"]), values["coefficient_across"], Air(values, 0)).KilometresPerHour)),
    };

    private static PhysicsModel DoorFrameModel() => new()
    {
        Name = "door-frame-pull",
        Formula = "F = dCp q A; M = F h / 2; d = 0.375 F / k",
        Title = "Pull on the top frame of a door",
        What = "The pull on side glass and frame, the bending moment at the waist, how far the top moves out, and the speed at which it leaves its seal.",
        Inputs =
        [
            Speed,
            ModelInput.WithDefault("area_m2", UnitKind.Area, "m2", (0.02, 2), (0.1, 0.8), new(0.26, 0.34, 0.45), "side glass and frame"),
            ModelInput.WithDefault("frame_height_m", UnitKind.Length, "m", (0.1, 1.5), (0.25, 0.8), new(0.36, 0.42, 0.52), "from the waist to the top of the frame"),
            ModelInput.WithDefault("coefficient_across", UnitKind.Ratio, string.Empty, (0.01, 4), (0.2, 2.8), new(0.4, 0.7, 1.5), "pressure coefficient inside minus outside; up to 2.5 to leeward in a side wind (from memory)"),
            ModelInput.WithDefault("top_stiffness_n_per_mm", UnitKind.ForcePerLength, "N/mm", (0.1, 500), (2, 100), new(8, 20, 50), "force at the top corner for each millimetre, from a spring balance and a rule; the default is a guess"),
            ModelInput.WithDefault("seal_give_mm", UnitKind.Length, "mm", (0, 30), (0.5, 10), new(1, 3, 6), "how far the parked door presses its seal in at the top"),
            CommonInputs.Gust, CommonInputs.ColdDensity, CommonInputs.Passing,
        ],
        Outputs =
        [
            ModelOutput.Of("pull_n", UnitKind.Force, "N", "outward force on glass and frame in the gust"),
            ModelOutput.Of("waist_moment_nm", UnitKind.Moment, "N m", "bending moment of the frame at the waist"),
            ModelOutput.Of("top_movement_mm", UnitKind.Length, "mm", "how far the top moves out"),
            ModelOutput.Of("opens_at_kmh", UnitKind.Speed, "km/h", "speed at which the top has moved as far as the seal gives"),
        ],
        Source = "own derivation: cantilever under an even load (beam tables from memory)",
        Validity = "window shut; glass channels carry nothing to the door",
        Uncertainty = "a factor of two until the stiffness is measured",
        Compute = values =>
        {
            LoadAir air = Air(values, values["speed_kmh"]);
            Area area = Area.FromSquareMetres(values["area_m2"]);
            Stiffness stiffness = Stiffness.FromNewtonsPerMillimetre(values["top_stiffness_n_per_mm"]);
            Force pull = DoorFrame.PullOut(values["coefficient_across"], area, air);
            return ModelAnswer.Of(
                ("pull_n", pull.Newtons),
                ("waist_moment_nm", DoorFrame.AtTheWaist(pull, Length.FromMetres(values["frame_height_m"])).NewtonMetres),
                ("top_movement_mm", DoorFrame.TopGap(pull, stiffness).Millimetres),
                ("opens_at_kmh", DoorFrame.TopOpensAt(Length.FromMillimetres(values["seal_give_mm"]), stiffness, area, values["coefficient_across"], air).KilometresPerHour));
        },
    };

    private static PhysicsModel LoadRise() => new()
    {
        Name = "load-rise",
        Formula = "((V2 + w) / (V1 + w))^2",
        Title = "What a higher top speed does to every air load",
        What = "The factor by which the pull on glass, panels, doors and latches grows when the car becomes faster.",
        Inputs =
        [
            ModelInput.Required("from_kmh", UnitKind.Speed, "km/h", (1, 400), (50, 250), "old speed"),
            ModelInput.Required("to_kmh", UnitKind.Speed, "km/h", (0, 400), (50, 320), "new speed"),
            CommonInputs.Gust,
        ],
        Outputs =
        [
            ModelOutput.Of("still_air_factor", UnitKind.Ratio, string.Empty, "the plain square of the speeds"),
            ModelOutput.Of("in_gust_factor", UnitKind.Ratio, string.Empty, "with the same gust in both"),
        ],
        Source = "definition of dynamic pressure",
        Validity = "coefficients that do not change with speed",
        Uncertainty = "none of the rule; parts that lift or open change the coefficients",
        Compute = values =>
        {
            AirSpeed from = AirSpeed.FromKilometresPerHour(values["from_kmh"]), to = AirSpeed.FromKilometresPerHour(values["to_kmh"]);
            return ModelAnswer.Of(
                ("still_air_factor", SpeedRise.LoadFactor(from, to, default)),
                ("in_gust_factor", SpeedRise.LoadFactor(from, to, AirSpeed.FromMetresPerSecond(values["gust_ms"]))));
        },
    };
}
