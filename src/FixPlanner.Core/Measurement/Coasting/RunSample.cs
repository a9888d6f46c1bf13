using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>One line of a logger: when and how fast.</summary>
/// <param name="Time">Since the start of the file's clock.</param>
/// <param name="Speed">Over the road.</param>
public readonly record struct RunSample(Duration Time, RoadSpeed Speed);
