namespace FixPlanner.Core.Physics.Vents;

/// <summary>Where air is meant to enter the cabin.</summary>
public enum CabinInlet
{
    /// <summary>Nobody looked: taken as the screen base with a wide range.</summary>
    NotKnown,

    /// <summary>Grille at the base of the windscreen.</summary>
    ScreenBase,

    /// <summary>Duct from the nose.</summary>
    Nose,

    /// <summary>Flap or scoop on the side or the roof.</summary>
    SideOrRoof,

    /// <summary>Out of the engine bay: fumes come with it.</summary>
    EngineBay,

    /// <summary>No inlet: leaks alone.</summary>
    None,
}
