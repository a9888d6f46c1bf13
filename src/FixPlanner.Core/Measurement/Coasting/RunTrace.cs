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
