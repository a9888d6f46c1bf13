using FixPlanner.Core.Physics.Uncertainty;

namespace FixPlanner.Core.Diagnosis;

/// <summary>
/// Exact inference by summing causes out one by one along one order, and a second pass back for all marginals.
/// Cost: causes × 2^(width + 1). Every entry of every table is positive and nothing is subtracted, so rounding stays at the
/// level of one part in 10^13.
/// </summary>
internal sealed class Elimination
{
    private readonly double[] priors;
    private readonly int[] order;
    private readonly int[] place;
    private readonly Bucket[] buckets;
    private readonly double[][] products;
    private readonly double[][] messages;
    private readonly double[] logs;
    private readonly double[][] joints;
    private readonly int[][] fromParent;
    private double[] around = [];

    private Elimination(double[] priors, int[] order)
    {
        (this.priors, this.order, int count) = (priors, order, order.Length);
        (place, buckets, logs, Marginals) = (new int[count], new Bucket[count], new double[count], new double[count]);
        (products, messages, joints, fromParent) = (new double[count][], new double[count][], new double[count][], new int[count][]);
        for (int i = 0; i < count; i++)
        {
            place[order[i]] = i;
        }
    }

    /// <summary>Natural logarithm of the chance of everything that was answered.</summary>
    public double LogEvidence { get; private set; }

    /// <summary>Chance of each cause, given everything that was answered.</summary>
    public double[] Marginals { get; }

    /// <summary>Runs both passes.</summary>
    /// <param name="priors">Chance of each cause before anything was answered, 0 to 1.</param>
    /// <param name="factors">One table for each answer; scopes within the causes.</param>
    /// <param name="order">Order of summing out.</param>
    /// <returns>The result, ready for marginals, for one more question and for drawing worlds.</returns>
    public static Elimination Run(double[] priors, IReadOnlyList<Factor> factors, int[] order)
    {
        Elimination run = new(priors, order);
        ILookup<int, Factor> starting = factors.Where(f => f.Scope.Length > 0).ToLookup(f => f.Scope.Min(v => run.place[v]));
        List<int>[] children = new List<int>[order.Length];
        run.LogEvidence = factors.Where(f => f.Scope.Length == 0).Sum(f => Math.Log(f.Table[0]));
        for (int i = 0; i < order.Length; i++)
        {
            Bucket bucket = run.buckets[i] = new(order[i], [.. starting[i]], children[i] ?? [], p => run.buckets[p], run.place);
            if (bucket.Parent >= 0)
            {
                (children[bucket.Parent] ??= []).Add(i);
            }
        }

        for (int i = 0; i < order.Length; i++)
        {
            run.fromParent[i] = run.buckets[i].Parent < 0 ? [] : run.buckets[i].From(run.buckets[run.buckets[i].Parent]);
        }

        run.MakeRoom();
        run.BothPasses(null);
        return run;
    }

    /// <summary>The same answers with other chances beforehand.</summary>
    /// <param name="others">Chance of each cause before anything was answered, 0 to 1.</param>
    /// <returns>The result.</returns>
    public Elimination Again(double[] others)
    {
        Elimination run = Laid(others);
        run.LogEvidence = LogEvidence - logs.Sum();
        run.BothPasses(null);
        return run;
    }

    /// <summary>
    /// What one more question would change, for each of its answers: only the places on the way from its causes outward are summed again,
    /// and only causes that hang together with it are looked at on the way back.
    /// </summary>
    /// <param name="scope">Causes of the question, each once.</param>
    /// <param name="tables">A table over them for each answer.</param>
    /// <returns>For each answer the logarithm of the chance of everything with it, and the chance of each cause.</returns>
    public (double LogEvidence, double[] Marginals)[] With(int[] scope, double[][] tables)
    {
        if (scope.Length == 0)
        {
            return [.. tables.Select(t => (LogEvidence + Math.Log(t[0]), (double[])Marginals.Clone()))];
        }

        return new OneMoreQuestion(this, scope).Answers(tables);
    }

    /// <summary>Works the same layout through again and again with other tables, in room of its own: what would be believed without an answer.</summary>
    /// <returns>From tables that stand in for those of some factors to the chance of each cause.</returns>
    public Func<Func<Factor, double[]>, double[]> WithOtherTables()
    {
        Elimination run = Laid(priors);
        return tableOf =>
        {
            run.BothPasses(tableOf);
            return (double[])run.Marginals.Clone();
        };
    }

    /// <summary>Draws worlds from the joint distribution of the causes.</summary>
    /// <param name="stream">Source of chance.</param>
    /// <param name="world">Filled with true for each cause that is there.</param>
    public void Draw(RandomStream stream, bool[] world)
    {
        for (int i = order.Length - 1; i >= 0; i--)
        {
            int[] scope = buckets[i].Scope;
            int state = 0;
            for (int k = 1; k < scope.Length; k++)
            {
                state |= world[scope[k]] ? 1 << k : 0;
            }

            double there = products[i][state | 1];
            world[scope[0]] = stream.NextShare() * (there + products[i][state]) < there;
        }
    }

