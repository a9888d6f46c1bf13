namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>The part of a run in which the car rolls: from the last high speed to the end of the falling stretch.</summary>
internal static class CoastPart
{
    // Filtered receivers round off the first second or two after the clutch goes down.
    private const double Settling = 2;

    private const double LongestGap = 5;

    /// <summary>The rolling part without its first two seconds, and whether it ends because the speed rises; null with fewer than eight samples.</summary>
    public static RunTrace? Of(RunTrace trace, out double largestGap, out bool rises)
    {
        largestGap = 0;
        rises = false;
        if (trace.Count < 8)
        {
            return null;
        }

        double[] smooth = Smooth(trace);
        double highest = smooth.Max();
        int top = 0;
        for (int i = 1; i < smooth.Length; i++)
        {
            // A car held at speed hovers around its maximum: the coast starts where it was last near it.
            top = smooth[i] > highest - 0.15 ? i : top;
        }

        int last = top;
        double lowest = smooth[top];
        for (int i = top; i < smooth.Length; i++)
        {
            if (smooth[i] < lowest)
            {
                lowest = smooth[i];
                last = i;
            }
            else if (smooth[i] > lowest + 1)
            {
                rises = true;
                break;
            }
        }

        int first = trace.IndexAt(trace.Times[top] + Settling);
        last = first < last ? BrakePoint.LastRolling(trace, first, last) : last;
        if (last - first < 8)
        {
            return null;
        }

        RunTrace part = trace.Part(first, last);
        for (int i = 1; i < part.Count; i++)
        {
            largestGap = Math.Max(largestGap, part.Times[i] - part.Times[i - 1]);
        }

        return part;
    }

    public static bool IsLongGap(double gap) => gap > LongestGap;

    /// <summary>Mean over about two seconds.</summary>
    public static double[] Smooth(RunTrace trace)
    {
        int wing = Math.Max(1, (int)Math.Round(1 / trace.Spacing));
        double[] sums = new double[trace.Count + 1];
        for (int i = 0; i < trace.Count; i++)
        {
            sums[i + 1] = sums[i] + trace.Speeds[i];
        }

        double[] smooth = new double[trace.Count];
        for (int i = 0; i < smooth.Length; i++)
        {
            int near = Math.Min(wing, Math.Min(i, smooth.Length - 1 - i));
            smooth[i] = (sums[i + near + 1] - sums[i - near]) / ((2 * near) + 1);
        }

        return smooth;
    }
}
