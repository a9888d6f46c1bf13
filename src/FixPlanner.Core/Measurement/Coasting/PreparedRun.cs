using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>A run on its way through the analysis: cleaned, cut to its rolling part, with the reason once it is out.</summary>
internal sealed class PreparedRun(CoastDownRun run, int order)
{
    // What nobody noted: a mild day at low level. The change in per cent does not feel it, as long as A and B share it.
    public const double AssumedDensity = 1.2;

    private bool _rises;

    public CoastDownRun Run { get; } = run;

    public int Order { get; } = order;

    public string Reason { get; private set; } = "";

    public bool Used => Reason.Length == 0;

    public List<string> Notes { get; } = [];

    public RunTrace? Part { get; private set; }

    public BandForce? Force { get; private set; }

    public int Way { get; set; }

    public double Density { get; set; } = AssumedDensity;

    public double MassKg { get; set; }

    public double? DragArea { get; set; }

    public double? Rolling { get; set; }

    public string Day { get; set; } = "";

    public double Clock { get; set; }

    public void LeaveOut(string reason) => Reason = Reason.Length == 0 ? reason : Reason;

    public void Clean()
    {
        RunCleaning.Outcome outcome = RunCleaning.Clean(Run.Samples);
        if (outcome.Dropped > 0)
        {
            Notes.Add($"samples without a usable time or speed, left out: {outcome.Dropped}");
        }

        if (outcome.Spikes > 0)
        {
            Notes.Add($"spikes, replaced by the middle of their neighbours: {outcome.Spikes}");
        }

        if (outcome.Held)
        {
            Notes.Add("the logger repeats each value: only the first of each was kept");
        }

        Part = CoastPart.Of(outcome.Trace, out double gap, out _rises);
        if (Part is null)
        {
            LeaveOut("no roll of at least eight samples was found in it");
        }
        else if (CoastPart.IsLongGap(gap))
        {
            LeaveOut($"a gap of {gap:0.#} s in the log");
        }
        else if (Run.HeadingChangeDegrees > 25)
        {
            LeaveOut($"the road turns by {Run.HeadingChangeDegrees:0} degrees: tyres that steer slow the car");
        }
        else if (Run.HeadingChangeDegrees > 10)
        {
            Notes.Add($"the road turns by {Run.HeadingChangeDegrees:0} degrees");
        }
    }

    public void CutTo(SpeedBand band)
    {
        if (!Used || Part is null)
        {
            return;
        }

        if (!band.Spans(Part))
        {
            LeaveOut($"cut: it rolls from {3.6 * Part.Speeds[0]:0} to {3.6 * Part.Speeds[^1]:0} km/h and does not cover {3.6 * band.High:0} to {3.6 * band.Low:0} km/h{(_rises ? "; then its speed rises: throttle" : "")}");
            return;
        }

        Force = BandForce.Of(Part, band);
        SpeedCrossing? upper = SpeedCrossing.Of(Part, band.High);
        SpeedCrossing? lower = SpeedCrossing.Of(Part, band.Low);
        if (Force is null || upper is null || lower is null)
        {
            LeaveOut("too few samples near the ends of the band");
            return;
        }

        int first = Part.IndexAt(upper.Value.Time);
        int last = Part.IndexAt(lower.Value.Time);
        if (last - first < 8)
        {
            LeaveOut("fewer than eight samples in the band");
            return;
        }

        Part = Part.Part(first, last).Thinned();
        (Pedal pedal, double time) = Disturbance.Find(Part);
        string where = $"{time - Part.Times[0]:0} s into the band";
        if (pedal == Pedal.Brake)
        {
            LeaveOut($"it slows far too fast {where}: a brake, a bump or a gear");
        }
        else if (pedal == Pedal.Throttle)
        {
            LeaveOut($"it hardly slows {where}: throttle, a tow or a dip in the road");
        }
    }

    public static double MedianRolling(IEnumerable<PairFit> fits) => SampleSummary.Median([.. fits.Select(fit => fit.Rolling)]);
}
