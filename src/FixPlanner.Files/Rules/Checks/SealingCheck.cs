using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Rules.Binding;

namespace FixPlanner.Files.Rules.Checks;

/// <summary>No sealing of the cabin before a way out and a look at the glass, unless the fix says why.</summary>
internal static class SealingCheck
{
    public static void Run(BoundRules rules, Definitions ids)
    {
        SealingRule rule = rules.Head!.Sealing;
        foreach (Fix fix in rules.Fixes.Where(fix => fix.SealsCabin && fix.SealingExemption is null))
        {
            if (!fix.Before.Contains(rule.Gate) || !fix.Requires.Any(first => first.Fix == rule.Outlet.Fix))
            {
                rules.Problems.Add(Messages.SealsTooSoon(ids.PlaceOf(RuleKind.Fix, fix.Id), fix.Id, rule.Gate, rule.Outlet.Fix));
            }
        }
    }
}
