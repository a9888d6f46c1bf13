using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Separation;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>The models of noise and buffeting as the catalogue lists them.</summary>
public static class NoiseModels
{
    private static readonly string[] Sections = ["round", "square", "flat-across", "angle", "strip-along"];

    private static ModelInput Speed { get; } = ModelInput.Required(
        "speed_kmh", UnitKind.Speed, "km/h", (1, 400), (20, 250), "air at the part; above a roof up to a third faster than the road speed");

    private static ModelInput Sound { get; } = ModelInput.WithDefault(
        "speed_of_sound_ms", UnitKind.Speed, "m/s", (300, 380), (310, 360), Triangle.Certain(340), "speed of sound on the day, from the model air-density");

    private static ModelInput HeardAt { get; } = ModelInput.Optional(
        "heard_at_kmh", UnitKind.Speed, "km/h", (1, 400), (20, 250), "speed at which you hear it; without it nothing is compared");

    /// <summary>Every model of this folder.</summary>
    public static IReadOnlyList<PhysicsModel> All { get; } =
        [BarPitch(), GutterBand(), WindowBoom(), GapPitch(), PanePitch(), PaneAndGutter(), Louder(), Leak(), Sum()];

    private static PhysicsModel BarPitch() => new()
    {
        Name = "bar-pitch",
        Title = "Hum of a bar, tube or aerial",
        What = "The pitch at which a bar in the wind sheds swirls, and whether it can: close to the skin it does not.",
        Inputs =
        [
            Speed,
            ModelInput.Choice("section", Sections, "cut through the bar"),
            ModelInput.Required("width_mm", UnitKind.Length, "mm", (1, 500), (2, 100), "size across the flow"),
            ModelInput.Optional("gap_to_skin_mm", UnitKind.Length, "mm", (0, 1000), (0, 500), "clear height under the bar; left out means that it stands free"),
        ],
        Outputs =
        [
            ModelOutput.Of("pitch_hz", UnitKind.Frequency, "Hz", "likely pitch; none when nothing is shed"),
            ModelOutput.Of("lowest_pitch_hz", UnitKind.Frequency, "Hz", "lower end of the shedding number"),
            ModelOutput.Of("highest_pitch_hz", UnitKind.Frequency, "Hz", "upper end of the shedding number"),
            ModelOutput.Word("kind", "tone, unsteady, or none"),
        ],
        Source = "chassis text eq. 5.27 (read); 1996 study of a square bar near a wall (abstract); flat and angle sections from memory",
        Validity = "long bar, air square to it; round bars for U d / nu from 300 to 200,000",
        Uncertainty = "5 to 12 % in the shedding number; the speed of the air at the bar matters more",
        Compute = values =>
        {
            Length? gap = values.Find("gap_to_skin_mm") is { } mm ? Length.FromMillimetres(mm) : null;
            Shedding shed = BarShedding.Of((BarSection)Array.IndexOf(Sections, values.Word("section")), Length.FromMillimetres(values["width_mm"]), Air(values), gap);
            double OrNone(Frequency pitch) => shed.Kind == SheddingKind.None ? double.NaN : pitch.Hertz;
            return ModelAnswer.Of(
                ("pitch_hz", OrNone(shed.Likely)),
                ("lowest_pitch_hz", OrNone(shed.Low)),
                ("highest_pitch_hz", OrNone(shed.High)))
                .Saying("kind", Word(shed.Kind))
                .Warning(shed.Kind == SheddingKind.None ? "so close to the skin it sheds nothing of its own; see gutter-band" : null);
        },
    };

