using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Crosswind;

/// <summary>Drag on the days as they come: wind from every side, and drag that rises with yaw.</summary>
public static class WindAveragedDrag
{
    // The integrand is smooth and periodic, for which equal steps converge faster than any power of their number.
    private const int Steps = 256;

    /// <summary>Drag area felt over all wind directions, over that in still air.</summary>
    /// <param name="road">V over the road, above the wind speed.</param>
    /// <param name="wind">w at the height of the car, any direction equally likely.</param>
    /// <param name="risePerSquareRadian">k: drag grows by the share k ψ². Illustrative 3.3: 10 % at 10 degrees.</param>
    /// <returns>The ratio, 1 or more: without any rise 1 + (w/V)².</returns>
    /// <validity>Yaw up to about 20 degrees, where ψ² still describes the rise.</validity>
    /// <uncertainty>k is known for few old cars: 1 to 6.</uncertainty>
    /// <source key="sae-j1252" place="idea of the wind average (from memory); integral own derivation">(1/π) ∫ (1 + k ψ²) (V_r / V)² dφ from 0 to π</source>
    /// <exception cref="ArgumentOutOfRangeException">Wind not below the road speed, or k below zero.</exception>
    public static double Ratio(RoadSpeed road, AirSpeed wind, double risePerSquareRadian)
    {
        double v = Valid.Positive(road.MetresPerSecond, "m/s");
        double w = Valid.Within(wind.MetresPerSecond, 0, v, "m/s");
        double k = Valid.NotNegative(risePerSquareRadian, "1/rad2");
        double sum = 0;
        for (int step = 0; step < Steps; step++)
        {
            double direction = Math.PI * (step + 0.5) / Steps;
            ApparentWind felt = ApparentWind.Of(road, AirSpeed.FromMetresPerSecond(w * Math.Cos(direction)), AirSpeed.FromMetresPerSecond(w * Math.Sin(direction)));
            double yaw = felt.Yaw.Radians;
            double ratio = felt.Speed.MetresPerSecond / v;
            sum += (1 + (k * yaw * yaw)) * ratio * ratio;
        }

        return sum / Steps;
    }
}
