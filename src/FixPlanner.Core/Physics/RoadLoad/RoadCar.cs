using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>What the road load needs to know of a car.</summary>
/// <param name="Mass">m, with people and load.</param>
/// <param name="DragArea">CdA.</param>
/// <param name="Rolling">The tyres.</param>
public sealed record RoadCar(Mass Mass, DragArea DragArea, RollingResistance Rolling)
{
    /// <summary>The same car with its drag area changed.</summary>
    /// <param name="change">Negative for less drag.</param>
    /// <returns>The car.</returns>
    /// <validity>The change must leave a drag area above zero.</validity>
    /// <uncertainty>That of the change.</uncertainty>
    /// <source key="own-derivation" place="sum">CdA' = CdA + ΔCdA</source>
    /// <exception cref="ArgumentOutOfRangeException">More taken away than there is.</exception>
    public RoadCar With(DragAreaChange change) => this with { DragArea = DragArea.FromSquareMetres(DragArea.SquareMetres + change.SquareMetres) };
}
