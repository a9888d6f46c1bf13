using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>What came of running a model: the answer at the likely values with its ranges, or every reason why it was refused.</summary>
public sealed record ModelOutcome
{
    /// <summary>The answer at the likely value of each input; null when refused.</summary>
    public ModelAnswer? Answer { get; init; }

    /// <summary>Every reason why there is no answer; empty when there is one.</summary>
    public IReadOnlyList<TextTrouble> Troubles { get; init; } = [];

    /// <summary>The values used, given or assumed, in the declared unit of each input.</summary>
    public IReadOnlyDictionary<string, Triangle> Used { get; init; } = new Dictionary<string, Triangle>();

    /// <summary>What the reader must know: values outside the range for which the formula was made, and what the model itself says.</summary>
    public IReadOnlyList<string> Warnings { get; init; } = [];

    /// <summary>Output name to its range and the inputs that make it; empty when every value is certain.</summary>
    public IReadOnlyDictionary<string, PropagatedOutput> Ranges { get; init; } = new Dictionary<string, PropagatedOutput>();

    internal static ModelOutcome Refused(IReadOnlyList<TextTrouble> troubles) => new() { Troubles = troubles };
}
