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

    /// <summary>Inside minus outside coefficient below which no gate goes without a manometer reading: the high end of 0.4 to 0.7 for a shut car, from memory.</summary>
    public const double UnmeasuredFloor = 0.7;

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

    /// <summary>The coefficient that a safety gate works with: never cleared by guessed pressures.</summary>
    /// <param name="computedBefore">Inside minus outside as computed for the car as it is.</param>
    /// <param name="changeByWork">Change by planned seals and vents; null for none.</param>
    /// <param name="measuredBefore">Inside minus outside read with a manometer on this car; null if nobody did.</param>
    /// <returns>The reading, or the larger of the computed high end and the floor; a rise by the work is added, a fall is not credited.</returns>
    /// <validity>A reading stands for the state of the car in which it was taken.</validity>
    /// <uncertainty>The floor is from memory; it costs a careful owner one afternoon with a manometer to replace it.</uncertainty>
    /// <source key="own-derivation" place="a gate is overridden by a measurement, never by a cheaper assumption">max(0.7, high) + max(0, high of the change)</source>
    public static double ForGate(Spread computedBefore, Spread? changeByWork, double? measuredBefore) =>
        (measuredBefore ?? Math.Max(UnmeasuredFloor, computedBefore.High)) + Math.Max(0, changeByWork?.High ?? 0);
}
