namespace FixPlanner.Core.Physics.Glass;

/// <summary>How a pane is held.</summary>
public enum Glazing
{
    /// <summary>Nobody looked: taken as old rubber.</summary>
    NotKnown,

    /// <summary>Rubber with a locking strip.</summary>
    RubberWithStrip,

    /// <summary>Rubber of a section that has no strip.</summary>
    RubberWithoutStrip,

    /// <summary>Glued to the flange.</summary>
    Bonded,

    /// <summary>Clamped or bolted at points.</summary>
    Bolted,
}
