using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Logbooks.Estimates;

/// <summary>
/// The car as the physics models take it: every value with low, likely, high, and where it comes from. What the owner did not
/// say comes from the body template or from memory with a wide range, and is named, so that measuring it narrows the answer.
/// </summary>
/// <uncertainty>Template ranges are from memory; a range here is an input, not a computed range.</uncertainty>
public sealed class CarInputs
{
    private readonly Situation situation;
    private readonly BodyTemplate[] templates;

    private CarInputs(Situation s)
    {
        situation = s;
        string? style = s.Fact("body_style")?.Word;
        BodyTemplate[] own = [.. s.Pack.BodyTemplates.Where(t => t.BodyStyle == style)];
        templates = own.Length > 0 ? own : [.. s.Pack.BodyTemplates];
        BodyStyle = style;
        CarEstimate car = CarEstimate.Of(s);
        bool areaKnown = !car.Filled.Any(f => f is "width_m" or "height_m" or "frontal_area_factor");
        FrontalArea = new(car.FrontalAreaSquareMetres, areaKnown ? "measured" : "from width, height and the usual factor of this body shape", areaKnown);
        DragArea = new(Between(car.DragAreaSquareMetres), "frontal area times the usual drag coefficient of this body shape; a coast-down would measure it", !car.Filled.Contains("drag_coefficient"));
        Mass = new(car.MassKilograms, car.Filled.Contains("mass_kg") ? "usual for this body shape" : "you said", !car.Filled.Contains("mass_kg"));
        Wheelbase = FromTemplate("wheelbase_m", new(2.0, 2.4, 2.8));
        FrontLift = FromTemplate("front_lift_coefficient", new(0, 0.12, 0.35));
        RearLift = FromTemplate("rear_lift_coefficient", new(0.05, 0.20, 0.35));
        FrontShare = s.Fact("engine_place")?.Word switch
        {
            "front" => new(new(0.50, 0.56, 0.62), "engine in front; share of the front axle from memory", false),
            "rear" => new(new(0.37, 0.41, 0.46), "engine in the tail; share of the front axle from memory", false),
            "mid" => new(new(0.42, 0.46, 0.50), "engine amidships; share of the front axle from memory", false),
            _ => new(new(0.37, 0.53, 0.62), "nobody said where the engine sits", false),
        };
        Vents = CarVents.Of(s);
        Glass = CarGlass.Of(s, Template);
    }

    /// <summary>Body shape as the owner said, or null.</summary>
    public string? BodyStyle { get; }

    /// <summary>Frontal area, m2.</summary>
    public GivenInput FrontalArea { get; }

    /// <summary>Drag area, m2.</summary>
    public GivenInput DragArea { get; }

    /// <summary>Mass as driven, kg.</summary>
    public GivenInput Mass { get; }

    /// <summary>Wheelbase, m.</summary>
    public GivenInput Wheelbase { get; }

    /// <summary>Front lift coefficient.</summary>
    public GivenInput FrontLift { get; }

    /// <summary>Rear lift coefficient.</summary>
    public GivenInput RearLift { get; }

    /// <summary>Share of the weight on the front axle.</summary>
    public GivenInput FrontShare { get; }

    /// <summary>Air in and out of cabin and bay.</summary>
    public CarVents Vents { get; }

    /// <summary>The rear glass and what holds it.</summary>
    public CarGlass Glass { get; }

    /// <summary>True for air cooling, false for water; null when nobody said.</summary>
    public bool? AirCooled => situation.Fact("engine_cooling")?.Word switch { "air" => true, "water" => false, _ => null };

    /// <summary>Fastest speed of the car today, km/h: top speed now, else the fastest of the last month; null when nobody said.</summary>
    public double? NowKmh => situation.Number("top_speed_now_kmh") ?? situation.Number("recent_max_speed_kmh");

    /// <summary>Fastest speed that is planned, km/h; null when nobody said.</summary>
    public double? PlannedKmh => Largest(situation.Number("top_speed_planned_kmh"), situation.Number("planned_speed_kmh"));

    /// <summary>Top speed as built, km/h; null when nobody said.</summary>
    public double? AsBuiltKmh => situation.Number("top_speed_as_built_kmh");

    /// <summary>Speeds for which loads are told: now and planned, rising, without repeats; 100 and 130 km/h when nobody said any.</summary>
    public IReadOnlyList<double> SpeedsKmh
    {
        get
        {
            double[] said = [.. new[] { NowKmh, PlannedKmh }.OfType<double>().Distinct().Order()];
            return said.Length > 0 ? said : [100, 130];
        }
    }

    /// <summary>Speed at which top gear and the highest turning speed of the engine end, km/h; null while one of the two is not known.</summary>
    public GivenInput? GearedTopKmh => situation.Number("speed_at_3000_rpm_kmh") is { } at3000 && situation.Number("highest_engine_speed_rpm") is { } highest
        ? new(new Triangle(0.97, 1, 1.03).Scaled(at3000 * highest / 3000), "speed at 3000 turns a minute and the highest turning speed that you said; gauges of old cars within 3 % (from memory)", true)
        : null;

