using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>One piece of a vent along the base of the windscreen.</summary>
/// <param name="Place">Middle of the piece: -1 at the left pillar, 0 in the middle of the car, 1 at the right pillar.</param>
/// <param name="PressureCoefficient">Outside, at that place.</param>
/// <param name="Flow">Into the car positive.</param>
public sealed record ScreenBaseStation(double Place, double PressureCoefficient, MassFlow Flow);
