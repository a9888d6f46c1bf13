namespace FixPlanner.Core.Physics.Vents;

/// <summary>Where air enters the engine bay.</summary>
public enum BayInlet
{
    /// <summary>Nobody looked: taken as the nose with a wide range.</summary>
    NotKnown,

    /// <summary>Grille in the nose.</summary>
    Nose,

    /// <summary>From below.</summary>
    Below,

    /// <summary>Scoops on the sides, rear engine.</summary>
    SideScoops,

    /// <summary>Louvres in the engine lid.</summary>
    LidLouvres,
}
