using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Measurement.Proofs;

namespace FixPlanner.Core.Planning;

/// <summary>How finely the result of a trial can be told from noise.</summary>
/// <param name="StandardError">In the unit of the quantity.</param>
/// <param name="From">Where that comes from, in plain words.</param>
internal sealed record TrialNoise(double StandardError, string From)
{
    /// <summary>Speed of the coasts over which a ride height is read, m/s.</summary>
    private const double CoastMs = 110 / 3.6;

    /// <summary>Two-sided 95 % of a normal deviate.</summary>
    private const double Within95 = 1.96;

    /// <summary>
    /// What the pack states for the trial. Where it states nothing: for lift what a ride height can show; for drag a whole worthwhile step, because a
    /// day's coast-downs seldom tell less; else half of the worthwhile step, as the pack's trials for noise do. The last two are judgement, no source.
    /// </summary>
    /// <param name="trial">The trial.</param>
    /// <param name="scales">Worthwhile steps.</param>
    /// <param name="frontalArea">Frontal area of the car, m2.</param>
    /// <returns>The noise; null when the trial shows no quantity.</returns>
    public static TrialNoise? Of(Trial trial, Scales scales, double frontalArea)
    {
        double step = trial.Shows is { } shown ? scales.WorthwhileSteps.GetValueOrDefault(shown, 1) : 1;
        return trial switch
        {
            { StandardError: > 0 and { } stated, Shows: not null } => new(stated, "as the rule states"),
            { Shows: EffectOn.FrontLift or EffectOn.RearLift } => new(
                Math.Max(step / 2, ProofKind.RideHeight.InstrumentError / Within95 / (0.6 * CoastMs * CoastMs * frontalArea)),
                $"what a ride height shows, {ProofKind.RideHeight.InstrumentError:0} N at best; {ProofKind.RideHeight.Basis}"),
            { Shows: EffectOn.Drag } => new(step, "a whole worthwhile step, because a day's coast-downs seldom tell less; our judgement"),
            { Shows: not null } => new(step / 2, "half of a worthwhile step; our judgement"),
            _ => null,
        };
    }
}
