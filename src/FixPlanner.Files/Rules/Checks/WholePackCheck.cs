using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.Effects;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules.Binding;

namespace FixPlanner.Files.Rules.Checks;

/// <summary>What only shows when all effects, or all strengths of a question, are taken together.</summary>
internal static class WholePackCheck
{
    /// <summary>A stated ratio that comes back this far off is worth a note.</summary>
    private const double Tolerance = 0.3;

    public static IEnumerable<Problem> Run(KnowledgePack pack, Definitions ids, string folder)
    {
        foreach (EffectFinding finding in EffectChecks.Check(pack))
        {
            Place place = finding.Fix is { } fix ? ids.PlaceOf(RuleKind.Fix, fix) : Place.Whole(Path.Combine(folder, "pack.yaml"));
            yield return finding.Fault switch
            {
                EffectFault.NoiseClaimTooLarge => Messages.NoiseClaimTooLarge(place, finding.Fix!, finding.Value, finding.Limit),
                EffectFault.NoiseClaimsContradict => Messages.NoiseClaimsContradict(place, finding.Fix!, finding.Value, finding.Limit),
                EffectFault.DragAmountsTooLarge => Messages.DragTooLarge(place, "all causes at once", finding.Value, finding.Limit),
                _ => Messages.DragTooLarge(place, "the causes of an ordinary car", finding.Value, finding.Limit),
            };
        }

        foreach (var question in BeliefNetwork.Of(pack).Contradictions(Tolerance).GroupBy(found => found.Observation))
        {
            var worst = question.MaxBy(found => Math.Abs(Math.Log(found.Z)));
            yield return Messages.StrengthsContradict(ids.PlaceOf(RuleKind.Observation, question.Key), question.Key, worst.Cause, (1 / worst.Z) - 1);
        }
    }
}
