namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>
/// Where a roll ends because the driver brakes. A rolling car slows less and less as it gets slower, so a slowing far
/// above the usual one of the seconds before is a foot, not air.
/// </summary>
internal static class BrakePoint
{
    private const double WindowSeconds = 4;
    private const double MemorySeconds = 12;
    private const double Rise = 1.8;
    private const double Step = 0.4;

    // Receivers hold their speed at zero below walking pace.
    private const double SlowestUseful = 2;

    /// <summary>Last index, from the first on, that still belongs to the roll.</summary>
    public static int LastRolling(RunTrace trace, int first, int last)
    {
        double spacing = trace.Spacing;
        int length = Math.Max(3, (int)Math.Round(WindowSeconds / spacing));
        int third = Math.Max(1, length / 3);
        int memory = Math.Max(4, (int)Math.Round(MemorySeconds / spacing));
        double[] slowings = new double[Math.Max(0, last - first - length + 1)];
        for (int k = 0; k < slowings.Length; k++)
        {
            int i = first + k;
            if (trace.Speeds[i] < SlowestUseful)
            {
                return i;
            }

            double span = trace.Times[i + length] - trace.Times[i];
            slowings[k] = (Mean(trace, i, third) - Mean(trace, i + length - third + 1, third)) / (span * (1 - ((third - 1) / (double)length)));
            if (k >= memory && slowings[k] > (Rise * Math.Max(0, Usual(slowings, k, memory))) + Step && BrakesToTheEnd(trace, i + (length / 2), last))
            {
                return Math.Max(first, i + (length / 2) - 1);
            }
        }

        return last;
    }

    // A touch in the middle of a run is no end: such a run is left out later, with that reason.
    private static bool BrakesToTheEnd(RunTrace trace, int from, int last) =>
        last <= from || (trace.Speeds[from] - trace.Speeds[last]) / (trace.Times[last] - trace.Times[from]) > 0.8;

    // Sorting at every step would cost more than all fits together: a few values spread over the memory do.
    private static double Usual(double[] slowings, int before, int memory)
    {
        Span<double> picked = stackalloc double[7];
        for (int i = 0; i < picked.Length; i++)
        {
            picked[i] = slowings[before - memory + (i * (memory - 1) / (picked.Length - 1))];
        }

        picked.Sort();
        return picked[3];
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
