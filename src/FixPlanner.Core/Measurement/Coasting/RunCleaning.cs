namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>
/// Takes out what no car can do: values that are no number, clocks that stand or run back, single spikes.
/// Spikes by the median filter of 40 CFR 1037.528 (g)(1), the slope of the coast taken off first because it would
/// otherwise count as scatter; ±5 s instead of ±3 s so that a 1 Hz logger gives eleven values.
/// </summary>
internal static class RunCleaning
{
    private const int Wing = 5;
    private const double WingSeconds = 5;
    private const double MedianToSpread = 1.4826;

    // A logger that rounds to 0.1 km/h repeats values; a scatter of nothing would make every next step a spike.
    private const double LeastSpread = 0.05;

    public sealed record Outcome(RunTrace Trace, int Dropped, int Spikes, bool Held);

    public static Outcome Clean(IReadOnlyList<RunSample> samples)
    {
        List<double> times = new(samples.Count);
        List<double> speeds = new(samples.Count);
        double newest = double.NegativeInfinity;
        foreach (RunSample sample in samples)
        {
            double time = sample.Time.Seconds;
            double speed = sample.Speed.MetresPerSecond;
            if (double.IsFinite(time) && double.IsFinite(speed) && speed >= 0 && time > newest)
            {
                times.Add(time);
                speeds.Add(speed);
                newest = time;
            }
        }

        int dropped = samples.Count - times.Count;
        RunTrace trace = new([.. times], [.. speeds]);
        bool held = IsHeld(trace);
        if (held)
        {
            trace = FirstOfEach(trace);
        }

        return new(WithoutSpikes(trace, out int spikes), dropped, spikes, held);
    }

    private static RunTrace WithoutSpikes(RunTrace trace, out int spikes)
    {
        spikes = 0;
        if (trace.Count < (2 * Wing) + 1)
        {
            return trace;
        }

        int stride = Math.Max(1, (int)Math.Round(WingSeconds / Wing / trace.Spacing));
        double[] speeds = (double[])trace.Speeds.Clone();
        double[] slopes = new double[Wing];
        double[] levels = new double[(2 * Wing) + 1];
        int reach = Wing * stride;
        for (int i = reach; i + reach < trace.Count; i++)
        {
            if (trace.Times[i + reach] - trace.Times[i - reach] > 4 * WingSeconds)
            {
                continue;
            }

            for (int k = 1; k <= Wing; k++)
            {
                int before = i - (k * stride);
                int after = i + (k * stride);
                slopes[k - 1] = (trace.Speeds[after] - trace.Speeds[before]) / (trace.Times[after] - trace.Times[before]);
            }

            double slope = InPlaceMedian(slopes);
            for (int k = -Wing; k <= Wing; k++)
            {
                int place = i + (k * stride);
                levels[k + Wing] = trace.Speeds[place] - (slope * (trace.Times[place] - trace.Times[i]));
            }

            double middle = InPlaceMedian(levels);
            for (int k = 0; k < levels.Length; k++)
            {
                levels[k] = Math.Abs(levels[k] - middle);
            }

            double spread = Math.Max(LeastSpread, MedianToSpread * InPlaceMedian(levels));
            if (Math.Abs(trace.Speeds[i] - middle) > 3 * spread)
            {
                speeds[i] = middle;
                spikes++;
            }
        }

        return new(trace.Times, speeds);
    }

    private static double InPlaceMedian(Span<double> values)
    {
        values.Sort();
        return values[values.Length / 2];
    }

    // A 1 Hz receiver logged at 10 Hz repeats each value ten times. Whole km/h repeat as well, but those lie on a coarse grid.
    private static bool IsHeld(RunTrace trace)
    {
        if (trace.Count < 20)
        {
            return false;
        }

        int same = 0;
        int coarse = 0;
        for (int i = 1; i < trace.Count; i++)
        {
            double kilometres = trace.Speeds[i] * 3.6;
            same += trace.Speeds[i] == trace.Speeds[i - 1] ? 1 : 0;
            coarse += Math.Abs(kilometres - Math.Round(kilometres)) < 1e-6 ? 1 : 0;
        }

        return same > 0.45 * trace.Count && coarse < 0.9 * trace.Count;
    }

    private static RunTrace FirstOfEach(RunTrace trace)
    {
        List<int> kept = [0];
        for (int i = 1; i < trace.Count; i++)
        {
            if (trace.Speeds[i] != trace.Speeds[i - 1])
            {
                kept.Add(i);
            }
        }

        return new([.. kept.Select(i => trace.Times[i])], [.. kept.Select(i => trace.Speeds[i])]);
    }
}
