using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>An opening of which pressure and size are known only within a range.</summary>
/// <param name="Likely">The opening at its likely values.</param>
/// <param name="PressureCoefficient">Spread of its outer pressure coefficient; has no meaning for an inner opening.</param>
/// <param name="Size">Spread of its size as a factor on the likely one.</param>
public sealed record UncertainOpening(Opening Likely, Uncertain PressureCoefficient, Uncertain Size)
{
    /// <summary>Spread of what work on it left of it, as a factor on the likely outcome; certain where nobody works on it.</summary>
    public Uncertain Work { get; init; } = Uncertain.Triangular(Triangle.Certain(1));

    /// <summary>The opening in one draw.</summary>
    internal Opening Drawn(double pressureCoefficient, double size, double work) =>
        Likely with { PressureCoefficient = pressureCoefficient, Law = LawDrawn(size, work) };

    /// <summary>Its law in one draw.</summary>
    internal FlowLaw LawDrawn(double size, double work) => size * work == 1 ? Likely.Law : Likely.Law.Scaled(size * work);
}
