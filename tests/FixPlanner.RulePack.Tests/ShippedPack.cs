using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules;

namespace FixPlanner.RulePack.Tests;

/// <summary>The shipped pack, read once for all tests.</summary>
internal static class ShippedPack
{
    private static readonly Lazy<RulePackReading> Reading = new(() => RulePackChecks.Check([PackFolders.Rules]));

    public static KnowledgePack Pack => Reading.Value.Pack ?? throw new InvalidOperationException(string.Join('\n', Problems));

    public static IReadOnlyList<Problem> Problems => Reading.Value.Problems;
}
