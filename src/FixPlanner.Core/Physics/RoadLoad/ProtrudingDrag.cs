using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>Drag of what sticks out: gutters, mirrors, racks, lamps, badges.</summary>
public static class ProtrudingDrag
{
    /// <summary>Drag area of one part.</summary>
    /// <param name="coefficient">C of its shape on its own frontal area: strip across the wind 1.2, round bar 1.1, rounded mirror 0.4 to 0.5, faired 0.1 to 0.2 (from memory).</param>
    /// <param name="frontal">Area seen from the front: for a gutter along the wind its front face only.</param>
    /// <param name="localPressureCoefficient">Cp of the skin where it stands, up to 1: below zero the air there is faster than the car.</param>
    /// <param name="height">h above the skin.</param>
    /// <param name="boundaryLayer">δ, thickness of the slow layer there: 10 mm at the front edge of a roof, 30 mm at its end.</param>
    /// <returns>CdA of the part.</returns>
    /// <validity>Single part on an attached surface; a part in dead air costs nothing. Interference (a gutter that separates the flow behind it) is extra and often larger.</validity>
    /// <uncertainty>±40 %: Cp and δ are guesses on an old car.</uncertainty>
    /// <source key="hoerner" place="ch. 5 and 8 (from memory)">CdA = C A (1 − Cp) k, k = 0.75 (h/δ)^(1/3) for h below δ, else rising to 1 as the part leaves the layer</source>
    /// <exception cref="ArgumentOutOfRangeException">Cp above 1, or a size below zero.</exception>
    public static DragAreaChange Of(double coefficient, Area frontal, double localPressureCoefficient, Length height, Length boundaryLayer)
    {
        double faster = 1 - Valid.Within(localPressureCoefficient, -6, 1, "(a coefficient)");
        double inLayer = LayerFactor(Valid.Positive(height.Metres, "m"), Valid.NotNegative(boundaryLayer.Metres, "m"));
        return DragAreaChange.FromSquareMetres(Valid.NotNegative(coefficient, "(a coefficient)") * Valid.NotNegative(frontal.SquareMetres, "m2") * faster * inLayer);
    }

    /// <summary>
    /// Mean dynamic pressure over the height, as a share. Inside the layer the rule of Hoerner; above it the part inside counts 0.75
    /// and the rest fully, so that the two meet at h = δ.
    /// </summary>
    internal static double LayerFactor(double height, double layer) =>
        height < layer ? 0.75 * Math.Cbrt(height / layer) : 1 - (0.25 * layer / height);
}
