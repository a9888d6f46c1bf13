namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>Steps a coasting car through time where no closed form holds: wind and rolling resistance that change on the way.</summary>
internal static class CoastIntegrator
{
    /// <summary>Speeds in m/s at every step, the first included (classic fourth-order Runge-Kutta).</summary>
    /// <param name="deceleration">In m/s2, from the time in s and the speed in m/s; positive slows.</param>
    /// <param name="from">First speed in m/s.</param>
    /// <param name="step">In s.</param>
    /// <param name="steps">How many.</param>
    public static double[] Speeds(Func<double, double, double> deceleration, double from, double step, int steps)
    {
        double[] speeds = new double[steps + 1];
        speeds[0] = from;
        for (int i = 0; i < steps; i++)
        {
            double time = i * step;
            double speed = speeds[i];
            double k1 = -deceleration(time, speed);
            double k2 = -deceleration(time + (step / 2), speed + (step / 2 * k1));
            double k3 = -deceleration(time + (step / 2), speed + (step / 2 * k2));
            double k4 = -deceleration(time + step, speed + (step * k3));
            speeds[i + 1] = speed + (step / 6 * (k1 + (2 * k2) + (2 * k3) + k4));
        }

        return speeds;
    }
}
