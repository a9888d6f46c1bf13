using FixPlanner.Core.Quantities;
using MathNet.Numerics.Distributions;

namespace FixPlanner.Core.Physics.Separation;

/// <summary>
/// Lets the shape of the car speak before the tufts do, and only once: for every measured size it gives the factor on the odds of each cause.
/// While a size is known, these factors stand in place of the links of the observation that asks for it.
/// </summary>
public static class GeometryPriors
{
    // Nothing that rests on a rule of thumb may speak louder than one strong finding.
    private const double Loudest = 8;

    // A weak link of the pack is this power of a medium one: ln 1.5 / ln 3.
    private const double Weak = 0.369;
    private const double RuleWrong = 0.1;
    private const double TailRuleWrong = 0.15;
    private const double SlantRuleWrong = 0.2;

    // Share of ordinary cars whose header itself is too sharp; a raked screen helps, hence under the share of front corners.
    private const double HeaderUsuallyTooSharp = 0.6;

    /// <summary>What the measured shape says.</summary>
    /// <param name="facts">What was measured.</param>
    /// <returns>One line for each observation and cause; empty when nothing was measured.</returns>
    /// <validity>Ordinary upright cars of about 1950 to 1985. A round corner with a proud rim or strip counts as sharp: measure the strip.</validity>
    /// <uncertainty>Rules of thumb: each is taken as wrong in 10 to 20 % of cases, no factor beyond 8 or under 1/8. The sizes usual on old cars are judgement.</uncertainty>
    /// <source key="own derivation" place="rules of this folder; usual sizes and shares from memory">factor = odds here over odds averaged over ordinary cars</source>
    /// <exception cref="ArgumentOutOfRangeException">A size outside its range.</exception>
    public static IReadOnlyList<GeometryEvidence> Of(GeometryFacts facts) =>
        [.. FrontEdges(facts), .. Header(facts), .. TailEdges(facts), .. Slant(facts)];

    private static IEnumerable<GeometryEvidence> FrontEdges(GeometryFacts facts)
    {
        if (facts.FrontEdgeRadius is not { } radius)
        {
            yield break;
        }

        FrontEdge edge = FrontEdge.Of(radius, facts.FrontalArea, facts.Speed);
        ShapeChance stays = FrontRule(edge.NeededRadius.Metres);
        double leaves = 1 - stays.Above(radius.Metres);
        double ratio = ShapeChance.Ratio(leaves, 1 - stays.UsuallyAbove, stays.Wrong);
        string reason = $"radius {Mm(radius)} mm against {Mm(edge.NeededRadius)} mm that the air needs to follow the edge at this speed";
        yield return Line("front-edge-radius", "front-corner-separation", leaves, ratio, 1, reason);
        yield return Line("front-edge-radius", "bonnet-edge-bubble", leaves, ratio, Weak, reason);
    }

    private static IEnumerable<GeometryEvidence> Header(GeometryFacts facts)
    {
        if (facts.HeaderStep is not { } step)
        {
            yield break;
        }

        double stepMm = Valid.Within(step.Millimetres, 0, 300, "mm", nameof(facts));
        ShapeChance proud = new(Border: 4, Width: 0.7, UsualSize: 4, UsualSpread: 0.7, RuleWrong);
        double sharp = HeaderTooSharp(facts);

        // Either the header is too sharp or the step throws the air off; the usual car has both chances.
        double bubble = 1 - ((1 - proud.Above(stepMm)) * (1 - sharp));
        double usualBubble = 1 - ((1 - proud.UsuallyAbove) * (1 - HeaderUsuallyTooSharp));
        string length = stepMm >= 1 ? $"; behind it the air lands after {Mm(Bubble.Of(ObstacleKind.Fence, step).Likely)} mm" : string.Empty;
        yield return Line("header-step", "header-bubble", bubble, ShapeChance.Ratio(bubble, usualBubble, RuleWrong), 1,
            $"{Mm(step)} mm proud of the roof skin{length}");

        ShapeChance edge = new(Border: 2, Width: 0.7, UsualSize: 4, UsualSpread: 0.7, RuleWrong);
        double whistles = edge.Above(stepMm);
        yield return Line("header-step", "edge-whistle", whistles, ShapeChance.Ratio(whistles, edge.UsuallyAbove, RuleWrong), Weak,
            $"an edge {Mm(step)} mm high in fast air");
    }

