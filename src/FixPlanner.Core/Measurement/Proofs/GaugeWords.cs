using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>What a gauge says by itself, without a before and after: the pull on a pane, the way a vent blows, the pressure at the base of the screen.</summary>
public static class GaugeWords
{
    /// <summary>Outside the base of the windscreen.</summary>
    public const string ScreenBase = "screen base";

    /// <summary>Outside less inside of a vent.</summary>
    public const string Vent = "vent";

    /// <summary>Inside less outside of the rear glass.</summary>
    public const string Glass = "rear glass";

    private static readonly PressureDifference OneMillimetre = PressureGauge.FromWater(1);

    /// <summary>The words.</summary>
    /// <param name="reading">A reading of pressures.</param>
    /// <param name="s">What is known of the car.</param>
    /// <returns>Sentences; none for other kinds and while there are too few values.</returns>
    public static IReadOnlyList<string> Of(Reading reading, Situation s)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(s);
        if (reading.Kind != ReadingKinds.Pressure)
        {
            return [];
        }

        return [.. ProofResult.Typed(reading, ProofKind.PressureCoefficient)
            .GroupBy(value => value.After).OrderBy(side => side.Key)
            .SelectMany(side => Said([.. side], reading.Place, s).Select((line, i) => i > 0 || side.Key is not { } after ? line : $"{(after ? "With the change" : "Without the change")}: {char.ToLowerInvariant(line[0])}{line[1..]}"))
            .Distinct()];
    }

    // Values of one state of the car.
    private static List<string> Said(IEnumerable<ProofValue> typed, string? place, Situation s)
    {
        PressureReading[] values = [.. typed
            .Select(value => new PressureReading(AirSpeed.FromMetresPerSecond(value.With!.Value.BaseValue), PressureDifference.FromPascals(value.Value.BaseValue)))
            .Where(value => value.Speed.MetresPerSecond > 0)];
        return values.Length == 0 ? [] : place switch
        {
            Glass => Pull(values, s),
            Vent => [Way(values)],
            _ => [Coefficient(values)],
        };
    }

    private static List<string> Pull(PressureReading[] values, Situation s)
    {
        double? planned = s.Number("top_speed_planned_kmh") ?? s.Number("planned_speed_kmh") ?? s.Number("top_speed_now_kmh");
        if (values.Length < 2 || planned is not { } speed)
        {
            return [values.Length < 2 ? "One more speed is needed." : "The highest planned speed of the car is not known, so the load cannot be carried up to it."];
        }

        (double area, string basis) = Pane(s);
        GlassPull pull = GlassPull.Of(values, OneMillimetre, Area.FromSquareMetres(area), RoadSpeed.FromKilometresPerHour(speed));
        List<string> said =
        [
            $"Pull on {area:0.00} m2 of glass ({basis}) at {pull.TargetSpeed.KilometresPerHour:0} km/h, that is {speed:0} km/h and a gust: {VerdictWords.Number(pull.Load.Estimate)} N (95 %: {VerdictWords.Number(pull.Load.Low)} to {VerdictWords.Number(pull.Load.High)} N), outward positive.",
            "It says nothing of what the rubber holds; glass that may come out is for a glass technician. Stop at any visible movement of the lip.",
        ];
        if (pull.Warning.Length > 0)
        {
            said.Add($"MIND: {pull.Warning}.");
        }

        return said;
    }

    private static (double SquareMetres, string Basis) Pane(Situation s)
    {
        if (s.Number("rear_glass_area_m2") is { } known)
        {
            return (known, "measured");
        }

        BodyTemplate[] templates = [.. s.Pack.BodyTemplates.Where(t => t.Ranges.ContainsKey("rear_glass_width_m") && t.Ranges.ContainsKey("rear_glass_height_m"))];
        BodyTemplate? own = templates.FirstOrDefault(t => t.BodyStyle == s.Fact("body_style")?.Word) ?? templates.FirstOrDefault();
        return own is null ? (0.5, "assumed") : (own.Ranges["rear_glass_width_m"].Mean * own.Ranges["rear_glass_height_m"].Mean, "usual for this shape");
    }

    private static string Way(PressureReading[] values)
    {
        VentDirection way = VentDirection.Of(values, OneMillimetre);
        return way.Answer switch
        {
            VentAnswer.AlwaysIn => "Takes air in at every speed at which the gauge can tell.",
            VentAnswer.AlwaysOut => "Lets air out at every speed at which the gauge can tell.",
            VentAnswer.Turns => $"Turns between {way.TurnsAbove!.Value.KilometresPerHour:0} and {way.TurnsBelow!.Value.KilometresPerHour:0} km/h.",
            _ => "The gauge cannot tell at any of these speeds: read faster, within the law, or with a finer gauge.",
        };
    }

    private static string Coefficient(PressureReading[] values)
    {
        double mean = values.Average(value => value.Difference.Pascals / (0.5 * ProofSetting.UsualAir.KilogramsPerCubicMetre * value.Speed.MetresPerSecond * value.Speed.MetresPerSecond));
        return $"Pressure coefficient {mean:+0.00;-0.00;0.00}, read to {values.Max(value => PressureGauge.CoefficientStep(OneMillimetre, value.Speed, ProofSetting.UsualAir)):0.00} with a millimetre of water.";
    }
}
