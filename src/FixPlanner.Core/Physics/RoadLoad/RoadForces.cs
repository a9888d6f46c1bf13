using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>The forces that the driven wheels must overcome, one by one; positive against the car.</summary>
/// <param name="Air">Drag.</param>
/// <param name="Rolling">Tyres.</param>
/// <param name="Slope">Weight along the road.</param>
/// <param name="Inertia">What speeding up takes.</param>
public readonly record struct RoadForces(Force Air, Force Rolling, Force Slope, Force Inertia)
{
    /// <summary>Their sum.</summary>
    public Force Total => Air + Rolling + Slope + Inertia;
}
