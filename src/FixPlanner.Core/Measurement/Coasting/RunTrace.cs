namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>A run after cleaning: times in s strictly rising, speeds in m/s, all finite.</summary>
internal sealed record RunTrace(double[] Times, double[] Speeds)
{
    public int Count => Times.Length;

    /// <summary>Usual spacing of the samples in s.</summary>
    public double Spacing
    {
        get
        {
            double[] steps = new double[Math.Max(0, Count - 1)];
            for (int i = 0; i < steps.Length; i++)
            {
                steps[i] = Times[i + 1] - Times[i];
            }

            return steps.Length == 0 ? double.NaN : Statistics.SampleSummary.Median(steps);
        }
    }

    /// <summary>Samples from one index to another, both included.</summary>
    public RunTrace Part(int first, int last) => new(Times[first..(last + 1)], Speeds[first..(last + 1)]);

    /// <summary>Block means of about half a second: over so short a time the curve is straight, and a fit is several times quicker.</summary>
    public RunTrace Thinned()
    {
        int block = (int)Math.Floor(0.55 / Spacing);
        if (block < 2)
        {
            return this;
        }

        double[] times = new double[Count / block];
        double[] speeds = new double[times.Length];
        for (int i = 0; i < times.Length; i++)
        {
            for (int k = 0; k < block; k++)
            {
                times[i] += Times[(i * block) + k] / block;
                speeds[i] += Speeds[(i * block) + k] / block;
            }
        }

        return new(times, speeds);
    }

    /// <summary>First index at or after a time.</summary>
    public int IndexAt(double time)
    {
        int place = Array.BinarySearch(Times, time);
        return Math.Min(place >= 0 ? place : ~place, Count - 1);
    }

    /// <summary>Speed at a time, straight lines between samples.</summary>
    public double SpeedAt(double time)
    {
        int above = Math.Max(1, IndexAt(time));
        double share = (time - Times[above - 1]) / (Times[above] - Times[above - 1]);
        return Speeds[above - 1] + (Math.Clamp(share, 0, 1) * (Speeds[above] - Speeds[above - 1]));
    }
}