    /// <summary>Engine power as built, kW; that of now when only that was said; null when nobody said.</summary>
    public double? PowerAsBuiltKw => situation.Number("power_as_built_kw") ?? situation.Number("power_now_kw");

    /// <summary>Engine power now, kW, with what age and optimistic papers take away; null when nobody said.</summary>
    public GivenInput? PowerNow => Power("power_now_kw") ?? Power("power_as_built_kw");

    /// <summary>Engine power planned, kW; that of now when no change was said; null when nobody said either.</summary>
    public GivenInput? PowerPlanned => Power("power_planned_kw") ?? PowerNow;

    /// <summary>Speed at which the owner hears what he hears, km/h, with the finding that says so; empty when none was written down.</summary>
    public IReadOnlyList<(string Observation, double Kmh)> HeardAt =>
        [.. situation.Findings.Values
            .Where(f => f.Finding.Speed is not null && situation.Pack.Observation(f.Finding.Observation)?.NoticedBy is "sound" or "feel")
            .Select(f => (f.Finding.Observation, QuantityText.Read(f.Finding.Speed!, UnitKind.Speed)))
            .Where(f => f.Item2.TryGet(out _, out _))
            .Select(f => (f.Observation, f.Item2.TryGet(out Amount speed, out _) ? speed.In(UnitTable.Get(UnitKind.Speed, "km/h")) : 0))];

    /// <summary>Works the inputs out.</summary>
    /// <param name="situation">What is known.</param>
    /// <returns>The inputs; the same facts give the same inputs.</returns>
    public static CarInputs Of(Situation situation) => new(situation);

    /// <summary>A number that was measured, exactly, or a stated range where it was not.</summary>
    /// <param name="fact">The fact.</param>
    /// <param name="otherwise">Range when it is not known.</param>
    /// <param name="why">Where that range comes from.</param>
    /// <returns>The input.</returns>
    public GivenInput Or(string fact, Triangle otherwise, string why) =>
        situation.Number(fact) is { } measured ? new(Triangle.Certain(measured), "you said", true) : new(otherwise, why, false);

    /// <summary>A number that was measured; null where it was not.</summary>
    /// <param name="fact">The fact.</param>
    /// <returns>The input.</returns>
    public GivenInput? Measured(string fact) => situation.Number(fact) is { } measured ? new(Triangle.Certain(measured), "you said", true) : null;

    /// <summary>Values for the inputs that many models share, by the names of those inputs.</summary>
    /// <returns>Name to value.</returns>
    public Dictionary<string, GivenInput> Shared()
    {
        Dictionary<string, GivenInput> shared = new()
        {
            ["mass_kg"] = Mass,
            ["drag_area_m2"] = DragArea,
            ["frontal_area_m2"] = FrontalArea,
            ["wheelbase_m"] = Wheelbase,
            ["front_lift_coefficient"] = FrontLift,
            ["rear_lift_coefficient"] = RearLift,
            ["front_axle_kg"] = new(Times(Mass.Range, FrontShare.Range), $"mass times the share of the front axle; {FrontShare.From}", false),
            ["rear_axle_kg"] = new(Times(Mass.Range, new(1 - FrontShare.Range.High, 1 - FrontShare.Range.Likely, 1 - FrontShare.Range.Low)), $"mass times the share of the rear axle; {FrontShare.From}", false),
            ["rolling_state"] = new(new(0.8, 1, 1.5), "tyres that nobody measured; the upper end reaches to cross-ply", false),
        };
        return shared;
    }

    /// <summary>Range of the body template by name, or of all shapes together when the shape is not known; null where no template has it.</summary>
    internal Triangle? Template(string name)
    {
        Triangle[] ranges = [.. templates.Where(t => t.Ranges.ContainsKey(name)).Select(t => t.Ranges[name])];
        return ranges.Length == 0 ? null : new(ranges.Min(r => r.Low), ranges.Average(r => r.Likely), ranges.Max(r => r.High));
    }

    private GivenInput FromTemplate(string name, Triangle otherwise) =>
        Or(name, Template(name) ?? otherwise, BodyStyle is null ? "any body shape" : "usual for this body shape");

    // Catalogue figures are of a new engine on a good day; an old one gives a little less.
    private GivenInput? Power(string fact) => situation.Number(fact) is { } kilowatts
        ? new(new(0.88 * kilowatts, 0.96 * kilowatts, 1.02 * kilowatts), "you said, less what age and generous papers take (from memory)", true)
        : null;

    private static double? Largest(double? one, double? other) => one is { } a && other is { } b ? Math.Max(a, b) : one ?? other;

    // Ends are kept as ends: the widest reading of two ranges that are not known together.
    private static Triangle Times(Triangle one, Triangle other) => new(one.Low * other.Low, one.Likely * other.Likely, one.High * other.High);

    // A triangle with the same mean and about the same 5 and 95 % points: its ends lie 1.46 times as far out.
    private static Triangle Between(Spread s) => new(Math.Max(1e-3, s.Likely - (1.46 * (s.Likely - s.Low))), s.Likely, s.Likely + (1.46 * (s.High - s.Likely)));
}
