using FixPlanner.Core.Physics.Uncertainty;

namespace FixPlanner.Core.Diagnosis;

/// <summary>
/// Exact inference by summing causes out one by one along one order, and a second pass back for all marginals.
/// Cost: causes × 2^(width + 1). Every entry of every table is positive and nothing is subtracted, so rounding stays at the
/// level of one part in 10^13.
/// </summary>
internal sealed class Elimination
{
    private readonly int[] order;
    private readonly int[] place;
    private readonly Bucket[] buckets;

    private Elimination(int[] order, int[] place, Bucket[] buckets)
    {
        (this.order, this.place, this.buckets) = (order, place, buckets);
    }

    /// <summary>Natural logarithm of the chance of everything that was answered.</summary>
    public double LogEvidence { get; private set; }

    /// <summary>Chance of each cause, given everything that was answered.</summary>
    public double[] Marginals { get; private set; } = [];

    /// <summary>Runs both passes.</summary>
    /// <param name="priors">Chance of each cause before anything was answered, 0 to 1.</param>
    /// <param name="factors">One table for each answer; scopes within the causes.</param>
    /// <param name="order">Order of summing out.</param>
    /// <returns>The result, ready for marginals and for drawing worlds.</returns>
    public static Elimination Run(double[] priors, IReadOnlyList<Factor> factors, int[] order)
    {
        int[] place = new int[order.Length];
        for (int i = 0; i < order.Length; i++)
        {
            place[order[i]] = i;
        }

        Bucket[] buckets = new Bucket[order.Length];
        List<Factor>[] held = new List<Factor>[order.Length];
        foreach (Factor factor in factors)
        {
            if (factor.Scope.Length > 0)
            {
                (held[factor.Scope.Min(v => place[v])] ??= []).Add(factor);
            }
        }

        Elimination run = new(order, place, buckets);
        run.Inward(priors, held, factors);
        run.Outward();
        return run;
    }

    /// <summary>Draws worlds from the joint distribution of the causes.</summary>
    /// <param name="stream">Source of chance.</param>
    /// <param name="world">Filled with true for each cause that is there.</param>
    public void Draw(RandomStream stream, bool[] world)
    {
        for (int i = order.Length - 1; i >= 0; i--)
        {
            Bucket bucket = buckets[i];
            int state = 0;
            for (int k = 1; k < bucket.Scope.Length; k++)
            {
                state |= world[bucket.Scope[k]] ? 1 << k : 0;
            }

            double there = bucket.Product[state | 1];
            world[bucket.Scope[0]] = stream.NextShare() * (there + bucket.Product[state]) < there;
        }
    }

    private void Inward(double[] priors, List<Factor>[] held, IReadOnlyList<Factor> factors)
    {
        double log = factors.Where(f => f.Scope.Length == 0).Sum(f => Math.Log(f.Table[0]));
        for (int i = 0; i < order.Length; i++)
        {
            int variable = order[i];
            List<Factor> mine = held[i] ?? [];
            int[] scope = [variable, .. mine.SelectMany(f => f.Scope).Where(v => v != variable).Distinct().OrderBy(v => place[v])];
            double[] product = new double[1 << scope.Length];
            for (int s = 0; s < product.Length; s++)
            {
                product[s] = (s & 1) == 1 ? priors[variable] : 1 - priors[variable];
            }

            foreach (Factor factor in mine)
            {
                Multiply(product, scope, factor);
            }

            double[] message = new double[product.Length / 2];
            double most = 0;
            for (int s = 0; s < message.Length; s++)
            {
                message[s] = product[2 * s] + product[(2 * s) + 1];
                most = Math.Max(most, message[s]);
            }

            // Scaling keeps long walk-rounds from underflowing.
            log += Math.Log(most);
            for (int s = 0; s < message.Length; s++)
            {
                message[s] /= most;
            }

            buckets[i] = new(scope, product, message);
            if (scope.Length > 1)
            {
                (held[place[scope[1]]] ??= []).Add(new(scope[1..], message));
            }
        }

        LogEvidence = log;
    }

    private void Outward()
    {
        Marginals = new double[order.Length];
        double[][] belief = new double[order.Length][];
        for (int i = order.Length - 1; i >= 0; i--)
        {
            Bucket bucket = buckets[i];
            double[] joint = (double[])bucket.Product.Clone();
            if (bucket.Scope.Length > 1)
            {
                int parent = place[bucket.Scope[1]];
                double[] around = SumOnto(belief[parent], buckets[parent].Scope, bucket.Scope.AsSpan(1));
                for (int s = 0; s < joint.Length; s++)
                {
                    // A message is zero only where the joint is zero too.
                    double message = bucket.Message[s >> 1];
                    joint[s] = message == 0 ? 0 : joint[s] * around[s >> 1] / message;
                }
            }

            double there = 0, gone = 0;
            for (int s = 0; s < joint.Length; s += 2)
            {
                gone += joint[s];
                there += joint[s + 1];
            }

            Marginals[bucket.Scope[0]] = there / (there + gone);
            belief[i] = joint;
        }
    }

    private static void Multiply(double[] product, int[] scope, Factor factor)
    {
        int[] at = Spread(scope, factor.Scope);
        for (int s = 0; s < product.Length; s++)
        {
            product[s] *= factor.Table[at[s]];
        }
    }

    private static double[] SumOnto(double[] table, int[] scope, ReadOnlySpan<int> onto)
    {
        int[] at = Spread(scope, onto);
        double[] sum = new double[1 << onto.Length];
        for (int s = 0; s < table.Length; s++)
        {
            sum[at[s]] += table[s];
        }

        return sum;
    }

    // For each state of the wide scope, the state of the narrow one.
    private static int[] Spread(int[] wide, ReadOnlySpan<int> narrow)
    {
        int[] at = new int[1 << wide.Length];
        for (int k = 0, filled = 1; k < wide.Length; k++, filled <<= 1)
        {
            int position = narrow.IndexOf(wide[k]);
            int bit = position < 0 ? 0 : 1 << position;
            for (int s = 0; s < filled; s++)
            {
                at[s | filled] = at[s] | bit;
            }
        }

        return at;
    }

    private readonly record struct Bucket(int[] Scope, double[] Product, double[] Message);
}
