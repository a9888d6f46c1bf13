namespace FixPlanner.Core.Physics.Uncertainty;

/// <summary>What the draws gave for each output, in the order of the outputs.</summary>
/// <param name="Outputs">One for each output.</param>
public sealed record Propagated(IReadOnlyList<PropagatedOutput> Outputs);
