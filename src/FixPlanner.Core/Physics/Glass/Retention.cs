using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Glass;

/// <summary>What clips, tabs or straps at the edge of a pane must carry.</summary>
public static class Retention
{
    /// <summary>Design load of one clip in the middle of a long side, the rubber counted as nothing.</summary>
    /// <param name="peakEdge">Peak edge load in the adverse case.</param>
    /// <param name="spacing">Between clips along the edge, above zero.</param>
    /// <param name="safetyFactor">At least 1.</param>
    /// <returns>Force that the clip and its fixing must hold.</returns>
    /// <validity>Clips at the middle of the long sides, soft pads under them, no bolt through the glass.</validity>
    /// <uncertainty>Uneven fit: one clip may carry its neighbour's share. The factor of two is for that.</uncertainty>
    /// <source key="own-derivation" place="edge load over the length that a clip serves">F = SF R s</source>
    /// <exception cref="ArgumentOutOfRangeException">A value outside its range.</exception>
    public static Force ForClip(LineLoad peakEdge, Length spacing, double safetyFactor = AdvisorySpeed.SafetyFactor)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(safetyFactor, 1);
        return Force.FromNewtons(safetyFactor * peakEdge.NewtonsPerMetre * Valid.Positive(spacing.Metres, "m", nameof(spacing)));
    }

    /// <summary>Share of the pull, safety factor and all, that the rubber cannot be trusted with.</summary>
    /// <param name="peakEdge">Peak edge load.</param>
    /// <param name="hold">What is believed of the edge; its low end counts.</param>
    /// <param name="safetyFactor">At least 1.</param>
    /// <returns>0 where the rubber is enough, towards 1 where it is as good as nothing.</returns>
    /// <validity>Shows what retention is for; parts are still made for the whole load.</validity>
    /// <uncertainty>That of the hold.</uncertainty>
    /// <source key="own-derivation" place="load beyond the low end of the hold">1 - r / (SF R), not below 0</source>
    /// <exception cref="ArgumentOutOfRangeException">Safety factor below 1.</exception>
    public static double ShareBeyondRubber(LineLoad peakEdge, GlassHold hold, double safetyFactor = AdvisorySpeed.SafetyFactor)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(safetyFactor, 1);
        double asked = safetyFactor * peakEdge.NewtonsPerMetre;
        return asked <= 0 ? 0 : Math.Max(0, 1 - (hold.Low.NewtonsPerMetre / asked));
    }
}
