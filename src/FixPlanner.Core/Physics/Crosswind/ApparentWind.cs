using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Crosswind;

/// <summary>The wind that the car feels: its own and nature's together.</summary>
/// <param name="Speed">V_r, air past the car.</param>
/// <param name="Yaw">ψ, from straight ahead; positive from the side from which the wind blows.</param>
public readonly record struct ApparentWind(AirSpeed Speed, Angle Yaw)
{
    /// <summary>Adds the wind to the speed of the car.</summary>
    /// <param name="road">V over the road.</param>
    /// <param name="headwind">Part of the wind against the car; negative from behind.</param>
    /// <param name="crosswind">Part of the wind from the side.</param>
    /// <returns>What the car feels.</returns>
    /// <validity>Steady wind at the height of the car: about 0.7 of that of a weather mast in open country (from memory).</validity>
    /// <uncertainty>That of the wind, usually 30 %.</uncertainty>
    /// <source key="textbook" place="vector sum">ψ = atan2(W_c, V + W_h), V_r = √((V + W_h)² + W_c²)</source>
    public static ApparentWind Of(RoadSpeed road, AirSpeed headwind, AirSpeed crosswind)
    {
        double along = road.MetresPerSecond + headwind.MetresPerSecond;
        return new(
            AirSpeed.FromMetresPerSecond(Math.Sqrt((along * along) + (crosswind.MetresPerSecond * crosswind.MetresPerSecond))),
            Angle.FromRadians(Math.Atan2(crosswind.MetresPerSecond, along)));
    }
}
