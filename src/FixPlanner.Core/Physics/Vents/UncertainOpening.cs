using FixPlanner.Core.Physics.Uncertainty;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>An opening of which pressure and size are known only within a range.</summary>
/// <param name="Likely">The opening at its likely values.</param>
/// <param name="PressureCoefficient">Spread of its outer pressure coefficient; has no meaning for an inner opening.</param>
/// <param name="Size">Spread of its size as a factor on the likely one.</param>
public sealed record UncertainOpening(Opening Likely, Uncertain PressureCoefficient, Uncertain Size)
{
    /// <summary>The opening in one draw.</summary>
    internal Opening Drawn(double pressureCoefficient, double size) =>
        Likely with { PressureCoefficient = pressureCoefficient, Law = size == 1 ? Likely.Law : Likely.Law.Scaled(size) };
}
