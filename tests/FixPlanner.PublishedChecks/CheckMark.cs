namespace FixPlanner.PublishedChecks;

/// <summary>How we know a printed value.</summary>
public enum CheckMark
{
    /// <summary>Seen in the named document.</summary>
    Read,

    /// <summary>Seen in a text, test or forum that quotes the named document.</summary>
    SecondHand,

    /// <summary>Remembered, not looked up again.</summary>
    FromMemory,

    /// <summary>Computed by ourselves with another program: guards against change, not against error.</summary>
    SelfComputed,
}
