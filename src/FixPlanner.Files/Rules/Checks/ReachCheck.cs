using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Rules.Binding;

namespace FixPlanner.Files.Rules.Checks;

/// <summary>Every rule can be reached: a cause can be raised, a fix recommended, a gate triggered.</summary>
internal static class ReachCheck
{
    /// <summary>With more causes the table of a question grows beyond what can be computed at once.</summary>
    public const int MostCauses = 12;

    public static void Run(BoundRules rules, Definitions ids)
    {
        HashSet<string> raisable = [];
        foreach (Mechanism mechanism in rules.Mechanisms)
        {
            if (mechanism.Prior > 0 && mechanism.Signs.Any(sign => sign.SpeaksFor))
            {
                raisable.Add(mechanism.Id);
            }
            else
            {
                rules.Problems.Add(Messages.NothingRaises(ids.PlaceOf(RuleKind.Mechanism, mechanism.Id), mechanism.Id));
            }
        }

        HashSet<string> asked = [.. rules.Gates.SelectMany(gate => gate.SignOffs).SelectMany(signOff => signOff.AfterFixes), .. rules.Fixes.SelectMany(fix => fix.Requires).Select(first => first.Fix)];
        foreach (Fix fix in rules.Fixes)
        {
            if (!asked.Contains(fix.Id) && (!fix.ActsOn.Keys.Any(raisable.Contains) || fix.Effects.Count == 0))
            {
                rules.Problems.Add(Messages.NothingRecommends(ids.PlaceOf(RuleKind.Fix, fix.Id), fix.Id));
            }
        }

        foreach (Gate gate in rules.Gates.Where(gate => gate.TriggeredByAnswers.Count == 0 && gate.TriggeredByFacts.Count == 0))
        {
            rules.Problems.Add(Messages.NothingTriggers(ids.PlaceOf(RuleKind.Gate, gate.Id), gate.Id));
        }

        foreach (var question in rules.Mechanisms.SelectMany(cause => cause.Signs.Select(sign => sign.Observation).Distinct()).GroupBy(id => id).Where(group => group.Count() > MostCauses))
        {
            rules.Problems.Add(Messages.TooManyCauses(ids.PlaceOf(RuleKind.Observation, question.Key), question.Key, question.Count(), MostCauses));
        }
    }
}
