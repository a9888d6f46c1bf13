using FixPlanner.Core.Physics.Air;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Crosswind;

/// <summary>What a side wind does to the car.</summary>
/// <param name="Wind">What the car feels.</param>
/// <param name="Force">F_y at the middle of the wheelbase, downwind.</param>
/// <param name="YawMoment">N about the middle of the wheelbase, nose downwind.</param>
public sealed record SideLoad(ApparentWind Wind, Force Force, Moment YawMoment)
{
    /// <summary>Yaw at which the straight rise ends; beyond it the coefficients stay (from memory: they flatten).</summary>
    public const double StraightUpToDegrees = 20;

    /// <summary>Gust on an exposed bridge or at the end of a wood, as a factor on the mean wind (from memory).</summary>
    public const double ExposedGustFactor = 1.5;

    /// <summary>Force and moment.</summary>
    /// <param name="wind">What the car feels.</param>
    /// <param name="density">ρ.</param>
    /// <param name="frontal">A, frontal area.</param>
    /// <param name="wheelbase">l.</param>
    /// <param name="sideForcePerDegree">C_Y' for each degree.</param>
    /// <param name="yawMomentPerDegree">C_N' for each degree.</param>
    /// <returns>The load.</returns>
    /// <validity>Steady wind; yaw up to 20 degrees straight, then flat.</validity>
    /// <uncertainty>25 %: the coefficients of an unknown car.</uncertainty>
    /// <source key="hucho" place="ch. 5 definitions (from memory)">F_y = q_r A C_Y' ψ; N = q_r A l C_N' ψ</source>
    public static SideLoad Of(ApparentWind wind, AirDensity density, Area frontal, Length wheelbase, double sideForcePerDegree, double yawMomentPerDegree)
    {
        double pressureArea = DynamicPressure.Of(density, wind.Speed).Pascals * frontal.SquareMetres;
        double degrees = Math.Clamp(wind.Yaw.Degrees, -StraightUpToDegrees, StraightUpToDegrees);
        return new(
            wind,
            Quantities.Force.FromNewtons(pressureArea * sideForcePerDegree * degrees),
            Moment.FromNewtonMetres(pressureArea * wheelbase.Metres * yawMomentPerDegree * degrees));
    }

    /// <summary>Share of the weight that the tyres must hold sideways: what the path demands.</summary>
    /// <param name="mass">m.</param>
    /// <returns>a_y / g.</returns>
    /// <validity>As the force.</validity>
    /// <uncertainty>As the force.</uncertainty>
    /// <source key="textbook" place="Newton's second law">a_y = F_y / m</source>
    public double PathDemand(Mass mass) => Force.Newtons / (mass.Kilograms * RoadLoad.RoadLoadSum.StandardGravity);

    /// <summary>Angle of the front wheels that keeps the car straight in this wind.</summary>
    /// <param name="wheelbase">l.</param>
    /// <param name="frontStiffness">C_f: side force of the front axle for each radian of slip.</param>
    /// <param name="rearStiffness">C_r of the rear axle.</param>
    /// <returns>δ, into the wind positive.</returns>
    /// <validity>Small slip angles, steady wind; a gust asks for more before the car has settled.</validity>
    /// <uncertainty>40 %: tyres and coefficients.</uncertainty>
    /// <source key="own-derivation" place="balance of force and moment on two axles at zero turn">δ = (F/2 + N/l) / C_f − (F/2 − N/l) / C_r</source>
    /// <exception cref="ArgumentOutOfRangeException">A stiffness or the wheelbase not above zero.</exception>
    public Angle SteerToHold(Length wheelbase, double frontStiffness, double rearStiffness)
    {
        double couple = YawMoment.NewtonMetres / Valid.Positive(wheelbase.Metres, "m");
        double front = (Force.Newtons / 2) + couple;
        double rear = (Force.Newtons / 2) - couple;
        return Angle.FromRadians((front / Valid.Positive(frontStiffness, "N/rad")) - (rear / Valid.Positive(rearStiffness, "N/rad")));
    }
}
