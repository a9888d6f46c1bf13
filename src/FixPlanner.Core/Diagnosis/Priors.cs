using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;

namespace FixPlanner.Core.Diagnosis;

/// <summary>Chance of each cause before anything is answered, from the facts about the car.</summary>
internal static class Priors
{
    /// <summary>
    /// Left out by its condition: 0. First of its conditional priors that is known to hold. While a fact of its condition is
    /// unknown: the prior for that. Else its prior. A fault of the evidence can only be there once evidence was taken.
    /// </summary>
    /// <param name="mechanism">The cause.</param>
    /// <param name="situation">What is known.</param>
    /// <returns>0 to 1.</returns>
    public static double Of(Mechanism mechanism, Situation situation)
    {
        Truth applies = situation.Is(mechanism.AppliesWhen);
        if (applies == Truth.No || (mechanism.Kind == MechanismKind.EvidenceFault && !situation.EvidenceWasTaken))
        {
            return 0;
        }

        return mechanism.PriorIf.FirstOrDefault(p => situation.Is(p.When) == Truth.Yes)?.Prior
            ?? (applies == Truth.Unknown ? mechanism.PriorUnknown : null)
            ?? mechanism.Prior;
    }
}
