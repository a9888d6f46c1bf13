using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Learning;
using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.Core.Planning.Learning;

/// <summary>A cause of a measured fix: how sure it was without the measurements, and is with them.</summary>
/// <param name="Cause">The cause.</param>
/// <param name="Before">Chance without anything measured, 0 to 1.</param>
/// <param name="After">Chance with it.</param>
public sealed record LearnedCause(Mechanism Cause, double Before, double After);

/// <summary>What a measurement of a fix taught: what was believed, what was measured and what is believed now, side by side.</summary>
/// <param name="Measured">What was measured, in the pack's unit.</param>
/// <param name="Update">Belief, measurement and belief after it, in the unit as shown.</param>
/// <param name="Causes">The causes that the fix works through.</param>
/// <param name="WorkState">What the work is by it: proven, failed, or null while nothing is shown or other aims still count.</param>
public sealed record LearnedEffect(MeasuredEffect Measured, BeliefUpdate Update, IReadOnlyList<LearnedCause> Causes, WorkState? WorkState)
{
    private const double TwoSided95 = 1.959963984540054;

    /// <summary>Key of the quantity with its unit, as in the plan.</summary>
    public string Key => EffectNames.Key(Measured.On);

    /// <summary>Name of the quantity as shown.</summary>
    public string Title => EffectNames.Title(Measured.On);

    /// <summary>Unit as shown.</summary>
    public string Unit => EffectNames.Unit(Measured.On);

    /// <summary>What was believed before, with a 95 % interval.</summary>
    public ConfidenceInterval Prior => Around(Update.PriorMean, Update.PriorSpread);

    /// <summary>What was measured, with its 95 % interval.</summary>
    public ConfidenceInterval Result => Around(Update.Measured, Update.MeasuredError);

    /// <summary>What is believed now, with a 95 % interval.</summary>
    public ConfidenceInterval Posterior => Around(Update.Mean, Update.Spread);

    /// <summary>Everything that was learned from readings, in the order of the fixes' ids.</summary>
    /// <param name="s">What is known.</param>
    /// <param name="beliefs">What is believed, readings included.</param>
    /// <returns>One for each fix and quantity of which the pack states an effect.</returns>
    public static IReadOnlyList<LearnedEffect> All(Situation s, Beliefs beliefs)
    {
        ArgumentNullException.ThrowIfNull(s);
        ArgumentNullException.ThrowIfNull(beliefs);
        IReadOnlyList<MeasuredEffect> measured = MeasuredEffect.All(s);
        return [.. measured.Select(m => Of(m, measured, s, beliefs)).OfType<LearnedEffect>()];
    }

    private static LearnedEffect? Of(MeasuredEffect m, IReadOnlyList<MeasuredEffect> all, Situation s, Beliefs beliefs)
    {
        if (EffectBelief.Of(s.Pack, m.Fix, m.On) is not { } belief)
        {
            return null;
        }

        (double mean, double deviation) = belief.Shown(StateChances(belief, beliefs.BeforeMeasured.Probability));
        double perUnit = m.On == EffectOn.Drag ? CarEstimate.Of(s).DragAreaSquareMetres.Likely / 100 : 1;
        BeliefUpdate update = BeliefUpdate.Of(perUnit * mean, perUnit * Math.Max(deviation, 1e-9), perUnit * m.Estimate, perUnit * m.StandardError);
        LearnedCause[] causes = [.. belief.Causes.Select(id => new LearnedCause(s.Pack.Mechanism(id)!, beliefs.BeforeMeasured.Probability(id), beliefs.Probability(id)))];
        return new(m, update, causes, ProofOutcome.StateOf(m.Fix, all, s));
    }

    /// <summary>Chance of each state of the causes, taken as independent.</summary>
    internal static double[] StateChances(EffectBelief belief, Func<string, double> chance)
    {
        double[] chances = [.. belief.Causes.Select(chance)];
        double[] states = new double[belief.States];
        for (int state = 0; state < states.Length; state++)
        {
            states[state] = 1;
            for (int bit = 0; bit < chances.Length; bit++)
            {
                states[state] *= (state >> bit & 1) == 1 ? chances[bit] : 1 - chances[bit];
            }
        }

        return states;
    }

    private static ConfidenceInterval Around(double mean, double deviation) => new(mean, mean - (TwoSided95 * deviation), mean + (TwoSided95 * deviation));
}
