using FixPlanner.Core.Physics.Catalogue;

namespace FixPlanner.Commands;

/// <summary>One input of a model from one value to another.</summary>
/// <param name="Input">The input.</param>
/// <param name="From">Low end, in its unit.</param>
/// <param name="To">High end, in its unit.</param>
internal sealed record SweepRange(ModelInput Input, double From, double To);
