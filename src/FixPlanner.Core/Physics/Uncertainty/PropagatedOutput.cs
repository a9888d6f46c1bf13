using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Uncertainty;

/// <summary>The range of one output and what makes it wide.</summary>
/// <param name="Spread">5 %, mean, 95 % of the draws that had an answer; null when none had.</param>
/// <param name="Shares">Inputs that are not certain with their share of the variance, largest first; empty when the output does not vary.</param>
/// <param name="Missing">Draws without an answer.</param>
public sealed record PropagatedOutput(Spread? Spread, IReadOnlyList<VarianceShare> Shares, int Missing)
{
    /// <summary>The input that it would help most to know better; null when the output does not vary.</summary>
    public string? MattersMost => Shares.Count > 0 ? Shares[0].Input : null;
}
