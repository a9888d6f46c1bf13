using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>A pair (or a lone run, where only one way was driven) on its way through the fits.</summary>
internal sealed class FittedGroup(PreparedRun[] runs)
{
    private const int Redraws = 1000;

    private readonly FitRun[] _runs = [.. runs.Select(run => new FitRun(run.Part!, run.Way == 0 ? 1 : run.Way, run.Density))];

    public string Configuration => runs[0].Run.Configuration;

    public string Day => runs[0].Day;

    public double Density => runs.Average(run => run.Density);

    public PairFit Free { get; private set; } = null!; // set by FitFree, which the analysis calls first

    private double MassKg => runs.Average(run => run.MassKg);

    public void LeaveOut(string reason)
    {
        foreach (PreparedRun run in runs)
        {
            run.LeaveOut(reason);
        }
    }

    public void FitFree(AnalysisChoices choices, bool bothWays) =>
        Free = PairFit.Of(_runs, MassKg, choices.RotatingShare, FreeTerms.Rolling | (bothWays ? FreeTerms.Grade : FreeTerms.None));

    public RunPair Finish(IReadOnlyDictionary<string, double> shared, AnalysisChoices choices, bool bothWays, bool alone)
    {
        bool hold = shared.TryGetValue(Day, out double held);
        double rolling = hold ? held : Free.Rolling;
        FreeTerms way = bothWays ? FreeTerms.Grade : FreeTerms.None;
        PairFit fit = hold ? PairFit.Of(_runs, MassKg, choices.RotatingShare, way, rolling) : Free;
        PairFit windy = bothWays ? PairFit.Of(_runs, MassKg, choices.RotatingShare, way | FreeTerms.Wind, rolling) : fit;
        for (int i = 0; i < runs.Length; i++)
        {
            PairFit single = PairFit.Of([_runs[i]], runs[i].MassKg, choices.RotatingShare, FreeTerms.None, rolling, fit.Grade);
            runs[i].DragArea = single.DragArea;
            runs[i].Rolling = rolling;
        }

        return new(
            [.. runs.Select(run => run.Run.Name)], Configuration, Day, runs.Average(run => run.Clock),
            Area(fit.DragArea), Area(TwoSpeed(rolling, choices)), Area(Free.DragArea), Free.Rolling, fit.Grade,
            AirSpeed.FromMetresPerSecond(windy.Wind), RoadSpeed.FromMetresPerSecond(fit.RootMeanSquare), Area(fit.DragAreaFormalError))
        {
            WithGusts = alone && bothWays ? RefitBootstrap.DragArea(_runs, MassKg, choices.RotatingShare, rolling, seed: 1, Redraws) : null,
        };
    }

    /// <summary>Mean force of the runs between the two speeds, less the rolling force, over the mean dynamic pressure.</summary>
    private double TwoSpeed(double rolling, AnalysisChoices choices)
    {
        double force = 0;
        double pressure = 0;
        foreach (PreparedRun run in runs)
        {
            BandForce band = run.Force!.Value;
            force += (run.MassKg * (1 + choices.RotatingShare) * band.Deceleration) - (run.MassKg * CoastingCar.Gravity * rolling);
            pressure += 0.5 * run.Density * band.MeanSquare;
        }

        return force / pressure;
    }

    private static DragArea Area(double squareMetres) => DragArea.FromSquareMetres(Math.Max(0, squareMetres));
}
