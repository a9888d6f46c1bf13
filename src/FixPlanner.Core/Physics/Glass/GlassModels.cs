using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Panels;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Glass;

/// <summary>The glass models as the catalogue lists them.</summary>
public static class GlassModels
{
    private const string NoCertificate = "how hard an old edge holds is a belief and not a measured strength: this is advice, not a certificate";

    private static readonly string[] Glazings = ["not-known", "rubber-with-strip", "rubber-without-strip", "bonded", "bolted"];

    private static readonly string[] Conditions = ["not-known", "supple", "aged", "hard", "perished"];

    private static readonly string[] Pushes = ["not-done", "firm", "creaks", "moves"];

    private static readonly ModelInput Speed = ModelInput.Required("speed_kmh", UnitKind.Speed, "km/h", (1, 400), (30, 320), "speed of the car in still air; the gust comes on top");

    private static readonly ModelInput[] PaneSides =
    [
        ModelInput.WithDefault("width_m", UnitKind.Length, "m", (0.05, 3), (0.15, 1.8), new(1.0, 1.15, 1.3), "width of the pane"),
        ModelInput.WithDefault("height_m", UnitKind.Length, "m", (0.05, 2), (0.15, 1.0), new(0.35, 0.45, 0.60), "height of the pane"),
    ];

    private static readonly ModelInput Inside = ModelInput.WithDefault(
        "inside_coefficient", UnitKind.Ratio, string.Empty, (-2, 1), (-1, 1), new(-0.15, 0.05, 0.30), "pressure coefficient in the cabin; from the model cabin-vents, or a manometer. Up to 0.3 with a front window open");

    private static readonly ModelInput Outside = ModelInput.WithDefault(
        "outside_coefficient", UnitKind.Ratio, string.Empty, (-4, 1), (-2, 0.5), new(-0.6, -0.30, -0.12), "mean pressure coefficient over the pane; from memory: square back -0.28 to -0.12, notchback -0.5 to -0.1, fastback -1.0 to -0.4");

    private static readonly ModelInput SafeAcross = ModelInput.WithDefault(
        "coefficient_across", UnitKind.Ratio, string.Empty, (0.01, 4), (0.1, 2), new(PaneInNetwork.UnmeasuredFloor, 0.8, 1.0),
        "pressure coefficient inside minus outside; 0.7 to 1.0 until a manometer has read less on this car (a shut car 0.4 to 0.7 from memory, 1.3 with a front window open)");

    private static readonly ModelInput[] Hold =
    [
        ModelInput.Choice("glazing", Glazings, "how the pane is held; not known counts as rubber with a strip"),
        ModelInput.Choice("condition", Conditions, "what a look at the rubber found"),
        ModelInput.Optional("rubber_age_years", UnitKind.Count, string.Empty, (0, 150), (0, 90), "years since the rubber was made; used where nobody looked; not given: taken as old"),
        ModelInput.Choice("push", Pushes, "what a push of 100 N on the inner upper corners did"),
    ];

    // Stands below the shared inputs, which must exist before the models that use them.
    /// <summary>Every model of this folder.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } = [GlassLoadModel(), GlassHoldModel(), GlassSpeed(), GlassRetention(), GlassProof(), SealingModel()];

