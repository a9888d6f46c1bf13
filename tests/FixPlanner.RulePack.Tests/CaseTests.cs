using FixPlanner.Files.Rules;
using FixPlanner.Files.Rules.Cases;

namespace FixPlanner.RulePack.Tests;

/// <summary>Every situation that the pack brings along.</summary>
public class CaseTests
{
    private static readonly Lazy<IReadOnlyList<RuleCase>> All = new(() => RulePackReader.Bind([PackFolders.Rules], withCases: true).Rules.Cases);

    public static TheoryData<string> Names => new(All.Value.Select(rule => rule.Name));

    [Theory]
    [MemberData(nameof(Names))]
    public void Case_OfThePack_ComesOutAsItSays(string name)
    {
        RuleCase rule = All.Value.Single(one => one.Name == name);

        var failures = new CaseRun(rule).Failures();

        Assert.True(failures.Count == 0, $"{rule.Place}\n{string.Join('\n', failures)}");
    }

    [Fact]
    public void Cases_Together_LeadToEveryRuleAndMissEveryRule()
    {
        var pack = ShippedPack.Pack;

        Assert.Empty(pack.Mechanisms.Select(cause => cause.Id).Except(All.Value.SelectMany(rule => rule.Expect.Likely.Concat(rule.Expect.NearTop))));
        Assert.Empty(pack.Mechanisms.Select(cause => cause.Id).Except(All.Value.SelectMany(rule => rule.Expect.Doubted.Concat(rule.ExpectNot.Likely).Concat(rule.ExpectNot.NearTop))));
        Assert.Empty(pack.Fixes.Select(fix => fix.Id).Except(All.Value.SelectMany(rule => rule.Expect.Plan.Concat(rule.Expect.Held).Concat(rule.Expect.Open))));
        Assert.Empty(pack.Fixes.Select(fix => fix.Id).Except(All.Value.SelectMany(rule => rule.Expect.LeftOut.Concat(rule.ExpectNot.Plan))));
        Assert.Empty(pack.Gates.Select(gate => gate.Id).Except(All.Value.SelectMany(rule => rule.Expect.Gates.GetValueOrDefault("in force") ?? [])));
        Assert.Empty(pack.Gates.Select(gate => gate.Id).Except(All.Value.SelectMany(Elsewhere)));
        Assert.InRange(All.Value.Count, 200, int.MaxValue);

        static IEnumerable<string> Elsewhere(RuleCase rule) =>
            rule.Expect.Gates.Where(state => state.Key != "in force").SelectMany(state => state.Value).Concat(rule.ExpectNot.Gates.GetValueOrDefault("in force") ?? []);
    }

    [Fact]
    public void Cases_Together_HaveNamesOfTheirOwn() => Assert.Equal(All.Value.Count, All.Value.Select(rule => rule.Name).Distinct().Count());
}
