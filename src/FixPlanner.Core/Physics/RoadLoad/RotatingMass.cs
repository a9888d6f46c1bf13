using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>Wheels and engine must be spun up as well: the mass that the car seems to have when it speeds up or slows down.</summary>
public static class RotatingMass
{
    /// <summary>Effective mass while coasting out of gear.</summary>
    /// <param name="mass">m, car with people.</param>
    /// <returns>m_e.</returns>
    /// <validity>Passenger cars, clutch out or neutral.</validity>
    /// <uncertainty>1 % of the mass, and with it of every drag figure from a coast-down: weigh wheels or quote it.</uncertainty>
    /// <source key="coast-down-practice" place="3 % (from memory)">m_e = 1.03 m</source>
    public static Mass OutOfGear(Mass mass) => 1.03 * mass;

    /// <summary>Effective mass in a gear.</summary>
    /// <param name="mass">m, car with people.</param>
    /// <param name="totalRatio">i: engine turns for one turn of the wheel, gearbox times axle.</param>
    /// <returns>m_e.</returns>
    /// <validity>Four-cylinder cars, ratio 1 to 20.</validity>
    /// <uncertainty>A third of the addition.</uncertainty>
    /// <source key="gillespie" place="ch. 2 (from memory)">m_e = m (1.04 + 0.0025 i²)</source>
    /// <exception cref="ArgumentOutOfRangeException">Ratio outside 0 to 30.</exception>
    public static Mass InGear(Mass mass, double totalRatio)
    {
        double ratio = Valid.Within(totalRatio, 0, 30, "(a ratio)");
        return (1.04 + (0.0025 * ratio * ratio)) * mass;
    }
}
