using FixPlanner.Core.Physics.Catalogue;
using FixPlanner.Core.Physics.Glass;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Logbooks.Estimates;

/// <summary>The rear glass of this car and what is believed to hold it.</summary>
/// <param name="Width">Width, m.</param>
/// <param name="Height">Height, m.</param>
/// <param name="Glazing">How it is held; not known counts as old rubber.</param>
/// <param name="Condition">What a look found.</param>
/// <param name="RubberAgeYears">Age of the rubber in years; null when nobody said.</param>
/// <param name="Push">What a push found.</param>
/// <param name="MeasuredAcross">Inside minus outside coefficient read with a manometer: the upper end of the answer given; null when nobody read it.</param>
public sealed record CarGlass(GivenInput Width, GivenInput Height, Glazing Glazing, RubberCondition Condition, double? RubberAgeYears, PushTest Push, double? MeasuredAcross)
{
    /// <summary>What is believed of the edge.</summary>
    public GlassHold Hold => GlassHold.Of(Glazing, Condition, RubberAgeYears, Push);

    /// <summary>The pane at its likely size.</summary>
    public Pane Pane => new(Length.FromMetres(Width.Range.Likely), Length.FromMetres(Height.Range.Likely));

    /// <summary>Reads facts and findings.</summary>
    /// <param name="s">What is known.</param>
    /// <param name="template">Range of the body template by name.</param>
    /// <returns>The glass.</returns>
    internal static CarGlass Of(Situation s, Func<string, Triangle?> template)
    {
        GivenInput width = new(template("rear_glass_width_m") ?? new(1.0, 1.15, 1.3), "usual for this body shape", false);
        GivenInput height = s.Number("rear_glass_area_m2") is { } area
            ? new(Triangle.Certain(area / width.Range.Likely), "from the area that you said", true)
            : new(template("rear_glass_height_m") ?? new(0.35, 0.45, 0.6), "usual for this body shape", false);
        return new(width, height, GlazingOf(s), ConditionOf(s), s.Number("rear_rubber_year_made") is { } year ? Math.Max(0, s.Today.Year - year) : null, PushOf(s), AcrossOf(s));
    }

    private static Glazing GlazingOf(Situation s) => s.Fact("rear_glass_hold")?.Word switch
    {
        "rubber with strip" => Glazing.RubberWithStrip,
        "rubber without strip" => Glazing.RubberWithoutStrip,
        "bonded" => Glazing.Bonded,
        "bolted" => Glazing.Bolted,
        _ => Glazing.NotKnown,
    };

    private static RubberCondition ConditionOf(Situation s) =>
        s.Answer("glass-marks") is "some" or "more" || s.Answer("glass-bulge") == "bulges" || s.Answer("gasket-look") is "bad" or "rust" ? RubberCondition.Perished
        : s.Answer("gasket-look") switch { "good" => RubberCondition.Aged, "hard" => RubberCondition.Hard, _ => RubberCondition.NotKnown };

    private static PushTest PushOf(Situation s) => s.Answer("glass-push") switch
    {
        "firm" => PushTest.Firm,
        "creaks" => PushTest.Creaks,
        "moves" => PushTest.Moves,
        _ => PushTest.NotDone,
    };

    // The answer is a class: its upper end counts, so that no load is told smaller than it was read. Above 40 % nothing bounds it.
    private static double? AcrossOf(Situation s) => s.Answer("cabin-against-rear-glass") switch { "low" => 0.10, "mid" => 0.40, _ => null };
}
