using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.PublishedChecks;

/// <summary>The invented car of our own worked example: bay and cabin, eight openings.</summary>
internal static class DemoNetwork
{
    public static VentNetwork Sealed => Car().Scaled(0.25, "door-seals", "tailgate");

    public static VentSolution At(double kilometresPerHour) => VentSolver.Solve(Car(), Air(kilometresPerHour));

    public static AirOnCar Air(double kilometresPerHour) => new(
        RoadSpeed.FromKilometresPerHour(kilometresPerHour), AirDensity.FromKilogramsPerCubicMetre(1.2), Temperature.FromDegreesCelsius(20));

    public static VentNetwork Car(double bayCelsius = 20) => new(
        [new Compartment("bay", Temperature.FromDegreesCelsius(bayCelsius)), new Compartment("cabin", Temperature.FromDegreesCelsius(20))],
        [
            Outer("grille", "bay", 0.060, 0.6, 0.70, 0.5),
            Outer("under-exit", "bay", 0.080, 0.6, -0.15, 0.2),
            Outer("bonnet-rear-gap", "bay", 0.012, 0.6, 0.35, 0.95),
            new Opening("bulkhead", "bay", "cabin", new Orifice(Area.FromSquareMetres(0.0008), 0.6), Length.FromMetres(0.7)),
            Outer("cowl", "cabin", 0.010, 0.5, 0.45, 1.0),
            Outer("extractor", "cabin", 0.006, 0.6, -0.15, 1.0),
            Outer("door-seals", "cabin", 0.004, 0.6, -0.45, 1.0),
            Outer("tailgate", "cabin", 0.0015, 0.6, -0.20, 0.8),
        ]);

    private static Opening Outer(string id, string into, double area, double discharge, double pressureCoefficient, double height) =>
        Opening.FromOutside(id, into, new Orifice(Area.FromSquareMetres(area), discharge), pressureCoefficient, Length.FromMetres(height));
}