    private static double HeaderTooSharp(GeometryFacts facts)
    {
        if (facts.HeaderRadius is not { } radius)
        {
            return HeaderUsuallyTooSharp;
        }

        FrontEdge edge = FrontEdge.Of(radius, facts.FrontalArea, facts.Speed);
        return 1 - FrontRule(edge.NeededRadius.Metres).Above(radius.Metres);
    }

    // Even half-way between half and full radius, those two ends one width away.
    private static ShapeChance FrontRule(double neededM) =>
        new(Border: neededM * Math.Sqrt(0.5), Width: 0.35, UsualSize: 0.025, UsualSpread: 0.59, RuleWrong);

    private static IEnumerable<GeometryEvidence> TailEdges(GeometryFacts facts)
    {
        if (facts.TailEdgeRadius is not { } radius)
        {
            yield break;
        }

        double radiusMm = Valid.Within(radius.Millimetres, 0, 300, "mm", nameof(facts));
        ShapeChance soft = new(Border: 15, Width: 0.6, UsualSize: 20, UsualSpread: 0.79, TailRuleWrong);
        ShapeChance round = new(Border: 40, Width: 0.6, UsualSize: 20, UsualSpread: 0.79, TailRuleWrong);
        double isSoft = soft.Above(radiusMm);
        double isRound = round.Above(radiusMm);
        double softRatio = ShapeChance.Ratio(isSoft, soft.UsuallyAbove, TailRuleWrong);
        double roundRatio = ShapeChance.Ratio(isRound, round.UsuallyAbove, TailRuleWrong);
        double cleanRatio = ShapeChance.Ratio(1 - isSoft, 1 - soft.UsuallyAbove, TailRuleWrong);
        string reason = $"rear edges of {Mm(radius)} mm radius; the air lets go at one line below about 3 mm and follows the edge round above about 60 mm";
        yield return Line("tail-edge-radius", "no-clean-edge-at-tail", isSoft, softRatio, 1, reason);
        yield return Line("tail-edge-radius", "flow-wraps-rear-corners", isRound, roundRatio, 0.6, reason);
        yield return Line("tail-edge-radius", "ragged-roof-tail", isRound, roundRatio, Weak, reason);
        yield return Line("tail-edge-radius", "dead-air-behind-tail", 1 - isSoft, cleanRatio, Weak, reason);
    }

    private static IEnumerable<GeometryEvidence> Slant(GeometryFacts facts)
    {
        if (facts.TailSlant is not { } slant || TailSlant.Of(slant, facts.TailSlantLengthShare) == SlantFlow.TooShort)
        {
            yield break;
        }

        string reason = $"the tail falls at {Math.Round(slant.Degrees)} degrees; air follows up to about 25 and leaves above about 30";
        (int, int) fastbackToNotch = (12, 55);
        (int, int) anyTail = (10, 80);
        yield return Between("notchback-separation", slant.Degrees, (23, 4), (50, 6), fastbackToNotch, 1, reason);
        yield return Between("rear-axle-lift", slant.Degrees, (8, 4), (38, 6), anyTail, Weak, reason);
        yield return Between("dead-air-behind-tail", slant.Degrees, (50, 6), (200, 6), anyTail, Weak, reason);
    }

    // The cause needs an angle between two borders; what is usual is averaged over the tails of the cars that can have the cause.
    private static GeometryEvidence Between(
        string mechanism, double degrees, (double At, double Width) from, (double At, double Width) to, (int From, int To) tails, double weight, string reason)
    {
        double Chance(double angle) => Normal.CDF(0, 1, (angle - from.At) / from.Width) * Normal.CDF(0, 1, (to.At - angle) / to.Width);
        double usual = Enumerable.Range(tails.From, tails.To - tails.From + 1).Average(angle => Chance(angle));
        double chance = Chance(degrees);
        return Line("tail-slope", mechanism, chance, ShapeChance.Ratio(chance, usual, SlantRuleWrong), weight, reason);
    }

    private static GeometryEvidence Line(string observation, string mechanism, double chance, double ratio, double weight, string reason) =>
        new(observation, mechanism, chance, Math.Clamp(Math.Pow(ratio, weight), 1 / Loudest, Loudest), reason);

    private static string Mm(Length length) => $"{Math.Round(length.Millimetres)}";
}
