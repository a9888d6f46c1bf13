using FixPlanner.Core.Physics.Air;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>Drag of the air on the car.</summary>
public static class AirDrag
{
    /// <summary>Drag at steady speed.</summary>
    /// <param name="area">CdA: drag coefficient times frontal area.</param>
    /// <param name="speed">V: air past the car, not speed over the road; negative from behind, then it pushes.</param>
    /// <param name="density">ρ: from the day's weather, not a standard day.</param>
    /// <returns>D, rearward positive.</returns>
    /// <validity>Wind along the car; no wake of another car. Yaw raises CdA and is not in here (see the wind-averaged drag).</validity>
    /// <uncertainty>That of CdA, and twice that of the speed.</uncertainty>
    /// <source key="textbook" place="definition of the drag coefficient">D = q · CdA</source>
    public static Force Of(DragArea area, AirSpeed speed, AirDensity density) =>
        Force.FromNewtons(Math.Sign(speed.MetresPerSecond) * DynamicPressure.Of(density, speed).Pascals * area.SquareMetres);
}
