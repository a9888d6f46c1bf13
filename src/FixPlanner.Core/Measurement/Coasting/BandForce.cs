namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>The two-speed method: mean slowing between two speeds, and the time mean of the squared speed that goes with it.</summary>
/// <param name="Deceleration">Between the two crossings, in m/s2.</param>
/// <param name="MeanSquare">Time mean of v² between them, in m2/s2. The mean of the speeds' squares instead biases a wide band by 15 %.</param>
/// <param name="Time">Between the crossings, in s.</param>
internal readonly record struct BandForce(double Deceleration, double MeanSquare, double Time)
{
    public static BandForce? Of(RunTrace part, SpeedBand band)
    {
        if (SpeedCrossing.Of(part, band.High) is not { } upper || SpeedCrossing.Of(part, band.Low) is not { } lower || lower.Time <= upper.Time)
        {
            return null;
        }

        double time = lower.Time - upper.Time;
        return new((upper.Speed - lower.Speed) / time, MeanSquareBetween(part, upper.Time, lower.Time), time);
    }

    private static double MeanSquareBetween(RunTrace part, double from, double to)
    {
        double area = 0;
        double time = from;
        double square = Square(part.SpeedAt(from));
        for (int i = part.IndexAt(from); i < part.Count && part.Times[i] < to; i++)
        {
            if (part.Times[i] <= time)
            {
                continue;
            }

            double next = Square(part.Speeds[i]);
            area += (square + next) / 2 * (part.Times[i] - time);
            time = part.Times[i];
            square = next;
        }

        area += (square + Square(part.SpeedAt(to))) / 2 * (to - time);
        return area / (to - from);
    }

    private static double Square(double value) => value * value;
}
