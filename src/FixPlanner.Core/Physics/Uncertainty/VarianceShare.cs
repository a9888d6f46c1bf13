namespace FixPlanner.Core.Physics.Uncertainty;

/// <summary>How much of the spread of an output comes from one input.</summary>
/// <param name="Input">Name of the input.</param>
/// <param name="Share">0 to 1; the shares of an output add up to one.</param>
public readonly record struct VarianceShare(string Input, double Share);
