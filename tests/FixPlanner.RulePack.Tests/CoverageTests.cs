using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Rules.Cases;

namespace FixPlanner.RulePack.Tests;

/// <summary>
/// Every cause, fix and gate has a situation that leads to it and a near miss that must not. A near miss answers something that the
/// rule hangs on and still does not lead there; a situation about another part of the car is none.
/// </summary>
public class CoverageTests
{
    private const string TheGates = "the gates";
    private static readonly KnowledgePack Pack = ShippedPack.Pack;

    private static IReadOnlyList<RuleCase> Cases => CaseTests.All.Value;

    public static TheoryData<string> Places => new([.. Pack.Zones.Select(zone => zone.Id), TheGates]);

    [Theory]
    [MemberData(nameof(Places))]
    public void Cases_OfAPlace_LeadToEveryRuleOfIt(string place)
    {
        string[] missing =
        [
            .. Causes(place).Where(cause => !Cases.Any(one => one.Expect.Likely.Concat(one.Expect.NearTop).Contains(cause.Id))).Select(cause => cause.Id),
            .. Fixes(place).Where(fix => !Cases.Any(one => LeadsTo(one, fix))).Select(fix => fix.Id),
            .. Gates(place).Where(gate => !Cases.Any(one => InForce(one.Expect).Contains(gate.Id))).Select(gate => gate.Id),
        ];

        Assert.True(missing.Length == 0, $"no situation leads to: {string.Join(", ", missing)}");
    }

    [Theory]
    [MemberData(nameof(Places))]
    public void Cases_OfAPlace_NearlyMissEveryRuleOfIt(string place)
    {
        string[] missing =
        [
            .. Causes(place).Where(cause => !Cases.Any(one => Misses(one, cause))).Select(cause => cause.Id),
            .. Fixes(place).Where(fix => !Cases.Any(one => Misses(one, fix))).Select(fix => fix.Id),
            .. Gates(place).Where(gate => !Cases.Any(one => Misses(one, gate))).Select(gate => gate.Id),
        ];

        Assert.True(missing.Length == 0, $"no near miss of: {string.Join(", ", missing)}");
    }

    private static IEnumerable<Mechanism> Causes(string place) => Pack.Mechanisms.Where(cause => cause.Zones[0] == place);

    private static IEnumerable<Fix> Fixes(string place) => Pack.Fixes.Where(fix => fix.Zone == place);

    private static IEnumerable<Gate> Gates(string place) => place == TheGates ? Pack.Gates : [];

    private static bool LeadsTo(RuleCase one, Fix fix) =>
        one.Expect.Plan.Concat(one.Expect.Held).Contains(fix.Id)
        || (!HelpsOnAverage(fix) && one.Expect.Open.Contains(fix.Id) && one.Expect.Likely.Concat(one.Expect.NearTop).Any(fix.ActsOn.ContainsKey));

    // Runs done again, alarms, cards and parts that backfire as often as they help earn no points, so no plan can choose them:
    // for these the way is open while a cause of theirs is likely.
    private static bool HelpsOnAverage(Fix fix) => fix.Effects.Any(effect => (effect.Worst + effect.Likely + effect.Best) * (effect.Best - effect.Worst) > 0);

    private static bool Misses(RuleCase one, Mechanism cause) =>
        one.Expect.Doubted.Concat(one.ExpectNot.Likely).Concat(one.ExpectNot.NearTop).Contains(cause.Id) && Touches(one, Subjects(cause));

    // What a gate or the car rules out is near by itself: the case names what rules it out.
    private static bool Misses(RuleCase one, Fix fix) =>
        one.Expect.LeftOut.Contains(fix.Id)
        || (one.ExpectNot.Plan.Contains(fix.Id) && Touches(one, [.. fix.ActsOn.Keys.SelectMany(cause => Subjects(Pack.Mechanism(cause)!)), .. Subjects(fix.AppliesWhen)]));

    private static bool Misses(RuleCase one, Gate gate) =>
        (one.Expect.Gates.Any(state => state.Key != "in force" && state.Value.Contains(gate.Id)) || InForce(one.ExpectNot).Contains(gate.Id))
        && Touches(one,
        [
            .. gate.TriggeredByAnswers.Select(trigger => trigger.Observation),
            .. gate.TriggeredByFacts.SelectMany(Subjects),
            .. gate.MustKnow.SelectMany(must => must.Ways).Select(way => way.Fact ?? way.Observation!),
        ]);

    private static IEnumerable<string> InForce(CaseOutcome outcome) => outcome.Gates.GetValueOrDefault("in force") ?? [];

    private static bool Touches(RuleCase one, IEnumerable<string> subjects) => subjects.Any(subject => one.Given.Seen.ContainsKey(subject) || one.Given.Facts.ContainsKey(subject));

    private static IEnumerable<string> Subjects(Mechanism cause) =>
        [.. cause.Signs.Select(sign => sign.Observation), .. Subjects(cause.AppliesWhen), .. cause.PriorIf.SelectMany(other => Subjects(other.When))];

    private static IEnumerable<string> Subjects(Condition? condition) =>
        condition is null ? [] : condition.All.SelectMany(test => new[] { test.Fact, test.OtherFact, test.Observation }).OfType<string>();
}
