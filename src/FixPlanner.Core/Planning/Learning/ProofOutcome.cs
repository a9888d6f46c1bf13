using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Learning;

namespace FixPlanner.Core.Planning.Learning;

/// <summary>What the verdicts on a fix do to the work.</summary>
public static class ProofOutcome
{
    /// <summary>Proven when a quantity was shown better; failed when every quantity for which the owner would want it was measured and none gained.</summary>
    /// <param name="fix">The fix.</param>
    /// <param name="measured">Everything that was measured.</param>
    /// <param name="s">What is known.</param>
    /// <returns>The state; null while it is open.</returns>
    public static WorkState? StateOf(Fix fix, IReadOnlyList<MeasuredEffect> measured, Situation s)
    {
        ArgumentNullException.ThrowIfNull(fix);
        ArgumentNullException.ThrowIfNull(s);
        MeasuredEffect[] mine = [.. measured.Where(m => m.Fix.Id == fix.Id)];
        if (mine.Any(m => m.Verdict == Verdict.ShownBetter))
        {
            return WorkState.Proven;
        }

        EffectOn[] wanted = [.. Wanted(fix, s)];
        bool failed = mine.Any(Fails) && wanted.All(on => mine.Any(m => m.On == on && Fails(m)));
        return failed ? WorkState.Failed : null;
    }

    /// <summary>Quantities for which this owner would want the fix: it helps them on average, and an aim counts them.</summary>
    /// <param name="fix">The fix.</param>
    /// <param name="s">What is known.</param>
    /// <returns>The quantities; all that it helps while no aim was named.</returns>
    public static IEnumerable<EffectOn> Wanted(Fix fix, Situation s)
    {
        ArgumentNullException.ThrowIfNull(fix);
        ArgumentNullException.ThrowIfNull(s);
        HashSet<EffectOn> aimed = [.. s.Pack.Scales.Aims.Where(a => s.Logbook.Aims.Count == 0 || s.Logbook.Aims.GetValueOrDefault(a.Id) > 0).SelectMany(a => a.Quantities)];
        return fix.Effects.Where(e => aimed.Contains(e.On) && Sense.Of(e.On) * e.Range.Mean > 0).Select(e => e.On);
    }

    private static bool Fails(MeasuredEffect m) => m.Verdict is Verdict.ShownWorse or Verdict.NoChangeAbove;
}
