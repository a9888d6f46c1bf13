using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>Looks for a foot on a pedal: a stretch that slows much faster, or hardly slows, against the run's own smooth curve.</summary>
internal enum Pedal
{
    None,
    Brake,
    Throttle,
}

internal static class Disturbance
{
    private static readonly double[] WindowSeconds = [4, 8];

    public static (Pedal Pedal, double Time) Find(RunTrace part)
    {
        PairFit fit = PairFit.Of([new(part, 1, 1.2)], 1000, 0, FreeTerms.Rolling);
        CoastCurve curve = new(CoastingCar.Gravity * fit.Rolling, 0.6 * fit.DragArea / 1000);
        double noise = Noise(part);
        foreach (double seconds in WindowSeconds)
        {
            int length = Math.Max(4, (int)Math.Round(seconds / part.Spacing) + 1);
            for (int i = 0; i + length <= part.Count; i += Math.Max(1, length / 8))
            {
                (double slowing, double middle, double squares) = Slope(part, i, length);
                double expected = Math.Max(0.02, curve.Deceleration(middle));
                double error = 4 * noise / Math.Sqrt(squares);
                if (slowing - expected > (0.35 * expected) + error + 0.09)
                {
                    return (Pedal.Brake, part.Times[i]);
                }

                if (expected - slowing > (0.45 * expected) + error + 0.05)
                {
                    return (Pedal.Throttle, part.Times[i]);
                }
            }
        }

        return (Pedal.None, 0);
    }

    private static (double Slowing, double Speed, double Squares) Slope(RunTrace part, int from, int length)
    {
        double time = 0;
        double speed = 0;
        for (int i = from; i < from + length; i++)
        {
            time += part.Times[i];
            speed += part.Speeds[i];
        }

        time /= length;
        speed /= length;
        double squares = 0;
        double products = 0;
        for (int i = from; i < from + length; i++)
        {
            squares += (part.Times[i] - time) * (part.Times[i] - time);
            products += (part.Times[i] - time) * (part.Speeds[i] - speed);
        }

        return (-products / squares, speed, squares);
    }

    // Second differences know nothing of slope or curve; √6 is their factor for independent noise. Filtered noise is
    // smoother than that from one sample to the next, so a floor of 0.05 m/s stays.
    private static double Noise(RunTrace part)
    {
        double[] sizes = new double[Math.Max(0, part.Count - 2)];
        for (int i = 0; i < sizes.Length; i++)
        {
            sizes[i] = Math.Abs(part.Speeds[i] - (2 * part.Speeds[i + 1]) + part.Speeds[i + 2]);
        }

        return Math.Max(0.05, 1.4826 * SampleSummary.Median(sizes) / Math.Sqrt(6));
    }
}
