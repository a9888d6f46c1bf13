using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning;

/// <summary>
/// Physics of a whole set of fixes on this car, where adding up the pack's figures is not good enough. The search works with the pack's figures;
/// the set it finds is computed again, and what physics gives stands in the sums instead.
/// </summary>
public interface ISetPhysics
{
    /// <summary>Computes a set.</summary>
    /// <param name="situation">What is known of the car.</param>
    /// <param name="set">The fixes, beside what is on the car now.</param>
    /// <returns>The change of each quantity that can be computed, in the unit in which it is shown; the others are left to the pack.</returns>
    IReadOnlyDictionary<EffectOn, Spread> Changes(Situation situation, IReadOnlyList<Fix> set);
}
