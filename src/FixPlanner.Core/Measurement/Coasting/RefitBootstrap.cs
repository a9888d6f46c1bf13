using FixPlanner.Core.Measurement.Statistics;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>
/// How far gusts alone move the drag area of one pair: what is left over after the fit is cut into stretches of six
/// seconds (gusts last about so long), the stretches are redrawn, and the pair is fitted anew each time.
/// </summary>
internal static class RefitBootstrap
{
    private const double StretchSeconds = 6;

    public static ConfidenceInterval DragArea(IReadOnlyList<FitRun> pair, double massKg, double rotatingShare, double rolling, ulong seed, int draws)
    {
        PairFit fit = PairFit.Of(pair, massKg, rotatingShare, FreeTerms.Grade, rolling);
        Chance chance = new(seed);
        double[][] smooth = [.. pair.Select(run => Fitted(run, fit, massKg, rotatingShare))];
        double[] areas = new double[draws];
        for (int i = 0; i < draws; i++)
        {
            FitRun[] redrawn = [.. pair.Select((run, place) => run with { Trace = Redrawn(run.Trace, smooth[place], chance) })];
            areas[i] = PairFit.Of(redrawn, massKg, rotatingShare, FreeTerms.Grade, rolling).DragArea;
        }

        Array.Sort(areas);
        return new(fit.DragArea, Spread.SortedQuantile(areas, 0.025), Spread.SortedQuantile(areas, 0.975));
    }

    private static double[] Fitted(FitRun run, PairFit fit, double massKg, double rotatingShare)
    {
        PairFit single = PairFit.Of([run], massKg, rotatingShare, FreeTerms.None, fit.Rolling, fit.Grade);
        CoastCurve curve = new(
            CoastingCar.Gravity * (fit.Rolling + (run.Way * fit.Grade)) / (1 + rotatingShare),
            0.5 * run.Density * single.DragArea / (massKg * (1 + rotatingShare)));
        double level = 0;
        double first = run.Trace.Speeds[0];
        for (int i = 0; i < run.Trace.Count; i++)
        {
            level += run.Trace.Speeds[i] - curve.SpeedAfter(first, run.Trace.Times[i] - run.Trace.Times[0]);
        }

        double start = first + (level / run.Trace.Count);
        return [.. run.Trace.Times.Select(time => curve.SpeedAfter(start, time - run.Trace.Times[0]))];
    }

    private static RunTrace Redrawn(RunTrace trace, double[] smooth, Chance chance)
    {
        int length = Math.Clamp((int)Math.Round(StretchSeconds / trace.Spacing), 1, trace.Count);
        double[] speeds = new double[trace.Count];
        for (int to = 0; to < trace.Count;)
        {
            int from = chance.Below(trace.Count - length + 1);
            for (int i = 0; i < length && to < trace.Count; i++, to++)
            {
                speeds[to] = smooth[to] + trace.Speeds[from + i] - smooth[from + i];
            }
        }

        return new(trace.Times, speeds);
    }
}