    // The layout hangs on what was asked only, not on the numbers.
    private Elimination Laid(double[] others)
    {
        Elimination run = new(others, order);
        buckets.CopyTo(run.buckets, 0);
        fromParent.CopyTo(run.fromParent, 0);
        run.MakeRoom();
        return run;
    }

    private void MakeRoom()
    {
        for (int i = 0; i < order.Length; i++)
        {
            (products[i], messages[i]) = Room(buckets[i]);
            joints[i] = new double[products[i].Length];
        }

        around = new double[messages.Max(m => m.Length)];
    }

    private void BothPasses(Func<Factor, double[]>? tableOf)
    {
        for (int i = 0; i < order.Length; i++)
        {
            LogEvidence += logs[i] = buckets[i].SumOut(priors[order[i]], MessageOf, tableOf, products[i], messages[i]);
        }

        for (int i = order.Length - 1; i >= 0; i--)
        {
            int parent = buckets[i].Parent;
            Marginals[order[i]] = Bucket.Join(products[i], messages[i], parent < 0 ? null : joints[parent], fromParent[i], joints[i], around);
        }
    }

    private double[] MessageOf(int from) => messages[from];

    private static (double[] Product, double[] Message) Room(Bucket bucket) => (new double[1 << bucket.Scope.Length], new double[1 << (bucket.Scope.Length - 1)]);

    /// <summary>The places that one more question touches, laid out once for all its answers.</summary>
    private sealed class OneMoreQuestion
    {
        private readonly Elimination run;
        private readonly Factor question;
        private readonly int first;
        private readonly Bucket?[] changed;
        private readonly double[][] products;
        private readonly double[][] messages;
        private readonly double[][] joints;
        private readonly int[][] fromParent;
        private readonly bool[] moved;
        private readonly double[] around;

        public OneMoreQuestion(Elimination run, int[] scope)
        {
            this.run = run;
            int count = run.order.Length;
            first = scope.Min(v => run.place[v]);
            (changed, moved) = (new Bucket?[count], new bool[count]);
            (products, messages, joints) = ((double[][])run.products.Clone(), (double[][])run.messages.Clone(), (double[][])run.joints.Clone());
            fromParent = (int[][])run.fromParent.Clone();
            question = new(scope, []);
            SumAgain();
            LookBack();
            around = new double[Enumerable.Range(0, count).Max(i => messages[i].Length)];
        }

        public (double, double[])[] Answers(double[][] tables) => [.. tables.Select(Answer)];

        // Everything that the question reaches, and every place that used to hear from such a place.
        private void SumAgain()
        {
            HashSet<int> again = [first];
            Dictionary<int, List<int>> arriving = [];
            for (int i = first; i < changed.Length; i++)
            {
                if (!again.Contains(i))
                {
                    continue;
                }

                Bucket before = run.buckets[i];
                int[] children = [.. before.Children.Where(c => changed[c] is null).Concat(arriving.GetValueOrDefault(i) ?? []).Order()];
                Bucket now = changed[i] = new(run.order[i], i == first ? [.. before.Factors, question] : before.Factors, children, At, run.place);
                (products[i], messages[i]) = Room(now);
                if (before.Parent >= 0)
                {
                    again.Add(before.Parent);
                }

                if (now.Parent >= 0)
                {
                    again.Add(now.Parent);
                    (arriving.TryGetValue(now.Parent, out List<int>? there) ? there : arriving[now.Parent] = []).Add(i);
                }
            }
        }

        // A place moves with what it hangs on.
        private void LookBack()
        {
            for (int i = changed.Length - 1; i >= 0; i--)
            {
                int parent = At(i).Parent;
                moved[i] = changed[i] is not null || (parent >= 0 && moved[parent]);
                if (moved[i])
                {
                    joints[i] = new double[products[i].Length];
                    fromParent[i] = parent < 0 ? [] : changed[i] is null && changed[parent] is null ? fromParent[i] : At(i).From(At(parent));
                }
            }
        }

        private Bucket At(int place) => changed[place] ?? run.buckets[place];

        private (double, double[]) Answer(double[] table)
        {
            double log = run.LogEvidence;
            double[] TableOf(Factor factor) => ReferenceEquals(factor, question) ? table : factor.Table;
            for (int i = first; i < changed.Length; i++)
            {
                if (changed[i] is { } bucket)
                {
                    log += bucket.SumOut(run.priors[run.order[i]], p => messages[p], i == first ? TableOf : null, products[i], messages[i]) - run.logs[i];
                }
            }

            double[] marginals = (double[])run.Marginals.Clone();
            for (int i = changed.Length - 1; i >= 0; i--)
            {
                if (moved[i])
                {
                    int parent = At(i).Parent;
                    marginals[run.order[i]] = Bucket.Join(products[i], messages[i], parent < 0 ? null : joints[parent], fromParent[i], joints[i], around);
                }
            }

            return (log, marginals);
        }
    }
}
