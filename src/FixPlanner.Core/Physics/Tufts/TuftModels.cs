using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Tufts;

/// <summary>The models of tufts as the catalogue lists them.</summary>
public static class TuftModels
{
    private static readonly string[] Threads = [.. TuftMaterial.All.Select(material => material.Id)];

    private static ModelInput Thread { get; } = ModelInput.Choice("thread", Threads, "the thread");

    /// <summary>Every model of this folder.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } = [Lift(), Layout(), Share()];

    private static PhysicsModel Lift() => new()
    {
        Name = "tuft-lift",
        Title = "When a hanging tuft can be read",
        What = "How far the wind lifts a tuft on an upright panel, and the speeds below which 'hangs' tells nothing.",
        Inputs =
        [
            Thread,
            ModelInput.Required("local_speed_kmh", UnitKind.Speed, "km/h", (0, 200), (5, 150), "air at the tuft; a fifth to a third of the road speed where the flow has left the skin"),
            CommonInputs.Density,
        ],
        Outputs =
        [
            ModelOutput.Of("lift_deg", UnitKind.Angle, "deg", "from hanging straight down; from 75 it may be read"),
            ModelOutput.Of("slowest_readable_kmh", UnitKind.Speed, "km/h", "slowest air at the tuft"),
            ModelOutput.Of("slowest_test_kmh", UnitKind.Speed, "km/h", "slowest road speed at which 'hangs' means dead air"),
        ],
        Source = "own derivation from the cross-flow principle; local speed of separated zones from memory",
        Validity = "thread without stiffness, at least 20 diameters long; no static on glass",
        Uncertainty = "10 % in the lift; 20 % in the slowest test speed",
        Compute = values =>
        {
            TuftMaterial material = Material(values);
            AirDensity density = AirDensity.FromKilogramsPerCubicMetre(values["air_density_kg_per_m3"]);
            return ModelAnswer.Of(
                ("lift_deg", HangingTuft.Lift(material, AirSpeed.FromKilometresPerHour(values["local_speed_kmh"]), density).Degrees),
                ("slowest_readable_kmh", HangingTuft.SlowestReadable(material, density).KilometresPerHour),
                ("slowest_test_kmh", HangingTuft.SlowestTest(material, density).KilometresPerHour));
        },
    };

    private static PhysicsModel Layout() => new()
    {
        Name = "tuft-layout",
        Title = "Length, spacing and number of tufts, and how to film them",
        What = "How to lay tufts out on a panel so that they show a feature and never touch, and how long to film.",
        Inputs =
        [
            Thread,
            ModelInput.Required("along_flow_m", UnitKind.Length, "m", (0.05, 5), (0.1, 4), "panel along the flow"),
            ModelInput.Required("across_flow_m", UnitKind.Length, "m", (0.05, 3), (0.1, 2), "panel across the flow"),
            ModelInput.WithDefault("feature_m", UnitKind.Length, "m", (0.03, 2), (0.05, 1), Triangle.Certain(0.15), "smallest thing to be seen: a bubble, an edge"),
            ModelInput.WithDefault("speed_kmh", UnitKind.Speed, "km/h", (11, 162), (30, 130), Triangle.Certain(90), "speed of the run"),
            ModelInput.WithDefault("car_height_m", UnitKind.Length, "m", (0.5, 3), (1, 2.7), Triangle.Certain(1.4), "height of the car"),
        ],
        Outputs =
        [
            ModelOutput.Of("tuft_length_mm", UnitKind.Length, "mm", "free length"),
            ModelOutput.Of("spacing_mm", UnitKind.Length, "mm", "from tape to tape"),
            ModelOutput.Of("tufts", UnitKind.Count, string.Empty, "how many"),
            ModelOutput.Of("film_s", UnitKind.Duration, "s", "film for a hundred independent frames"),
            ModelOutput.Of("shutter_ms", UnitKind.Duration, "ms", "longest shutter time that freezes a tuft"),
        ],
        Source = "common practice, from memory",
        Validity = "panels of a car; shorter tufts at edges",
        Uncertainty = "practice, not physics",
        Compute = values =>
        {
            TuftLayout layout = TuftLayout.Of(
                Material(values), Length.FromMetres(values["along_flow_m"]), Length.FromMetres(values["across_flow_m"]), Length.FromMetres(values["feature_m"]));
            TuftFilm film = TuftFilm.Of(Length.FromMetres(values["car_height_m"]), AirSpeed.FromKilometresPerHour(values["speed_kmh"]), layout.TuftLength);
            return ModelAnswer.Of(
                ("tuft_length_mm", layout.TuftLength.Millimetres),
                ("spacing_mm", layout.Spacing.Millimetres),
                ("tufts", layout.Count),
                ("film_s", film.LeastTime.Seconds),
                ("shutter_ms", 1000 * film.Shutter.Seconds));
        },
    };

    private static PhysicsModel Share() => new()
    {
        Name = "reversed-share",
        Title = "Share of frames in which a tuft points back",
        What = "The share with its 95 % interval, and what that says about the flow there.",
        Inputs =
        [
            ModelInput.Required("reversed", UnitKind.Count, string.Empty, (0, 100000), (0, 1000), "frames in which it points against the stream"),
            ModelInput.Required("frames", UnitKind.Count, string.Empty, (1, 100000), (20, 2000), "independent frames looked at"),
        ],
        Outputs =
        [
            ModelOutput.Of("reversed_percent", UnitKind.Ratio, "%", "the share"),
            ModelOutput.Of("lowest_percent", UnitKind.Ratio, "%", "lower end of the interval"),
            ModelOutput.Of("highest_percent", UnitKind.Ratio, "%", "upper end of the interval"),
            ModelOutput.Word("state", "attached, intermittent, separated, reversed"),
        ],
        Source = "score interval of 1927 and definitions of detachment of 1989, both from memory",
        Validity = "frames at least the time apart that the air takes to pass the height of the car",
        Uncertainty = "the interval",
        Compute = values =>
        {
            int frames = (int)Math.Round(values["frames"]);
            int reversed = (int)Math.Round(values["reversed"]);
            if (reversed > frames)
            {
                return ModelAnswer.ThatIsImpossible("more frames are reversed than were looked at");
            }

            ReversedShare share = ReversedShare.OfCounts(reversed, frames);
            return ModelAnswer.Of(
                ("reversed_percent", 100 * share.Share),
                ("lowest_percent", 100 * share.Low),
                ("highest_percent", 100 * share.High))
                .Saying("state", share.Share switch
                {
                    > 0.8 => "reversed",
                    >= 0.5 => "separated",
                    >= 0.01 => "intermittent",
                    _ => "attached",
                })
                .Warning(frames < TuftStates.LeastFrames ? "fewer than 20 frames: no state should be told from them" : null);
        },
    };

    private static TuftMaterial Material(ModelValues values) => TuftMaterial.All[Array.IndexOf(Threads, values.Word("thread"))];
}
