namespace FixPlanner.Core.Physics.Vents;

/// <summary>How steep the windscreen stands.</summary>
public enum ScreenShape
{
    /// <summary>Not known.</summary>
    NotKnown,

    /// <summary>30 to 40 degrees from vertical.</summary>
    Upright,

    /// <summary>60 degrees from vertical and more.</summary>
    Raked,
}
