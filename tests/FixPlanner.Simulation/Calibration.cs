namespace FixPlanner.Simulation;

/// <summary>How often what was believed turned out: reliability curve and Brier score over all causes of all cars.</summary>
internal sealed class Calibration
{
    private const int Bins = 10;
    private readonly double[] believed = new double[Bins];
    private readonly int[] there = new int[Bins];
    private readonly int[] count = new int[Bins];
    private double squares;
    private double squaresOfPriors;

    /// <summary>Number of beliefs.</summary>
    public int Count => count.Sum();

    /// <summary>Mean of (belief - truth)².</summary>
    public double Brier => squares / Count;

    /// <summary>The same for the priors.</summary>
    public double BrierOfPriors => squaresOfPriors / Count;

    /// <summary>Largest distance of a tenth's mean belief from the share that was there, over tenths of at least 50 beliefs.</summary>
    public double LargestError => Curve.Where(b => b.Count >= 50).Select(b => Math.Abs(b.Believed - b.There)).DefaultIfEmpty(0).Max();

    /// <summary>For each tenth of belief: number, mean belief, share that was there.</summary>
    public IReadOnlyList<(int Count, double Believed, double There)> Curve =>
        [.. Enumerable.Range(0, Bins).Where(b => count[b] > 0).Select(b => (count[b], believed[b] / count[b], (double)there[b] / count[b]))];

    /// <summary>Takes the beliefs of a car.</summary>
    public void Add(IReadOnlyList<double> beliefs, IReadOnlyList<double> priors, bool[] truth)
    {
        for (int c = 0; c < truth.Length; c++)
        {
            // What cannot be there on this car is no forecast.
            if (priors[c] is not (0 or 1))
            {
                int bin = Math.Min(Bins - 1, (int)(beliefs[c] * Bins));
                believed[bin] += beliefs[c];
                there[bin] += truth[c] ? 1 : 0;
                count[bin]++;
                squares += Math.Pow(beliefs[c] - (truth[c] ? 1 : 0), 2);
                squaresOfPriors += Math.Pow(priors[c] - (truth[c] ? 1 : 0), 2);
            }
        }
    }
}
