namespace FixPlanner.Core.Physics.Vents;

/// <summary>Where air leaves the engine bay.</summary>
public enum BayOutlet
{
    /// <summary>Nobody looked: taken as under the car with a wide range.</summary>
    NotKnown,

    /// <summary>Under the car.</summary>
    UnderTheCar,

    /// <summary>Wheel arches.</summary>
    WheelArches,

    /// <summary>A slot at the base of the windscreen.</summary>
    SlotAtScreenBase,

    /// <summary>Louvres in the lid.</summary>
    LidLouvres,

    /// <summary>Behind the car, rear engine.</summary>
    BehindTheCar,
}
