using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Proofs;

/// <summary>One reading of a gauge at one speed.</summary>
/// <param name="Speed">Air past the car; in calm air the road speed.</param>
/// <param name="Difference">First tap less second tap: for glass, inside less outside; for a vent, outside less inside.</param>
public readonly record struct PressureReading(AirSpeed Speed, PressureDifference Difference);
