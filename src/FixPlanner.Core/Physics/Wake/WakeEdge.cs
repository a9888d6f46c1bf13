namespace FixPlanner.Core.Physics.Wake;

/// <summary>The edge of the tail whose air turns into the wake most.</summary>
public enum WakeEdge
{
    /// <summary>The taps are too close to tell.</summary>
    NotTold,

    /// <summary>The rear edge of the roof.</summary>
    Roof,

    /// <summary>The rear edge of the underbody: road dirt comes this way.</summary>
    Underbody,
}