    private static PhysicsModel GutterBand() => new()
    {
        Name = "gutter-band",
        Formula = "f = 0.6 U / x_R, x_R = 9 to 13 h",
        Title = "Roar behind a gutter joined to the skin",
        What = "The band of pitches that rolls off the bubble behind a gutter, drip rail or trim strip. Never one tone.",
        Inputs = [Speed, ModelInput.Required("height_mm", UnitKind.Length, "mm", (1, 300), (3, 60), "how far it stands proud")],
        Outputs =
        [
            ModelOutput.Of("pitch_hz", UnitKind.Frequency, "Hz", "middle of the band"),
            ModelOutput.Of("lowest_pitch_hz", UnitKind.Frequency, "Hz", "air lands after 13 heights"),
            ModelOutput.Of("highest_pitch_hz", UnitKind.Frequency, "Hz", "air lands after 9 heights"),
            ModelOutput.Of("breathing_hz", UnitKind.Frequency, "Hz", "slow swelling of the whole bubble"),
            ModelOutput.Of("landing_mm", UnitKind.Length, "mm", "how far behind it the air lands"),
            ModelOutput.Word("kind", "always: broad band"),
        ],
        Source = "1983 study of the bubble on a blunt plate (abstract), carried over to a fence from memory; landing 9 to 13 heights from memory",
        Validity = "joined to the skin along its length; layer in front of it thinner than a few heights",
        Uncertainty = "20 %: the place of landing",
        Compute = values =>
        {
            Length height = Length.FromMillimetres(values["height_mm"]);
            Shedding band = SeamedFence.Rolling(height, Air(values));
            return ModelAnswer.Of(
                ("pitch_hz", band.Likely.Hertz),
                ("lowest_pitch_hz", band.Low.Hertz),
                ("highest_pitch_hz", band.High.Hertz),
                ("breathing_hz", SeamedFence.Breathing(height, Air(values)).Likely.Hertz),
                ("landing_mm", Bubble.FenceHeights.Likely * values["height_mm"]))
                .Saying("kind", Word(band.Kind));
        },
    };

    private static PhysicsModel WindowBoom() => new()
    {
        Name = "window-boom",
        Formula = "f = (c / 2 pi) sqrt(A / (V L)); St U / L = f",
        Title = "Boom of the cabin through an opened window",
        What = "The pitch of the cabin with one window open and the bands of speed in which the air across the opening drives it.",
        Inputs =
        [
            ModelInput.Required("opening_length_mm", UnitKind.Length, "mm", (1, 1500), (100, 900), "opening along the flow"),
            ModelInput.Required("opening_area_m2", UnitKind.Area, "m2", (0.000001, 0.6), (0.01, 0.4), "open area"),
            ModelInput.WithDefault("cabin_volume_m3", UnitKind.Volume, "m3", (0.1, 15), (1, 8), new(2.2, 2.8, 3.5), "air in the cabin; a small saloon has 2 to 3.5 m3, from memory"),
            Sound,
            HeardAt,
        ],
        Outputs =
        [
            ModelOutput.Of("cabin_pitch_hz", UnitKind.Frequency, "Hz", "pitch of the cabin, its panels giving"),
            ModelOutput.Of("boom_from_kmh", UnitKind.Speed, "km/h", "lower end of the strongest band"),
            ModelOutput.Of("boom_kmh", UnitKind.Speed, "km/h", "middle of the strongest band"),
            ModelOutput.Of("boom_to_kmh", UnitKind.Speed, "km/h", "upper end of the strongest band"),
            ModelOutput.Of("second_mode_kmh", UnitKind.Speed, "km/h", "middle of the weaker band at lower speed"),
            ModelOutput.Word("heard", "inside, near, outside: the speed at which you hear it against the two bands; not compared when none was given"),
        ],
        Source = "acoustics notes eq. 8 (read); cavity modes of 1964 with the later heat term (constants read in open codes); give of the panels from memory",
        Validity = "one window open; frequency and speed, not loudness; a second window a tenth open already helps",
        Uncertainty = "15 % about a mode; volume and area 10 %; give of the panels 5 to 20 %",
        Compute = values =>
        {
            AirSpeed sound = AirSpeed.FromMetresPerSecond(values["speed_of_sound_ms"]);
            Resonance cabin = Resonance.OfCabin(Area.FromSquareMetres(values["opening_area_m2"]), Volume.FromCubicMetres(values["cabin_volume_m3"]), sound);
            IReadOnlyList<SpeedBand> bands = SpeedBands.OfOpening(Length.FromMillimetres(values["opening_length_mm"]), cabin, sound);
            SpeedBand? first = bands.Count > 0 ? bands[0] : null;
            return ModelAnswer.Of(
                ("cabin_pitch_hz", cabin.Likely.Hertz),
                ("boom_from_kmh", first?.Low.KilometresPerHour ?? double.NaN),
                ("boom_kmh", first?.Likely.KilometresPerHour ?? double.NaN),
                ("boom_to_kmh", first?.High.KilometresPerHour ?? double.NaN),
                ("second_mode_kmh", bands.Count > 1 ? bands[1].Likely.KilometresPerHour : double.NaN))
                .Saying("heard", Heard(values, bands));
        },
    };