    private static PhysicsModel GlassLoadModel() => new()
    {
        Name = "glass-load",
        Formula = "p = dCp rho f (V + w)^2 / 2; F = p A; R = gamma p b",
        Title = "Pull of the air on a pane",
        What = "How hard the air pulls a pane out of its rubber at a speed, in a gust on a cold day, and what the edge and the glass itself must bear.",
        Inputs =
        [
            Speed, .. PaneSides, Inside, Outside,
            ModelInput.Optional("coefficient_across", UnitKind.Ratio, string.Empty, (-1, 4), (0.1, 2), "pressure coefficient inside minus outside, if it is known as one; then inside and outside are not used"),
            ModelInput.WithDefault("thickness_mm", UnitKind.Length, "mm", (1, 20), (2.5, 8), new(3, 4, 5), "thickness of the glass"),
            CommonInputs.Gust, CommonInputs.ColdDensity, CommonInputs.Passing,
        ],
        Outputs =
        [
            ModelOutput.Of("pressure_pa", UnitKind.Pressure, "Pa", "across the glass in the gust, outward positive"),
            ModelOutput.Of("pull_n", UnitKind.Force, "N", "on the whole pane"),
            ModelOutput.Of("mean_edge_n_per_m", UnitKind.ForcePerLength, "N/m", "pull over the length of the edge"),
            ModelOutput.Of("peak_edge_n_per_m", UnitKind.ForcePerLength, "N/m", "in the middle of the long side, where the lip lets go first"),
            ModelOutput.Of("glass_stress_mpa", UnitKind.Pressure, "MPa", "largest bending stress if flat; working limits 50 toughened, 15 annealed or laminated (from memory)"),
            ModelOutput.Of("deflection_mm", UnitKind.Length, "mm", "of the centre if flat"),
        ],
        Source = "pressure difference; plate on four edges by Levy's series, checked against Roark table 11.4 case 1a; gust adds a speed",
        Validity = "even pressure, windows as the inside coefficient says",
        Uncertainty = "a third from pressures that were not measured; an open front window or a sharp roof edge can double it",
        Compute = values =>
        {
            Pane pane = PaneOf(values);
            GlassLoad load = GlassLoad.Of(pane, Across(values), PanelModels.Air(values, values["speed_kmh"]));
            Length thickness = Length.FromMillimetres(values["thickness_mm"]);
            return ModelAnswer.Of(
                ("pressure_pa", load.Pressure.Pascals), ("pull_n", load.Pull.Newtons),
                ("mean_edge_n_per_m", load.MeanEdge.NewtonsPerMetre), ("peak_edge_n_per_m", load.PeakEdge.NewtonsPerMetre),
                ("glass_stress_mpa", pane.Stress(load.Pressure, thickness).Megapascals), ("deflection_mm", pane.Deflection(load.Pressure, thickness).Millimetres))
                .Warning(Across(values) < PaneInNetwork.UnmeasuredFloor ? "a safety check reckons with at least 0.7 inside minus outside, unless a manometer has read less on this car" : null);
        },
    };

    private static PhysicsModel GlassHoldModel() => new()
    {
        Name = "glass-hold",
        Formula = "r = r_new x condition, log-normal",
        Title = "What the edge of a pane is believed to hold",
        What = "The hold of a pane's edge by how it is fixed, what a look found, the age of the rubber and a push.",
        Inputs = Hold,
        Outputs =
        [
            ModelOutput.Of("low_n_per_m", UnitKind.ForcePerLength, "N/m", "nineteen in twenty hold at least this"),
            ModelOutput.Of("middle_n_per_m", UnitKind.ForcePerLength, "N/m", "half hold more"),
            ModelOutput.Of("high_n_per_m", UnitKind.ForcePerLength, "N/m", "one in twenty holds more"),
        ],
        Source = "own derivation: lip as a cantilever, and survival of sound old cars; classes by judgement; no test of a car gasket was found",
        Validity = "outward pull, even edge; fatigue, frame twist and frost not in it",
        Uncertainty = "the weakest number in the program: new rubber 800 to 2500 N/m",
        Compute = values =>
        {
            GlassHold hold = HoldOf(values);
            return ModelAnswer.Of(
                ("low_n_per_m", hold.Low.NewtonsPerMetre), ("middle_n_per_m", hold.Middle.NewtonsPerMetre), ("high_n_per_m", hold.High.NewtonsPerMetre))
                .Warning(NoCertificate).Warning(hold.Basis);
        },
    };

