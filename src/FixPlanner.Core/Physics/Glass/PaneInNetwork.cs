using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Glass;

/// <summary>A pane as part of a car: what is inside of it comes from the vent network, what is outside from the shape.</summary>
/// <param name="Pane">The pane.</param>
/// <param name="Compartment">The compartment inside, usually the cabin.</param>
/// <param name="Height">Of its middle above the road.</param>
/// <param name="OutsideCoefficient">Range of the mean pressure coefficient outside.</param>
public sealed record PaneInNetwork(Pane Pane, string Compartment, Length Height, Triangle OutsideCoefficient)
{
    /// <summary>Cabin coefficient of the adverse case: a front window or a big cowl flap wide open, ram at its rear edge (from memory, +0.2 to +0.3).</summary>
    public const double AdverseCabinCoefficient = 0.3;

    /// <summary>A rear glass with the outside range of a tail shape.</summary>
    /// <param name="pane">The pane.</param>
    /// <param name="tail">Shape of the tail.</param>
    /// <returns>The rear glass, 1 m above the road.</returns>
    public static PaneInNetwork RearGlass(Pane pane, TailShape tail) =>
        new(pane, Vents.Compartment.Cabin, Length.FromMetres(1.0), BodyPressures.RearGlass(tail));

    /// <summary>Inside minus outside coefficient if somebody opens the wrong window: it never counts as relief.</summary>
    /// <uncertainty>The sign of an open front window's effect is not sure; the adverse one is kept.</uncertainty>
    /// <source key="from-memory" place="cabin +0.2 to +0.3; outside the low end of the range">dCp = 0.3 - Cp low</source>
    public double AdverseCoefficientAcross => AdverseCabinCoefficient - OutsideCoefficient.Low;

    /// <summary>Inside minus outside coefficient for one solved network and one outside coefficient.</summary>
    /// <param name="solution">The network at this speed.</param>
    /// <param name="outsideCoefficient">Mean pressure coefficient outside.</param>
    /// <returns>Coefficient; not a number at rest in still air.</returns>
    public double CoefficientAcross(VentSolution solution, double outsideCoefficient) =>
        (solution.PressureIn(Compartment, Height).Pascals / solution.Air.DynamicPressure.Pascals) - outsideCoefficient;
}
