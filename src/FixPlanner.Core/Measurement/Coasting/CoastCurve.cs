namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>
/// Speed of a coasting car in closed form: dv/dt = -(a + b v²), a in m/s2, b in 1/m. The page docs/theory/measurement.md
/// holds the derivation; a may be below zero (a downhill steeper than the rolling resistance).
/// </summary>
internal readonly struct CoastCurve(double a, double b)
{
    // Below this share of b v² the constant part is lost in rounding and the form without it is exact enough.
    private const double Negligible = 1e-13;

    public double A => a;

    public double B => b;

    public double Deceleration(double speed) => a + (b * speed * speed);

    /// <summary>Speed after a time in s, from a speed in m/s. Not a number once the car has stopped.</summary>
    public double SpeedAfter(double from, double time)
    {
        if (Math.Abs(a) < Negligible * b * from * from)
        {
            return from / (1 + (b * from * time));
        }

        if (a > 0)
        {
            double root = Math.Sqrt(a / b);
            double turn = Math.Sqrt(a * b) * time;
            if (turn >= Math.Atan(from / root) && from > 0)
            {
                return double.NaN;
            }

            double tangent = Math.Tan(turn);
            return (from - (root * tangent)) / (1 + (from / root * tangent));
        }

        double settled = Math.Sqrt(-a / b);
        double tanh = Math.Tanh(Math.Sqrt(-a * b) * time);
        return settled * (from + (settled * tanh)) / (settled + (from * tanh));
    }

    /// <summary>Time in s between two speeds in m/s, the first the higher.</summary>
    public double TimeBetween(double from, double to)
    {
        if (Math.Abs(a) < Negligible * b * from * from)
        {
            return ((1 / to) - (1 / from)) / b;
        }

        if (a > 0)
        {
            double root = Math.Sqrt(b / a);
            return Math.Atan((from - to) * root / (1 + (from * to * b / a))) / Math.Sqrt(a * b);
        }

        double settled = Math.Sqrt(-a / b);
        return (Math.Atanh(settled / to) - Math.Atanh(settled / from)) / Math.Sqrt(-a * b);
    }

    /// <summary>Road in m covered between two speeds in m/s.</summary>
    public double DistanceBetween(double from, double to) => Math.Log(Deceleration(from) / Deceleration(to)) / (2 * b);

    /// <summary>How the speed now reached moves with a, with b and with the first speed.</summary>
    public (double ByA, double ByB, double ByFrom) Slopes(double from, double now, double time)
    {
        double first = Deceleration(from);
        double last = Deceleration(now);
        double scale = Math.Abs(a) / (b * from * from);
        if (scale < 1e-4)
        {
            return SlopesByQuadrature(from, now);
        }

        double ends = (from / first) - (now / last);
        double byA = -last * (ends + time) / (2 * a);
        double byB = -last * (time - ends) / (2 * b);
        return (byA, byB, last / first);
    }

    // Near a = 0 the closed slopes are differences of nearly equal numbers; five Gauss points on 1/speed are exact enough there.
    private (double ByA, double ByB, double ByFrom) SlopesByQuadrature(double from, double now)
    {
        ReadOnlySpan<double> points = [-0.906179845938664, -0.538469310105683, 0, 0.538469310105683, 0.906179845938664];
        ReadOnlySpan<double> weights = [0.236926885056189, 0.478628670499366, 0.568888888888889, 0.478628670499366, 0.236926885056189];
        double low = 1 / from;
        double half = ((1 / now) - low) / 2;
        double sumA = 0;
        double sumB = 0;
        for (int i = 0; i < points.Length; i++)
        {
            double inverse = low + (half * (1 + points[i]));
            double speed = 1 / inverse;
            double change = Deceleration(speed);
            double weight = weights[i] * half * speed * speed / (change * change);
            sumA += weight;
            sumB += weight * speed * speed;
        }

        double last = Deceleration(now);
        return (-last * sumA, -last * sumB, last / Deceleration(from));
    }
}
