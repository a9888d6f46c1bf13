using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning;

/// <summary>A margin of the car that a set of fixes breaks.</summary>
/// <param name="Margin">Short name in kebab-case: rear-glass, cooling, fumes.</param>
/// <param name="InWords">What breaks, with the figure.</param>
public sealed record MarginBreak(string Margin, string InWords);

/// <summary>
/// Physics of a whole set of fixes on this car, where adding up the pack's figures is not good enough. The search works with the pack's figures;
/// the set it finds is computed again, what physics gives stands in the sums instead, and a set that breaks a margin is cut off.
/// </summary>
public interface ISetPhysics
{
    /// <summary>Computes a set.</summary>
    /// <param name="situation">What is known of the car.</param>
    /// <param name="set">The fixes, beside what is on the car now.</param>
    /// <returns>The change of each quantity that can be computed, in the unit in which it is shown; the others are left to the pack.</returns>
    IReadOnlyDictionary<EffectOn, Spread> Changes(Situation situation, IReadOnlyList<Fix> set);

    /// <summary>What else the models say of a set, in physical units.</summary>
    /// <param name="situation">What is known of the car.</param>
    /// <param name="set">The fixes, beside what is on the car now.</param>
    /// <returns>Effects that open into formula and inputs; empty when no model touches the set.</returns>
    IReadOnlyList<PlannedEffect> InUnits(Situation situation, IReadOnlyList<Fix> set);

    /// <summary>The same with fewer draws, for a set that is tried between two keys: the first draws of those behind the plan.</summary>
    ISetPhysics AtOnce => this;

    /// <summary>Prepares the margins of one car: quick enough to be asked for many sets between two keys.</summary>
    /// <param name="situation">What is known of the car.</param>
    /// <returns>The margins that a set breaks; empty for a set that breaks none.</returns>
    Func<IReadOnlyList<Fix>, IReadOnlyList<MarginBreak>> Margins(Situation situation);
}
