using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Learning;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning.Learning;

/// <summary>The pack as it stands for a car on which fixes were measured: their ranges are moved and narrowed, everything else is the same.</summary>
public static class LearnedPack
{
    /// <summary>Puts what was measured into the effects.</summary>
    /// <param name="s">What is known.</param>
    /// <param name="beliefs">What is believed.</param>
    /// <returns>The pack for planning; the pack itself when nothing was measured.</returns>
    public static KnowledgePack Of(Situation s, Beliefs beliefs)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(beliefs);
        ILookup<string, MeasuredEffect> measured = MeasuredEffect.All(s).ToLookup(m => m.Fix.Id);
        return measured.Count == 0
            ? s.Pack
            : s.Pack.WithFixes([.. s.Pack.Fixes.Select(f => measured.Contains(f.Id) ? f with { Effects = [.. f.Effects.Select(e => After(e, measured[f.Id], s, beliefs))] } : f)]);
    }

    private static Effect After(Effect effect, IEnumerable<MeasuredEffect> measured, Situation s, Beliefs beliefs)
    {
        if (measured.FirstOrDefault(m => m.On == effect.On) is not { } m || EffectBelief.Of(s.Pack, m.Fix, m.On) is not { } belief)
        {
            return effect;
        }

        // Chances in tenths: the size hardly hangs on them, and the pack need not be compiled anew after each answer.
        double[] chances = LearnedEffect.StateChances(belief, id => Math.Round(beliefs.BeforeMeasured.Probability(id), 1));
        (double mean, double deviation) = belief.SizeAfter(chances, m.Estimate, m.StandardError);

        // The shape of the range stays: it is moved to the new mean and narrowed to the new spread.
        Triangle range = effect.Range;
        double was = Math.Sqrt(range.Variance);
        double narrowed = was > 0 ? Math.Min(deviation / was, 1) : 1;
        double Moved(double end) => mean + (narrowed * (end - range.Mean));
        return effect with { Worst = Moved(effect.Worst), Likely = Moved(effect.Likely), Best = Moved(effect.Best) };
    }
}
