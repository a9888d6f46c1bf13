using FixPlanner.Core.Quantities;
using MathNet.Numerics.Distributions;

namespace FixPlanner.Core.Physics.Glass;

/// <summary>
/// How hard an edge holds its pane, in newtons for each metre. This is the weakest number in the program: no published
/// pull-out strength of a car gasket was found. It is a belief with a wide range, and every screen that shows it says so.
/// </summary>
/// <param name="Middle">Half of such edges are believed to hold more.</param>
/// <param name="LogDeviation">Standard deviation of the natural logarithm.</param>
/// <param name="Basis">Where the figure comes from, in a sentence for the reader.</param>
/// <validity>Outward pull, even edge, no crack in the glass. Fatigue, frame twist and frost are not in it.</validity>
/// <uncertainty>New rubber 800 to 2500 N/m; the factor of the condition within a third. Bonded and bolted: by judgement alone.</uncertainty>
/// <source key="own-derivation" place="lip as a cantilever 160 to 1100 N/m; survival of sound old cars at 120 to 140 km/h asks for a middle above 650 to 870 N/m">r = r_new times condition</source>
public sealed record GlassHold(LineLoad Middle, double LogDeviation, string Basis)
{
    private const double NewRubber = 1500;

    private const double InspectedDeviation = 0.35;

    private const double UnseenDeviation = 0.6;

    /// <summary>Nineteen in twenty hold at least this: what advice rests on.</summary>
    public LineLoad Low => AtShare(0.05);

    /// <summary>One in twenty holds more than this.</summary>
    public LineLoad High => AtShare(0.95);

    /// <summary>True when somebody looked and found the hold in order: then the car's own top speed is no longer the limit of advice.</summary>
    public bool FoundSound { get; private init; }

    /// <summary>What is believed of an edge.</summary>
    /// <param name="glazing">How the pane is held.</param>
    /// <param name="condition">What a look found.</param>
    /// <param name="rubberAgeYears">Age of the rubber; null if not known.</param>
    /// <param name="push">What a push found.</param>
    /// <returns>The belief.</returns>
    /// <validity>A firm push of 100 N at the corners raises nothing: it proves a small load at a place where the rubber is strongest. A push that moves the glass overrules the eye.</validity>
    /// <uncertainty>As the class.</uncertainty>
    /// <source key="own-derivation" place="as the class; classes and factors by judgement">0.90 supple, 0.65 aged, 0.40 hard, 0.20 perished</source>
    public static GlassHold Of(Glazing glazing, RubberCondition condition, double? rubberAgeYears, PushTest push)
    {
        RubberCondition seen = AfterPush(condition, push);
        return glazing switch
        {
            Glazing.Bonded => seen == RubberCondition.Perished
                ? Belief(800, 0.7, "bonding that lets water in or moves counts as nearly lost (judgement)")
                : Belief(6000, 0.6, "sound bonding is believed to hold 2 to 16 kN/m (judgement, no test read)") with { FoundSound = seen is RubberCondition.Supple or RubberCondition.Aged },
            Glazing.Bolted => Belief(3000, 0.8, "points that clamp the glass: 0.8 to 11 kN/m, and the glass may break at them (judgement, no test read)"),
            Glazing.RubberWithoutStrip => Rubber(seen, rubberAgeYears, 0.8, 0.15),
            _ => Rubber(seen, rubberAgeYears, 1, 0),
        };
    }

    /// <summary>The value below which a share of such edges lies.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    /// <returns>Hold.</returns>
    public LineLoad AtShare(double share) => LineLoad.FromNewtonsPerMetre(Middle.NewtonsPerMetre * Math.Exp(LogDeviation * Normal.InvCDF(0, 1, share)));

    /// <summary>Pull on the whole pane at which the middle of its long side lets go: the band to draw beside the pull by speed.</summary>
    /// <param name="pane">The pane.</param>
    /// <returns>Low, middle and high end of the hold as a pull on the pane.</returns>
    /// <validity>No safety factor in it; as <see cref="GlassLoad.Of"/>.</validity>
    /// <uncertainty>As the class.</uncertainty>
    /// <source key="own-derivation" place="peak edge load solved for the pull">F = r A / (gamma b)</source>
    public (Force Low, Force Middle, Force High) AsPull(Pane pane)
    {
        double perEdge = pane.Area.SquareMetres / (pane.PeakEdgeFactor * pane.ShortSide.Metres);
        Force Pull(LineLoad hold) => Force.FromNewtons(hold.NewtonsPerMetre * perEdge);
        return (Pull(Low), Pull(Middle), Pull(High));
    }

    private static RubberCondition AfterPush(RubberCondition condition, PushTest push) => push switch
    {
        PushTest.Moves => RubberCondition.Perished,
        PushTest.Creaks when condition is not RubberCondition.Perished => RubberCondition.Hard,
        _ => condition,
    };

    private static GlassHold Rubber(RubberCondition condition, double? years, double section, double sectionDeviation)
    {
        (double factor, double deviation, string basis) = condition switch
        {
            RubberCondition.Supple => (0.90, InspectedDeviation, "supple rubber, seen"),
            RubberCondition.Aged => (0.65, InspectedDeviation, "aged but elastic rubber, seen"),
            RubberCondition.Hard => (0.40, InspectedDeviation, "hard or shrunk rubber"),
            RubberCondition.Perished => (0.20, InspectedDeviation, "perished rubber, or glass that moves"),
            _ => ByAge(years),
        };
        double spread = Math.Sqrt((deviation * deviation) + (sectionDeviation * sectionDeviation));
        return Belief(NewRubber * factor * section, spread, $"{basis}; no test of a car gasket was found, the range is a belief")
            with { FoundSound = condition is RubberCondition.Supple or RubberCondition.Aged };
    }

    /// <summary>Rubber that nobody looked at: hard from the fifteenth year on, wide in any case.</summary>
    private static (double Factor, double Deviation, string Basis) ByAge(double? years) => years switch
    {
        <= 5 => (0.75, 0.45, "rubber of at most 5 years, not looked at"),
        < 15 => (0.55, 0.5, "rubber of 5 to 15 years, not looked at"),
        null => (0.40, UnseenDeviation, "rubber of unknown age, not looked at, taken as hard"),
        _ => (0.40, UnseenDeviation, "rubber of 15 years or more, not looked at, taken as hard"),
    };

    private static GlassHold Belief(double middle, double deviation, string basis) => new(LineLoad.FromNewtonsPerMetre(middle), deviation, basis);
}
