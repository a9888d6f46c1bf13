namespace FixPlanner.Core.Physics.Uncertainty;

/// <summary>Values put in order, and their ranks less the mean rank: what a correlation of ranks needs. Equal values share the mean of their ranks.</summary>
internal sealed class Ranked
{
    private readonly double[] centred;
    private readonly double square;

    private Ranked(double[] sorted, double[] centred)
    {
        (Sorted, this.centred) = (sorted, centred);
        foreach (double rank in centred)
        {
            square += rank * rank;
        }
    }

    /// <summary>The values, rising.</summary>
    public double[] Sorted { get; }

    /// <summary>Ranks values; they stay as they are.</summary>
    public static Ranked Of(double[] values)
    {
        int[] order = new int[values.Length];
        for (int i = 0; i < order.Length; i++)
        {
            order[i] = i;
        }

        double[] sorted = [.. values];
        Array.Sort(sorted, order);
        double[] ranks = new double[values.Length];
        for (int start = 0; start < order.Length;)
        {
            int end = start;
            while (end + 1 < order.Length && sorted[end + 1] == sorted[start])
            {
                end++;
            }

            for (int i = start; i <= end; i++)
            {
                ranks[order[i]] = (start + end) / 2.0;
            }

            start = end + 1;
        }

        double mean = ranks.Length == 0 ? 0 : ranks.Average();
        for (int i = 0; i < ranks.Length; i++)
        {
            ranks[i] -= mean;
        }

        return new(sorted, ranks);
    }

    /// <summary>Correlation of the ranks of two sets of values, -1 to 1; 0 where one of them does not vary.</summary>
    public double Correlation(Ranked other)
    {
        double product = 0;
        for (int i = 0; i < centred.Length; i++)
        {
            product += centred[i] * other.centred[i];
        }

        return square > 0 && other.square > 0 ? product / Math.Sqrt(square * other.square) : 0;
    }
}