    private static PhysicsModel GapPitch() => new()
    {
        Name = "gap-whistle",
        Title = "Whistle of a gap or pocket",
        What = "The pitch of a gap between panels: the swing of the air across it, and the pocket behind it. A whistle needs both to meet.",
        Inputs =
        [
            Speed,
            ModelInput.Required("gap_mm", UnitKind.Length, "mm", (1, 100), (2, 30), "width of the gap along the flow"),
            ModelInput.Required("pocket_depth_mm", UnitKind.Length, "mm", (1, 500), (5, 200), "depth of the pocket behind it"),
            Sound,
        ],
        Outputs =
        [
            ModelOutput.Of("first_mode_hz", UnitKind.Frequency, "Hz", "one swirl across the gap"),
            ModelOutput.Of("pocket_hz", UnitKind.Frequency, "Hz", "the pocket's own pitch"),
            ModelOutput.Of("meeting_kmh", UnitKind.Speed, "km/h", "speed at which the first mode meets the pocket"),
        ],
        Source = "cavity modes of 1964 (constants read in open codes); pocket as an open-closed pipe from memory",
        Validity = "sharp edges, smooth oncoming air; pocket closed at its bottom",
        Uncertainty = "first mode 10 to 20 %, pocket 10 %",
        Compute = values =>
        {
            AirSpeed sound = AirSpeed.FromMetresPerSecond(values["speed_of_sound_ms"]);
            Length gap = Length.FromMillimetres(values["gap_mm"]);
            Frequency pocket = GapTone.Pocket(Length.FromMillimetres(values["pocket_depth_mm"]), gap, sound);
            return ModelAnswer.Of(
                ("first_mode_hz", CavityModes.Pitch(1, gap, Air(values), sound).Hertz),
                ("pocket_hz", pocket.Hertz),
                ("meeting_kmh", CavityModes.SpeedFor(1, gap, pocket, sound)?.KilometresPerHour ?? double.NaN));
        },
    };

    private static PhysicsModel PanePitch() => new()
    {
        Name = "pane-pitch",
        Title = "Shake of a pane",
        What = "The pitch at which a pane of glass in rubber shakes by itself.",
        Inputs = PaneInputs(),
        Outputs = [ModelOutput.Of("pitch_hz", UnitKind.Frequency, "Hz", "first pitch, edges hinged in rubber")],
        Source = "plate tables of 1973, from memory; rubber adds 0 to 20 %, from memory",
        Validity = "flat rectangle held all round; a curved pane is stiffer, a wind-down pane softer",
        Uncertainty = "10 % for the rubber; curvature can double it",
        Compute = values => ModelAnswer.Of(("pitch_hz", Pane(values).Likely.Hertz)),
    };