    private static PhysicsModel GlassSpeed() => new()
    {
        Name = "glass-speed",
        Formula = "V = sqrt(2 r / (2 gamma b dCp f rho)) - w",
        Title = "Speed up to which a pane is believed to stay in",
        What = "The advised speed from the low end of the hold with a margin of two, what it would be with typical rubber, and how likely the pane is lost at a planned speed.",
        Inputs =
        [
            Speed, .. PaneSides, SafeAcross, .. Hold,
            ModelInput.Optional("original_top_speed_kmh", UnitKind.Speed, "km/h", (20, 400), (60, 250), "of the car as built; without it no cap is applied"),
            CommonInputs.Gust, CommonInputs.ColdDensity, CommonInputs.Passing,
        ],
        Outputs =
        [
            ModelOutput.Of("advised_kmh", UnitKind.Speed, "km/h", "low end of the hold, margin of two, rounded down to 5 km/h"),
            ModelOutput.Of("if_typical_kmh", UnitKind.Speed, "km/h", "middle of the hold, margin of two: shows what not knowing costs"),
            ModelOutput.Of("loss_percent", UnitKind.Ratio, "%", "belief that the pane is lost at the speed given: it ranks cars and fixes, it is no measured rate"),
            ModelOutput.Of("share_beyond_rubber_percent", UnitKind.Ratio, "%", "share of twice the load that the low end of the hold does not cover"),
        ],
        Source = "own derivation: edge load against hold, both log-normal; plate reaction by Roark table 11.4 case 1a",
        Validity = "windows shut; above the original top speed only after a look found the hold sound",
        Uncertainty = "speed by a factor of 1.8 between low and high end of the hold; chance within a factor of ten",
        Compute = values =>
        {
            double across = values["coefficient_across"];
            (Pane pane, GlassHold hold) = (PaneOf(values), HoldOf(values));
            LoadAir air = PanelModels.Air(values, values["speed_kmh"]);
            RoadSpeed? top = values.Find("original_top_speed_kmh") is { } kilometres ? RoadSpeed.FromKilometresPerHour(kilometres) : null;
            AdvisorySpeed advice = AdvisorySpeed.Of(pane, hold, across, air, top);
            LineLoad peak = GlassLoad.Of(pane, across, air).PeakEdge;
            return ModelAnswer.Of(
                ("advised_kmh", advice.Advised.KilometresPerHour), ("if_typical_kmh", advice.IfTypical.KilometresPerHour),
                ("loss_percent", 100 * LossProbability.At(peak, hold)),
                ("share_beyond_rubber_percent", 100 * Retention.ShareBeyondRubber(peak, hold)))
                .Warning(NoCertificate).Warning(hold.Basis)
                .Warning(advice.CappedByOriginalTopSpeed ? "held at the original top speed: nobody has found the hold sound" : null);
        },
    };

    private static PhysicsModel GlassRetention() => new()
    {
        Name = "glass-retention",
        Formula = "F = 2 R s",
        Title = "What clips or straps at a pane must carry",
        What = "The design load of one clip in the middle of a long side, the rubber counted as nothing, in an ordinary and an adverse case.",
        Inputs =
        [
            Speed, .. PaneSides, SafeAcross, Outside,
            ModelInput.WithDefault("spacing_m", UnitKind.Length, "m", (0.02, 2), (0.1, 0.8), Triangle.Certain(0.4), "between clips along the edge"),
            CommonInputs.Gust, CommonInputs.ColdDensity, CommonInputs.Passing,
        ],
        Outputs =
        [
            ModelOutput.Of("clip_load_n", UnitKind.Force, "N", "design load of one clip with a margin of two"),
            ModelOutput.Of("adverse_clip_load_n", UnitKind.Force, "N", "the same with a front window open and a lorry passing: design for this"),
        ],
        Source = "own derivation: peak edge load over the length that a clip serves",
        Validity = "clips at the middle of the long sides, soft pads, no hole in the glass; work for a glass worker",
        Uncertainty = "uneven fit; the margin of two is for that",
        Compute = values =>
        {
            (Pane pane, LoadAir air) = (PaneOf(values), PanelModels.Air(values, values["speed_kmh"]));
            Length spacing = Length.FromMetres(values["spacing_m"]);
            LoadAir lorry = air with { PassingFactor = Math.Max(air.PassingFactor, LoadAir.LorryFactor) };
            double adverse = Math.Max(values["coefficient_across"], PaneInNetwork.AdverseCabinCoefficient - values["outside_coefficient"]);
            return ModelAnswer.Of(
                ("clip_load_n", Retention.ForClip(GlassLoad.Of(pane, values["coefficient_across"], air).PeakEdge, spacing).Newtons),
                ("adverse_clip_load_n", Retention.ForClip(GlassLoad.Of(pane, adverse, lorry).PeakEdge, spacing).Newtons));
        },
    };

