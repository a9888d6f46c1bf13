using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>Road load: everything that holds the car back, and the power that it takes.</summary>
public static class RoadLoadSum
{
    internal const double StandardGravity = 9.80665;

    /// <summary>Efficiency from the crankshaft to the wheels of a manual gearbox in its upper gears; 0.88 to 0.94 (from memory).</summary>
    public const double UsualDrivelineEfficiency = 0.92;

    /// <summary>Forces at a steady speed.</summary>
    /// <param name="car">The car.</param>
    /// <param name="day">Air, wind, slope.</param>
    /// <param name="speed">V over the road.</param>
    /// <returns>The forces; inertia is zero.</returns>
    /// <validity>No slip, no wheelspin, wind along the road. Idling losses of gearbox and brakes count as rolling.</validity>
    /// <uncertainty>Tyres nobody measured ±20 % of their part; drag as CdA.</uncertainty>
    /// <source key="gillespie" place="ch. 4 (from memory)">F = m g cos θ f(V) + q CdA + m g sin θ</source>
    public static RoadForces At(RoadCar car, RoadDay day, RoadSpeed speed)
    {
        ArgumentNullException.ThrowIfNull(car);
        ArgumentNullException.ThrowIfNull(day);
        double weight = car.Mass.Kilograms * StandardGravity;
        AirSpeed past = AirSpeed.FromMetresPerSecond(speed.MetresPerSecond) + day.Headwind;
        return new(
            AirDrag.Of(car.DragArea, past, day.Density),
            Force.FromNewtons(weight * Math.Cos(day.Slope.Radians) * car.Rolling.Coefficient(speed)),
            Force.FromNewtons(weight * Math.Sin(day.Slope.Radians)),
            default);
    }

    /// <summary>Forces while the speed changes.</summary>
    /// <param name="car">The car.</param>
    /// <param name="day">Air, wind, slope.</param>
    /// <param name="speed">V over the road.</param>
    /// <param name="acceleration">Positive when speeding up.</param>
    /// <param name="effectiveMass">m_e, from <see cref="RotatingMass"/>.</param>
    /// <returns>The forces.</returns>
    /// <validity>As at steady speed.</validity>
    /// <uncertainty>As at steady speed, and 1 % of the mass.</uncertainty>
    /// <source key="gillespie" place="ch. 4 (from memory)">F = … + m_e dv/dt</source>
    public static RoadForces At(RoadCar car, RoadDay day, RoadSpeed speed, Acceleration acceleration, Mass effectiveMass) =>
        At(car, day, speed) with { Inertia = Force.FromNewtons(effectiveMass.Kilograms * acceleration.MetresPerSecondSquared) };

    /// <summary>Power at the driven wheels.</summary>
    /// <param name="force">F at the wheels.</param>
    /// <param name="speed">V over the road.</param>
    /// <returns>P.</returns>
    /// <validity>No slip.</validity>
    /// <uncertainty>Sum of those of force and speed.</uncertainty>
    /// <source key="textbook" place="definition">P = F V</source>
    public static Power AtWheels(Force force, RoadSpeed speed) => Power.FromWatts(force.Newtons * speed.MetresPerSecond);

    /// <summary>Power at the crankshaft.</summary>
    /// <param name="atWheels">P at the wheels.</param>
    /// <param name="drivelineEfficiency">η, above 0 up to 1.</param>
    /// <returns>P_e.</returns>
    /// <validity>Driving, not overrun. Old rated power was often without fan and silencer: subtract 10 to 20 % from such figures.</validity>
    /// <uncertainty>3 % of the power.</uncertainty>
    /// <source key="gillespie" place="ch. 2 (from memory)">P_e = P / η</source>
    /// <exception cref="ArgumentOutOfRangeException">Efficiency outside 0.5 to 1.</exception>
    public static Power AtEngine(Power atWheels, double drivelineEfficiency) =>
        Power.FromWatts(atWheels.Watts / Valid.Within(drivelineEfficiency, 0.5, 1, "(a share)"));
}
