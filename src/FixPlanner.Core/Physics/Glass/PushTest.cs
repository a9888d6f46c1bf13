namespace FixPlanner.Core.Physics.Glass;

/// <summary>What a push of about 100 N on the inner upper corners did.</summary>
public enum PushTest
{
    /// <summary>Nobody pushed.</summary>
    NotDone,

    /// <summary>Nothing moved.</summary>
    Firm,

    /// <summary>It creaked, or the lip opened a hair.</summary>
    Creaks,

    /// <summary>It moved, or a gap showed.</summary>
    Moves,
}
