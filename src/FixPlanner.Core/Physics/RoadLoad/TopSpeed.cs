using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>How fast the car goes: by power, and by gearing.</summary>
public static class TopSpeed
{
    private const double SlowestMetresPerSecond = 0.1;
    private const double FastestMetresPerSecond = 140;

    /// <summary>Speed at which the power at the wheels is used up.</summary>
    /// <param name="car">The car.</param>
    /// <param name="day">Air, wind, slope.</param>
    /// <param name="atWheels">Power at the wheels, above zero.</param>
    /// <returns>V; null when the car would pass 140 m/s (a long steep descent), where the formulas end.</returns>
    /// <validity>Power taken as constant near the top, that is, the gear fits. No slip.</validity>
    /// <uncertainty>A third of the sum of those of power and CdA: 6 % of either is 2 % of speed.</uncertainty>
    /// <source key="gillespie" place="ch. 4 (from memory)">F(V) V = P, by bisection</source>
    /// <exception cref="ArgumentOutOfRangeException">Power not above zero.</exception>
    public static RoadSpeed? ByPower(RoadCar car, RoadDay day, Power atWheels)
    {
        double watts = Valid.Positive(atWheels.Watts, "W");
        if (Needed(car, day, FastestMetresPerSecond) < watts)
        {
            return null;
        }

        double low = SlowestMetresPerSecond;
        double high = FastestMetresPerSecond;
        for (int halving = 0; halving < 60; halving++)
        {
            double middle = (low + high) / 2;
            if (Needed(car, day, middle) < watts)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return RoadSpeed.FromMetresPerSecond((low + high) / 2);
    }

    /// <summary>Speed at which the engine reaches its highest turning speed in a gear.</summary>
    /// <param name="rollingRadius">r of the driven wheel under load: about 0.97 of half its outer diameter.</param>
    /// <param name="turnsPerMinute">n, highest allowed.</param>
    /// <param name="totalRatio">i: gearbox times axle.</param>
    /// <returns>V.</returns>
    /// <validity>No slip; tyre growth at speed adds up to 1 %.</validity>
    /// <uncertainty>2 %, mostly the radius.</uncertainty>
    /// <source key="textbook" place="kinematics">V = 2 π r n / (60 i)</source>
    /// <exception cref="ArgumentOutOfRangeException">A value not above zero.</exception>
    public static RoadSpeed ByGearing(Length rollingRadius, double turnsPerMinute, double totalRatio) =>
        RoadSpeed.FromMetresPerSecond(2 * Math.PI * Valid.Positive(rollingRadius.Metres, "m") * Valid.Positive(turnsPerMinute, "1/min") / (60 * Valid.Positive(totalRatio, "(a ratio)")));

    /// <summary>How much top speed answers to drag: one percent less CdA gives s percent more speed.</summary>
    /// <param name="car">The car.</param>
    /// <param name="day">Air and slope; in still air.</param>
    /// <param name="speed">The top speed.</param>
    /// <returns>s, 0 to 1/3: about 0.30 for a boxy car.</returns>
    /// <validity>Small changes, constant power, no wind.</validity>
    /// <uncertainty>0.02, from the tyres.</uncertainty>
    /// <source key="own-derivation" place="derivative of F(V) V = P">s = F_a / (3 F_a + F_r + F_g + V dF_r/dV)</source>
    public static double Elasticity(RoadCar car, RoadDay day, RoadSpeed speed)
    {
        RoadForces forces = RoadLoadSum.At(car, day with { Headwind = default }, speed);
        double rise = car.Mass.Kilograms * RoadLoadSum.StandardGravity * Math.Cos(day.Slope.Radians) * car.Rolling.SpeedTimesSlope(speed);
        return forces.Air.Newtons / ((3 * forces.Air.Newtons) + forces.Rolling.Newtons + forces.Slope.Newtons + rise);
    }

    private static double Needed(RoadCar car, RoadDay day, double metresPerSecond)
    {
        RoadSpeed speed = RoadSpeed.FromMetresPerSecond(metresPerSecond);
        return RoadLoadSum.AtWheels(RoadLoadSum.At(car, day, speed).Total, speed).Watts;
    }
}
