namespace FixPlanner.Core.Physics.Vents;

/// <summary>The answer about one vent over a band of speeds.</summary>
public enum VentDirection
{
    /// <summary>Nothing moves.</summary>
    NoFlow,

    /// <summary>Takes in at every speed of the band.</summary>
    AlwaysIn,

    /// <summary>Lets out at every speed of the band.</summary>
    AlwaysOut,

    /// <summary>Turns at one or more speeds.</summary>
    Turns,
}
