namespace FixPlanner.Core.Physics.Vents;

/// <summary>Where air is meant to leave the cabin.</summary>
public enum CabinOutlet
{
    /// <summary>Nobody looked: a small outlet of unknown size at the tail.</summary>
    NotKnown,

    /// <summary>Grilles on the rear pillars.</summary>
    RearPillars,

    /// <summary>Through the boot or the tail.</summary>
    BootOrTail,

    /// <summary>Flaps behind or under the rear bumper.</summary>
    UnderRearBumper,

    /// <summary>No outlet: door gaps alone.</summary>
    DoorGapsOnly,
}
