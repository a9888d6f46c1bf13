using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>The speeds, in m/s, between which every run of a session is judged.</summary>
internal readonly record struct SpeedBand(double High, double Low)
{
    private const double Step = 5 / 3.6;
    private const double Narrowest = 20 / 3.6;

    // Up to one run in seven is left out as cut where that makes the band for all the others much wider.
    private const double MayMiss = 1.0 / 7;
    private const double MuchWider = 15 / 3.6;

    public static SpeedBand Between(RoadSpeed high, RoadSpeed low) => new(high.MetresPerSecond, low.MetresPerSecond);

    public bool IsTooNarrow => High - Low < Narrowest - 1e-9;

    public bool Spans(RunTrace part) => part.Speeds[0] >= High - 0.3 && part.Speeds[^1] <= Low + 0.3;

    /// <summary>The band in steps of 5 km/h that the runs cover.</summary>
    public static SpeedBand CoveredBy(IReadOnlyList<RunTrace> parts)
    {
        double[] starts = [.. parts.Select(part => part.Speeds[0]).Order()];
        double[] ends = [.. parts.Select(part => part.Speeds[^1]).OrderDescending()];
        SpeedBand all = Rounded(starts[0], ends[0]);
        int miss = (int)(parts.Count * MayMiss);
        SpeedBand most = Rounded(starts[miss], ends[miss]);
        return most.High - most.Low >= all.High - all.Low + MuchWider - 1e-9 ? most : all;
    }

    private static SpeedBand Rounded(double start, double end) => new(Math.Floor((start + 0.1) / Step) * Step, Math.Ceiling((end - 0.1) / Step) * Step);
}
