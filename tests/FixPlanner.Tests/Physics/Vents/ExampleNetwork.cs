using FixPlanner.Core.Physics.Vents;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Vents;

/// <summary>The invented car of the worked example: bay and cabin, eight openings.</summary>
internal static class ExampleNetwork
{
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

    public static AirOnCar Air(double kilometresPerHour, double density = 1.2) => new(
        RoadSpeed.FromKilometresPerHour(kilometresPerHour), AirDensity.FromKilogramsPerCubicMetre(density), Temperature.FromDegreesCelsius(20));

    private static Opening Outer(string id, string into, double area, double discharge, double pressureCoefficient, double height) =>
        Opening.FromOutside(id, into, new Orifice(Area.FromSquareMetres(area), discharge), pressureCoefficient, Length.FromMetres(height));
}
