using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.Planning;

/// <summary>How finely the result of a trial can be told from noise.</summary>
internal static class TrialNoise
{
    /// <summary>
    /// The standard error that the pack states for the trial; where it states none, half of the worthwhile step of the quantity, as its trials for noise
    /// do, and for drag a whole one, because a day's coast-downs seldom tell less (judgement, no source).
    /// </summary>
    /// <param name="trial">The trial.</param>
    /// <param name="scales">Worthwhile steps.</param>
    /// <returns>In the unit of the quantity; null when the trial shows none.</returns>
    public static double? StandardError(Trial trial, Scales scales) => trial switch
    {
        { StandardError: > 0 and { } stated } => stated,
        { Shows: { } on } => scales.WorthwhileSteps.GetValueOrDefault(on, 1) * (on == EffectOn.Drag ? 1 : 0.5),
        _ => null,
    };
}
