using FixPlanner.Core.Logbooks;
using FixPlanner.Files.Rules;
using FixPlanner.Files.Rules.Cases;

namespace FixPlanner.RulePack.Tests;

/// <summary>Every situation that the pack brings along.</summary>
public class CaseTests
{
    internal static readonly Lazy<IReadOnlyList<RuleCase>> All = new(() => RulePackReader.Bind([PackFolders.Rules], withCases: true).Rules.Cases);

    private static readonly CaseOutcome Nothing = new([], [], [], [], [], [], [], new Dictionary<string, IReadOnlyList<string>>());

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
    public void Failures_OfACauseAndAFix_NameTheAnswersForAndAgainst()
    {
        RuleCase wrong = new(
            "a hand fits beside the core, and the lamp shines through it",
            All.Value[0].Place,
            new(new Dictionary<string, FactValue> { ["engine_cooling"] = FactValue.Choice("water") }, new Dictionary<string, string> { ["core-gaps"] = "hand", ["core-insects"] = "even" }, new Dictionary<string, double>(), 600, 30, [], [], []),
            Nothing with { Doubted = ["air-goes-round-core"], LeftOut = ["seal-gaps-round-core"], Gates = new Dictionary<string, IReadOnlyList<string>> { ["in force"] = ["overheating"] } },
            Nothing);

        var failures = new CaseRun(wrong).Failures();

        Assert.Contains(failures, said => said.StartsWith("air-goes-round-core is not doubted", StringComparison.Ordinal) && said.Contains("for: core-gaps hand +") && said.Contains("against: core-insects even -"));
        Assert.Contains(failures, said => said.StartsWith("seal-gaps-round-core is not left out", StringComparison.Ordinal) && said.Contains("air-goes-round-core") && said.Contains("for: core-gaps hand +"));
        Assert.Contains(failures, said => said.StartsWith("overheating is not checked, not in force", StringComparison.Ordinal) && said.Contains("must know"));
    }

    [Fact]
    public void Cases_Together_AreTwoHundredOrMore() => Assert.InRange(All.Value.Count, 200, int.MaxValue);

    [Fact]
    public void Cases_Together_HaveNamesOfTheirOwn() => Assert.Equal(All.Value.Count, All.Value.Select(rule => rule.Name).Distinct().Count());
}
