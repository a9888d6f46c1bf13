namespace FixPlanner.Core.Physics.Vents;

/// <summary>What makes a vent's direction depend on speed, or what holds it whatever the speed.</summary>
public enum VentDriver
{
    /// <summary>The pressures that the moving air puts on the body; alone they never turn a vent with speed.</summary>
    BodyPressure,

    /// <summary>A fan.</summary>
    Fan,

    /// <summary>Air lighter because it is hot.</summary>
    Heat,

    /// <summary>Natural wind, whose angle on the car changes with road speed.</summary>
    NaturalWind,

    /// <summary>Leaks whose flow does not go with the root of the pressure.</summary>
    LeakShape,

    /// <summary>Several of these together; none alone.</summary>
    Several,
}
