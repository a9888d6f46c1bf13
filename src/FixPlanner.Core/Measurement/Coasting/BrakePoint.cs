namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>
/// Where a roll ends because the driver brakes. A rolling car slows less and less as it gets slower, so a slowing that
/// rises well above the least one seen so far is a foot, not air.
/// </summary>
internal static class BrakePoint
{
    private const double WindowSeconds = 4;
    private const double Rise = 1.6;
    private const double Step = 0.25;

    // Receivers hold their speed at zero below walking pace.
    private const double SlowestUseful = 2;

    /// <summary>Last index, from the first on, that still belongs to the roll.</summary>
    public static int LastRolling(RunTrace trace, int first, int last)
    {
        int length = Math.Max(3, (int)Math.Round(WindowSeconds / trace.Spacing));
        double least = double.PositiveInfinity;
        for (int i = first; i + length <= last; i++)
        {
            double span = trace.Times[i + length] - trace.Times[i];
            int third = Math.Max(1, length / 3);
            double slowing = (Mean(trace, i, third) - Mean(trace, i + length - third + 1, third)) / (span * (1 - ((third - 1) / (double)length)));
            if (trace.Speeds[i] < SlowestUseful)
            {
                return i;
            }

            if (slowing > (Rise * Math.Max(0, least)) + Step)
            {
                return Math.Max(first, i + (length / 2) - 1);
            }

            least = Math.Min(least, slowing);
        }

        return last;
    }

    private static double Mean(RunTrace trace, int from, int count)
    {
        double sum = 0;
        for (int i = from; i < from + count; i++)
        {
            sum += trace.Speeds[i];
        }

        return sum / count;
    }
}