    private static PhysicsModel PaneAndGutter() => new()
    {
        Name = "pane-and-gutter",
        Formula = "U = f x_R / 0.6, f the first pitch of the pane",
        Title = "Speeds at which a gutter shakes a pane",
        What = "The band of speeds in which the swirls behind a gutter joined to the skin have the pitch of a pane. A shake in a band, never a tone.",
        Inputs = [ModelInput.Required("gutter_height_mm", UnitKind.Length, "mm", (1, 300), (3, 60), "how far the gutter stands proud"), .. PaneInputs(), HeardAt],
        Outputs =
        [
            ModelOutput.Of("pane_pitch_hz", UnitKind.Frequency, "Hz", "pitch of the pane"),
            ModelOutput.Of("shake_from_kmh", UnitKind.Speed, "km/h", "lower end of the band"),
            ModelOutput.Of("shake_kmh", UnitKind.Speed, "km/h", "middle of the band"),
            ModelOutput.Of("shake_to_kmh", UnitKind.Speed, "km/h", "upper end of the band"),
            ModelOutput.Word("heard", "inside, near, outside; not compared when no speed was given"),
        ],
        Source = "as gutter-band and pane-pitch",
        Validity = "as gutter-band and pane-pitch",
        Uncertainty = "25 %: place of landing and pitch of the pane",
        Compute = values =>
        {
            Resonance pane = Pane(values);
            SpeedBand band = SpeedBands.OfGutter("gutter", Length.FromMillimetres(values["gutter_height_mm"]), pane);
            return ModelAnswer.Of(
                ("pane_pitch_hz", pane.Likely.Hertz),
                ("shake_from_kmh", band.Low.KilometresPerHour),
                ("shake_kmh", band.Likely.KilometresPerHour),
                ("shake_to_kmh", band.High.KilometresPerHour))
                .Saying("heard", Heard(values, [band]));
        },
    };

    private static PhysicsModel Louder() => new()
    {
        Name = "level-by-speed",
        Title = "How much louder at another speed",
        What = "The change of wind noise inside from one speed to another.",
        Inputs =
        [
            ModelInput.Required("from_kmh", UnitKind.Speed, "km/h", (1, 400), (30, 250), "first speed"),
            ModelInput.Required("to_kmh", UnitKind.Speed, "km/h", (1, 400), (30, 250), "second speed"),
            ModelInput.WithDefault("per_tenfold_db", UnitKind.SoundLevel, "dB", (20, 80), (40, 60), LevelBySpeed.InCabin, "decibels for each tenfold of the speed: 53 inside, 60 for swirls on a surface, 40 for a leak"),
        ],
        Outputs = [ModelOutput.Of("change_dba", UnitKind.SoundLevel, "dB(A)", "plus is louder")],
        Source = "NVH notes sect. 9.1.1 (read); lower end from memory",
        Validity = "one kind of source that stays the same; not across the speed at which a seal lifts",
        Uncertainty = "about 1 dB from 100 to 130 km/h",
        Compute = values => ModelAnswer.Of(("change_dba",
            LevelBySpeed.Change(AirSpeed.FromKilometresPerHour(values["from_kmh"]), AirSpeed.FromKilometresPerHour(values["to_kmh"]), values["per_tenfold_db"]).Decibels)),
    };

    private static PhysicsModel Leak() => new()
    {
        Name = "seal-leak",
        Title = "Sound through a slit in a seal",
        What = "How much less sound a door or pane keeps out when its seal has a slit.",
        Inputs =
        [
            ModelInput.Required("slit_length_m", UnitKind.Length, "m", (0, 6), (0.05, 4), "length of the slit"),
            ModelInput.Required("slit_width_mm", UnitKind.Length, "mm", (0, 20), (0.2, 8), "width of the slit"),
            ModelInput.WithDefault("door_area_m2", UnitKind.Area, "m2", (0.2, 5), (0.3, 3), Triangle.Certain(0.8), "face of the door or pane"),
            ModelInput.WithDefault("door_loss_db", UnitKind.SoundLevel, "dB", (0, 60), (15, 45), new(25, 30, 35), "what it keeps out without the slit; from memory"),
            ModelInput.WithDefault("slit_share", UnitKind.Ratio, string.Empty, (0, 1), (0.2, 1), new(0.3, 0.7, 1), "share of the sound that the slit lets through; 1 is cautious"),
        ],
        Outputs =
        [
            ModelOutput.Of("loss_db", UnitKind.SoundLevel, "dB", "what is kept out with the slit"),
            ModelOutput.Of("change_db", UnitKind.SoundLevel, "dB", "against the same door without a slit; minus lets more in"),
        ],
        Source = "composite transmission loss, from memory",
        Validity = "above the first resonance of the slit; the slit no larger than the door",
        Uncertainty = "2 to 3 dB",
        Compute = values =>
        {
            double slitM2 = values["slit_length_m"] * values["slit_width_mm"] / 1000;
            double loss = SealLeak.Loss(
                Area.FromSquareMetres(values["door_area_m2"]), SoundLevelChange.FromDecibels(values["door_loss_db"]), Area.FromSquareMetres(slitM2), values["slit_share"]).Decibels;
            return ModelAnswer.Of(("loss_db", loss), ("change_db", loss - values["door_loss_db"]));
        },
    };

