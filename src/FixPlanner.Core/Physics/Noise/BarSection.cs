namespace FixPlanner.Core.Physics.Noise;

/// <summary>What a thin part across the flow looks like when cut through.</summary>
public enum BarSection
{
    /// <summary>Round: aerial, tube of a rack.</summary>
    Round,

    /// <summary>Square, edges sharp: square tube of a rack.</summary>
    Square,

    /// <summary>A flat strip, its broad side to the wind.</summary>
    FlatAcrossFlow,

    /// <summary>An angle or H section.</summary>
    AngleOrH,

    /// <summary>A strip about twice as long along the flow as it is thick.</summary>
    StripAlongFlow,
}
