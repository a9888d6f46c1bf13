namespace FixPlanner.Core.Physics.Glass;

/// <summary>What a look at the rubber found.</summary>
public enum RubberCondition
{
    /// <summary>Nobody looked.</summary>
    NotKnown,

    /// <summary>New or supple, no gaps.</summary>
    Supple,

    /// <summary>Aged but elastic, no gaps.</summary>
    Aged,

    /// <summary>Hard, shrunk, fine cracks, or sealed again once.</summary>
    Hard,

    /// <summary>Perished, strip missing, water leaks, or the glass moves by hand.</summary>
    Perished,
}
