using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.FlowPaint;

/// <summary>Whether flow paint can work on the day, and what stands in the way.</summary>
/// <param name="Verdict">The answer in one word.</param>
/// <param name="Obstacles">What stands in the way; empty when paint works.</param>
/// <param name="Changes">What would have to change, one at a time, for paint to work; may be empty.</param>
/// <param name="Figures">The computed figures; nothing when the carrier has none.</param>
public sealed record PaintAnswer(
    PaintVerdict Verdict,
    IReadOnlyList<PaintObstacle> Obstacles,
    IReadOnlyList<PaintChange> Changes,
    PaintFigures? Figures);

/// <summary>The figures behind an answer about paint.</summary>
/// <param name="SetQuickest">Half the likely time.</param>
/// <param name="SetLikely">Time until the pattern stands.</param>
/// <param name="SetSlowest">Twice the likely time.</param>
/// <param name="Pull">Wind over gravity at half the fresh thickness; infinite on a level panel.</param>
public sealed record PaintFigures(Duration SetQuickest, Duration SetLikely, Duration SetSlowest, double Pull);

/// <summary>The answer about paint in one word.</summary>
public enum PaintVerdict
{
    /// <summary>Paint works today.</summary>
    PaintWorks,

    /// <summary>Use tufts.</summary>
    UseTufts,

    /// <summary>No figure is known for the carrier: use tufts, or try it first.</summary>
    NotKnown,
}

/// <summary>What stands in the way of paint.</summary>
public enum PaintObstacle
{
    /// <summary>The carrier has no figures.</summary>
    NoFigures,

    /// <summary>It stands before the steady speed is reached, so it shows the acceleration.</summary>
    DriesTooSoon,

    /// <summary>It is still wet when the run ends, so it smears under braking.</summary>
    DriesTooLate,

    /// <summary>Gravity turns or drips it at this speed on this panel.</summary>
    Drips,

    /// <summary>The panel is as warm as the flash point, or within ten kelvins of it.</summary>
    CanBeLit,

    /// <summary>It freezes, or frost forms under it.</summary>
    Freezes,

    /// <summary>It beads on wax and paint: a demonstration only.</summary>
    Beads,
}

/// <summary>One change that would make paint work by itself.</summary>
/// <param name="Carrier">Another carrier, all else equal; nothing when another speed is meant.</param>
/// <param name="FromSpeed">Slowest steady speed that would do; nothing when another carrier is meant.</param>
/// <param name="ToSpeed">Fastest steady speed that would do; nothing when another carrier is meant.</param>
public sealed record PaintChange(Carrier? Carrier, AirSpeed? FromSpeed, AirSpeed? ToSpeed);
