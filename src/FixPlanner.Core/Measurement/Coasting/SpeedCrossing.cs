namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>When a run passed a speed: mean time and mean speed of the samples near it, so that one noisy sample does not decide.</summary>
/// <param name="Time">In s.</param>
/// <param name="Speed">Mean speed of the window in m/s, used instead of the nominal one.</param>
internal readonly record struct SpeedCrossing(double Time, double Speed)
{
    // 40 CFR 1037.528 (h)(3): ±2 mi/h at 10 Hz. At 1 Hz that is two or three samples, so the window is widened.
    private const double FastWindow = 0.894;
    private const double SlowWindow = 1.5;

    public static double Window(double spacing) => spacing <= 0.25 ? FastWindow : SlowWindow;

    /// <summary>Null when the run has no sample near the speed.</summary>
    public static SpeedCrossing? Of(RunTrace trace, double nominal)
    {
        double window = Window(trace.Spacing);
        double times = 0;
        double speeds = 0;
        int count = 0;
        for (int i = 0; i < trace.Count; i++)
        {
            if (Math.Abs(trace.Speeds[i] - nominal) <= window)
            {
                times += trace.Times[i];
                speeds += trace.Speeds[i];
                count++;
            }
        }

        return count == 0 ? null : new(times / count, speeds / count);
    }
}