    private static PhysicsModel GlassProof() => new()
    {
        Name = "glass-proof",
        Formula = "p = 2 dCp rho f (V + w)^2 / 2; push = 2 R s",
        Title = "Parked proof of a pane's hold",
        What = "The cabin pressure or the push that stands for a planned speed, whether it can be shown at home, and the speed that a held pressure stands for.",
        Inputs =
        [
            Speed, .. PaneSides, SafeAcross,
            ModelInput.WithDefault("held_pressure_pa", UnitKind.Pressure, "Pa", (0, 2000), (0, 300), Triangle.Certain(250), "cabin pressure that was held without movement"),
            ModelInput.WithDefault("edge_that_takes_push_m", UnitKind.Length, "m", (0.05, 2), (0.1, 1), new(0.2, 0.4, 0.6), "length of edge that shares a push at a corner (judgement)"),
            CommonInputs.Gust, CommonInputs.ColdDensity, CommonInputs.Passing,
        ],
        Outputs =
        [
            ModelOutput.Of("pressure_needed_pa", UnitKind.Pressure, "Pa", "cabin pressure for the planned speed with a margin of two"),
            ModelOutput.Of("push_needed_n", UnitKind.Force, "N", "outward push at each upper corner for the planned speed with a margin of two; it proves less than the cabin pressure does"),
            ModelOutput.Of("speed_proven_kmh", UnitKind.Speed, "km/h", "speed that the held pressure stands for with a margin of two"),
        ],
        Source = "own derivation: the same pressure parked and driving",
        Validity = "nobody inside, eye protection, helper outside; never on a cracked pane; stop at the first movement, and never pull to failure",
        Uncertainty = "coefficients on the road; a push proves a corner, where the edge is strongest",
        Compute = values =>
        {
            double across = values["coefficient_across"];
            LoadAir air = PanelModels.Air(values, values["speed_kmh"]);
            double needed = HoldProof.PressureNeeded(across, air).Pascals;
            double push = HoldProof.PushNeeded(GlassLoad.Of(PaneOf(values), across, air).PeakEdge, Length.FromMetres(values["edge_that_takes_push_m"])).Newtons;
            return ModelAnswer.Of(
                ("pressure_needed_pa", needed), ("push_needed_n", push),
                ("speed_proven_kmh", HoldProof.SpeedProven(PressureDifference.FromPascals(values["held_pressure_pa"]), across, air).KilometresPerHour))
                .Warning(needed > HoldProof.HomeCeiling.Pascals ? "more than 300 Pa cannot be kept up in a car at home: this speed cannot be proven by cabin pressure" : null)
                .Warning(push > HoldProof.PushCeiling.Newtons ? "more than 250 N is not pushed against glass by hand: this speed cannot be proven by pushing" : null)
                .Warning("a proof shows that a load was held once, not the strength");
        },
    };

