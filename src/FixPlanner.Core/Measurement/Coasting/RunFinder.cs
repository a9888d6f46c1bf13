namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>Finds the rolls in one long log: up to speed, roll, brake, turn, and so on all day.</summary>
public static class RunFinder
{
    private const double LeastDrop = 20 / 3.6;
    private const double LeastSeconds = 10;
    private const double LongestGap = 5;
    private const double SlowestUseful = 2;
    private const double SlopeSeconds = 3;

    // Slower slowing than this is a foot on the throttle, faster is a foot on the brake.
    private const double LeastSlowing = 0.03;
    private const double MostSlowing = 1.8;

    /// <summary>A stretch of samples, both ends included.</summary>
    /// <param name="First">Index of the first sample.</param>
    /// <param name="Last">Index of the last sample.</param>
    public readonly record struct Stretch(int First, int Last);

    /// <summary>Finds rolls of at least 20 km/h and 10 s.</summary>
    /// <param name="samples">In time order; times that do not rise end a stretch.</param>
    /// <returns>Stretches of indices in order, none overlapping.</returns>
    public static IReadOnlyList<Stretch> Find(IReadOnlyList<RunSample> samples)
    {
        ArgumentNullException.ThrowIfNull(samples);
        List<Stretch> found = [];
        int from = 0;
        while (from < samples.Count)
        {
            int to = from;
            while (to + 1 < samples.Count && samples[to + 1].Time.Seconds > samples[to].Time.Seconds && samples[to + 1].Time.Seconds - samples[to].Time.Seconds <= LongestGap)
            {
                to++;
            }

            FindIn(samples, from, to, found);
            from = to + 1;
        }

        return found;
    }

    private static void FindIn(IReadOnlyList<RunSample> samples, int from, int to, List<Stretch> found)
    {
        if (to - from < 8)
        {
            return;
        }

        RunTrace trace = new(
            [.. Enumerable.Range(from, to - from + 1).Select(i => samples[i].Time.Seconds)],
            [.. Enumerable.Range(from, to - from + 1).Select(i => samples[i].Speed.MetresPerSecond)]);
        double[] smooth = CoastPart.Smooth(trace);
        int wing = Math.Max(1, (int)Math.Round(SlopeSeconds / 2 / trace.Spacing));
        int? start = null;
        int lastGood = 0;
        for (int i = 0; i < trace.Count; i++)
        {
            int low = Math.Max(0, i - wing);
            int high = Math.Min(trace.Count - 1, i + wing);
            double slowing = (smooth[low] - smooth[high]) / (trace.Times[high] - trace.Times[low]);
            bool rolling = slowing is > LeastSlowing and < MostSlowing && smooth[i] > SlowestUseful;
            if (rolling)
            {
                start ??= i;
                lastGood = i;
            }
            else if (start is { } first && (trace.Times[i] - trace.Times[lastGood] > 2 || slowing >= MostSlowing || slowing < -0.3))
            {
                Keep(trace, first, lastGood, from, found);
                start = null;
            }
        }

        if (start is { } open)
        {
            Keep(trace, open, lastGood, from, found);
        }
    }

    private static void Keep(RunTrace trace, int first, int last, int offset, List<Stretch> found)
    {
        int end = BrakePoint.LastRolling(trace, first, last);
        if (trace.Speeds[first] - trace.Speeds[end] >= LeastDrop && trace.Times[end] - trace.Times[first] >= LeastSeconds)
        {
            found.Add(new(first + offset, end + offset));
        }
    }
}
