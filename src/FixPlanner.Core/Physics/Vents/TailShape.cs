namespace FixPlanner.Core.Physics.Vents;

/// <summary>The shape of the tail, for the pressure on the rear glass and at the tail leaks.</summary>
public enum TailShape
{
    /// <summary>Not known: the widest range.</summary>
    NotKnown,

    /// <summary>Estate, hatch or van: the rear glass lies in the wake.</summary>
    SquareBack,

    /// <summary>Notchback with the flow off the rear glass.</summary>
    NotchbackSeparated,

    /// <summary>Notchback with the flow on the rear glass.</summary>
    NotchbackAttached,

    /// <summary>Slope of 25 to 30 degrees with strong edge vortices.</summary>
    Fastback,
}