    private static PhysicsModel SealingModel() => new()
    {
        Name = "sealing-and-glass",
        Formula = "sum of flows = 0 in cabin and bay; F = (Cp cabin - Cp outside) rho (V + w)^2 / 2 x A",
        Title = "What sealing or a vent change does to the pull on the glass",
        What = "Cabin pressure and pull on a pane before and after seals, outlet or intake are changed: sealing raises the pull, an outlet lowers it.",
        Inputs =
        [
            Speed, .. PaneSides, Outside,
            Share("door_leak_left_percent", "door leaks after the change, as a share of before", new(20, 30, 60)),
            Share("tail_leak_left_percent", "tail leak after the change, as a share of before", Triangle.Certain(100)),
            Share("outlet_left_percent", "outlet area after the change, as a share of before; above 100 for a new or a freed outlet", Triangle.Certain(100)),
            Share("inlet_left_percent", "intake area after the change, as a share of before", Triangle.Certain(100)),
            CommonInputs.Gust, CommonInputs.ColdDensity, CommonInputs.Passing,
            .. VentInputs.Car,
        ],
        Outputs =
        [
            ModelOutput.Of("cabin_coefficient_before", UnitKind.Ratio, string.Empty, "pressure coefficient in the cabin before"),
            ModelOutput.Of("cabin_coefficient_after", UnitKind.Ratio, string.Empty, "pressure coefficient in the cabin after"),
            ModelOutput.Of("pull_before_n", UnitKind.Force, "N", "outward pull on the pane in the gust before"),
            ModelOutput.Of("pull_after_n", UnitKind.Force, "N", "outward pull on the pane in the gust after"),
            ModelOutput.Of("change_n", UnitKind.Force, "N", "after minus before"),
        ],
        Source = "vent network (Wetter 2006) coupled with the glass load (own derivation); coefficients from memory",
        Validity = "windows shut, quasi-steady",
        Uncertainty = "the change is surer than the level: both states share their draws",
        Compute = values =>
        {
            AirOnCar air = VentInputs.Air(values, values["speed_kmh"], values["air_density_kg_per_m3"]);
            VentNetwork before = VentInputs.Network(values);
            VentNetwork after = before.Scaled(values["door_leak_left_percent"] / 100, OldCarVents.DoorSeals)
                .Scaled(values["tail_leak_left_percent"] / 100, OldCarVents.TailSeal)
                .Scaled(values["outlet_left_percent"] / 100, OldCarVents.CabinOut)
                .Scaled(values["inlet_left_percent"] / 100, OldCarVents.CabinIn);
            PaneInNetwork pane = new(PaneOf(values), Compartment.Cabin, Length.FromMetres(1), Triangle.Certain(values["outside_coefficient"]));
            LoadAir gusty = PanelModels.Air(values, air.AirSpeed.KilometresPerHour);
            (double Inside, double Pull) State(VentNetwork network)
            {
                VentSolution solution = VentSolver.Solve(network, air);
                return (pane.CoefficientAcross(solution, 0), GlassLoad.Of(pane.Pane, pane.CoefficientAcross(solution, values["outside_coefficient"]), gusty).Pull.Newtons);
            }

            ((double insideBefore, double pullBefore), (double insideAfter, double pullAfter)) = (State(before), State(after));
            return ModelAnswer.Of(
                ("cabin_coefficient_before", insideBefore), ("cabin_coefficient_after", insideAfter),
                ("pull_before_n", pullBefore), ("pull_after_n", pullAfter), ("change_n", pullAfter - pullBefore))
                .Warning(pullAfter > pullBefore ? "the pull on the glass rises: look at the glass and open an outlet before sealing" : null);
        },
    };

    private static ModelInput Share(string name, string meaning, Triangle assumed) =>
        ModelInput.WithDefault(name, UnitKind.Ratio, "%", (0.1, 2000), (5, 500), assumed, meaning);

    private static Pane PaneOf(ModelValues values) => new(Length.FromMetres(values["width_m"]), Length.FromMetres(values["height_m"]));

    private static double Across(ModelValues values) => values.Find("coefficient_across") ?? (values["inside_coefficient"] - values["outside_coefficient"]);

    private static GlassHold HoldOf(ModelValues values) => GlassHold.Of(
        values.Word("glazing") switch
        {
            "rubber-with-strip" => Glazing.RubberWithStrip,
            "rubber-without-strip" => Glazing.RubberWithoutStrip,
            "bonded" => Glazing.Bonded,
            "bolted" => Glazing.Bolted,
            _ => Glazing.NotKnown,
        },
        values.Word("condition") switch
        {
            "supple" => RubberCondition.Supple,
            "aged" => RubberCondition.Aged,
            "hard" => RubberCondition.Hard,
            "perished" => RubberCondition.Perished,
            _ => RubberCondition.NotKnown,
        },
        values.Find("rubber_age_years"),
        values.Word("push") switch
        {
            "firm" => PushTest.Firm,
            "creaks" => PushTest.Creaks,
            "moves" => PushTest.Moves,
            _ => PushTest.NotDone,
        });
}
