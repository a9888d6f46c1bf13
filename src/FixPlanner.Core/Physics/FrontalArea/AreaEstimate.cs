using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.FrontalArea;

/// <summary>A frontal area found in one way, with its standard deviation.</summary>
/// <param name="Way">In plain words: by the rule, from parts, from a photo, from the mass.</param>
/// <param name="Value">A.</param>
/// <param name="Deviation">Standard deviation.</param>
public sealed record AreaEstimate(string Way, Area Value, Area Deviation)
{
    internal static AreaEstimate Of(string way, double squareMetres, double deviation) =>
        new(way, Area.FromSquareMetres(squareMetres), Area.FromSquareMetres(deviation));
}
