using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning.Effects;

/// <summary>One effect as the pack states it, in numbers: of which fix, on what, through which causes.</summary>
/// <param name="Fix">Index of the fix.</param>
/// <param name="On">The quantity.</param>
/// <param name="PlusGood">Its range with the causes there, turned so that plus is good; drag in % of the car, noise in dB(A).</param>
/// <param name="Causes">The causes it works through (index, action), at least one.</param>
/// <param name="CountsOnce">The bad part counts once over all such effects of a set: the worst one.</param>
internal sealed record StatedEffect(int Fix, EffectOn On, Triangle PlusGood, IReadOnlyList<(int Cause, FixAction Action)> Causes, bool CountsOnce = false);