    private static PhysicsModel Sum() => new()
    {
        Name = "sound-sum",
        Title = "Two sounds together, and one without the other",
        What = "Sounds add as energy. Also what is left when the second falls silent, which is the most that curing it can win.",
        Inputs =
        [
            ModelInput.Required("first_dba", UnitKind.SoundLevel, "dB(A)", (-20, 140), (30, 110), "level of the first, or of the rest"),
            ModelInput.Required("second_dba", UnitKind.SoundLevel, "dB(A)", (-20, 140), (30, 110), "level of the second"),
        ],
        Outputs =
        [
            ModelOutput.Of("together_dba", UnitKind.SoundLevel, "dB(A)", "both"),
            ModelOutput.Of("won_by_silencing_second_db", UnitKind.SoundLevel, "dB", "together minus the first alone"),
        ],
        Source = "definition of the sound level",
        Validity = "sources that do not swing in step; true of wind noise",
        Uncertainty = "none of its own",
        Compute = values =>
        {
            double together = SoundSum.Of([SoundLevel.FromDecibels(values["first_dba"]), SoundLevel.FromDecibels(values["second_dba"])]).Decibels;
            return ModelAnswer.Of(("together_dba", together), ("won_by_silencing_second_db", together - values["first_dba"]));
        },
    };

    private static ModelInput[] PaneInputs() =>
    [
        ModelInput.Required("long_side_m", UnitKind.Length, "m", (0.05, 2.5), (0.2, 1.6), "long side of the pane"),
        ModelInput.Required("short_side_m", UnitKind.Length, "m", (0.05, 2.5), (0.15, 0.9), "short side of the pane"),
        ModelInput.WithDefault("thickness_mm", UnitKind.Length, "mm", (2, 12), (3, 8), new(3, 4, 5), "thickness of the glass; 3 to 5 mm on old cars, from memory"),
    ];

    private static Resonance Pane(ModelValues values)
    {
        // The sides may be given in either order.
        double one = values["long_side_m"];
        double other = values["short_side_m"];
        return Resonance.OfPane("pane", Length.FromMetres(Math.Max(one, other)), Length.FromMetres(Math.Min(one, other)), Length.FromMillimetres(values["thickness_mm"]));
    }

    private static AirSpeed Air(ModelValues values) => AirSpeed.FromKilometresPerHour(values["speed_kmh"]);

    private static string Word(SheddingKind kind) => kind switch
    {
        SheddingKind.Tone => "tone",
        SheddingKind.Unsteady => "unsteady",
        SheddingKind.BroadBand => "broad band",
        _ => "none",
    };

    private static string Heard(ModelValues values, IReadOnlyList<SpeedBand> bands)
    {
        if (values.Find("heard_at_kmh") is not { } kmh || bands.Count == 0)
        {
            return "not compared";
        }

        return bands.Min(band => band.Fit(AirSpeed.FromKilometresPerHour(kmh))) switch
        {
            HeardFit.Inside => "inside",
            HeardFit.Near => "near",
            _ => "outside",
        };
    }
}
