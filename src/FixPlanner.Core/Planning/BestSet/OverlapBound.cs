namespace FixPlanner.Core.Planning.BestSet;

/// <summary>
/// A close limit for a search that was stopped. At fixed prices of money and time the overlap within causes, and what needs or excludes what,
/// are solved exactly by maximising items out one by one; what stays loose is whole items against money and time, and the chord of noise.
/// Where a table would grow too wide it is split and each part maximised for itself, which can only raise the limit.
/// </summary>
internal sealed class OverlapBound
{
    /// <summary>Items on one table, the one that is maximised out included.</summary>
    private const int Widest = 11;

    private readonly SearchItems items;
    private readonly SearchFrame frame;
    private readonly double[] alone;
    private readonly List<double[]> tables = [];
    private readonly Part[] parts;

    /// <summary>Lays the tables out for one node.</summary>
    /// <param name="frame">The node; its active items were just updated.</param>
    /// <param name="items">The items.</param>
    /// <param name="gains">The gains of that node.</param>
    public OverlapBound(SearchFrame frame, SearchItems items, NodeGains gains)
    {
        (this.frame, this.items) = (frame, items);
        int count = frame.ActiveCount;
        int[] local = new int[items.Count];
        Array.Fill(local, -1);
        alone = new double[count];
        for (int a = 0; a < count; a++)
        {
            int i = frame.Active[a];
            local[i] = a;
            alone[a] = items.Solo[i] - (gains.AddedPrice * items.Added[i]) - (gains.LoadShare * Math.Max(0, items.Load[i] - frame.Load));
        }

        List<int[]> scopes = [];
        Overlap(items.Terms, i => (items.LinkStart[i], items.LinkStart[i + 1]), items.LinkTerm, items.LinkFraction, t => frame.Left[t], scopes);
        Overlap(items.Sources, i => (items.NoiseStart[i], items.NoiseStart[i + 1]), items.NoiseSource, items.NoiseFraction, s => gains.Slope * frame.Power[s], scopes);
        Ties(local, scopes);
        parts = LayOut(scopes, OverlapOrder.Of(count, scopes));
    }

    /// <summary>The lowest limit found by moving the prices a little.</summary>
    /// <param name="prices">Prices to start from.</param>
    /// <param name="tries">Most evaluations.</param>
    public double Lowest(Multipliers prices, int tries)
    {
        double best = At(prices);
        double stride = 0.3;
        for (int tried = 0; tried < tries && stride > 0.01;)
        {
            double before = best;
            foreach ((double money, double time) in ((double, double)[])[(1 + stride, 1), (1 - stride, 1), (1, 1 + stride), (1, 1 - stride)])
            {
                Multipliers moved = new() { Money = prices.Money * money, Time = prices.Time * time };
                double limit = At(moved);
                tried++;
                if (limit < best)
                {
                    (best, prices) = (limit, moved);
                }
            }

            stride *= best < before ? 1 : 0.5;
        }

        return best;
    }

    /// <summary>The limit at fixed prices.</summary>
    public double At(Multipliers prices)
    {
        double limit = frame.Value + (prices.Money * frame.Money) + (prices.Time * frame.Time);
        Span<double> sum = stackalloc double[1 << Widest];
        foreach (Part part in parts)
        {
            int i = frame.Active[part.Item];
            double own = part.CarriesOwn ? alone[part.Item] - (prices.Money * items.Money[i]) - (prices.Time * items.Time[i]) : 0;
            int states = 1 << part.Scope.Length;
            for (int s = 0; s < states; s++)
            {
                sum[s] = (s & 1) == 1 ? own : 0;
            }

            foreach ((int table, int[] at) in part.Tables)
            {
                double[] values = tables[table];
                for (int s = 0; s < states; s++)
                {
                    sum[s] += values[at[s]];
                }
            }

            double[]? passed = part.Passes < 0 ? null : tables[part.Passes];
            for (int s = 0; s < states; s += 2)
            {
                double most = Math.Max(sum[s], sum[s + 1]);
                if (passed is null)
                {
                    limit += most;
                }
                else
                {
                    passed[s >> 1] = most;
                }
            }
        }

        return limit;
    }

    /// <summary>For each term the items that share it: what a set takes away in all, for each of their subsets.</summary>
    private void Overlap(int terms, Func<int, (int From, int To)> links, int[] place, double[] fraction, Func<int, double> worth, List<int[]> scopes)
    {
        List<(int Item, double Fraction)>[] on = [.. Enumerable.Range(0, terms).Select(_ => new List<(int, double)>())];
        for (int a = 0; a < frame.ActiveCount; a++)
        {
            (int from, int to) = links(frame.Active[a]);
            for (int l = from; l < to; l++)
            {
                on[place[l]].Add((a, fraction[l]));
            }
        }

        for (int t = 0; t < terms; t++)
        {
            double whole = worth(t);
            if (whole <= 0)
            {
                continue;
            }

            // One item has no overlap; of more than a table holds each is counted as if alone, which is never less.
            if (on[t].Count is 1 or >= Widest)
            {
                on[t].ForEach(x => alone[x.Item] += whole * x.Fraction);
            }
            else if (on[t].Count > 1)
            {
                double[] table = new double[1 << on[t].Count];
                for (int s = 0; s < table.Length; s++)
                {
                    double left = 1;
                    for (int k = 0; k < on[t].Count; k++)
                    {
                        left *= (s >> k & 1) == 1 ? 1 - on[t][k].Fraction : 1;
                    }

                    table[s] = whole * (1 - left);
                }

                scopes.Add([.. on[t].Select(x => x.Item)]);
                tables.Add(table);
            }
        }
    }

    /// <summary>What needs and what excludes what. What is in already is needed no more.</summary>
    private void Ties(int[] local, List<int[]> scopes)
    {
        for (int a = 0; a < frame.ActiveCount; a++)
        {
            foreach (int need in items.Needs[frame.Active[a]])
            {
                if (frame.State[need] == SearchFrame.Open && local[need] >= 0)
                {
                    scopes.Add([a, local[need]]);
                    tables.Add([0, double.NegativeInfinity, 0, 0]);
                }
            }

            foreach (int other in items.Excludes[frame.Active[a]])
            {
                if (local[other] > a)
                {
                    scopes.Add([a, local[other]]);
                    tables.Add([0, 0, 0, double.NegativeInfinity]);
                }
            }
        }
    }

    private Part[] LayOut(List<int[]> scopes, int[] order)
    {
        int[] place = new int[order.Length];
        List<(int Table, int[] Scope)>[] held = [.. order.Select(_ => new List<(int, int[])>())];
        for (int i = 0; i < order.Length; i++)
        {
            place[order[i]] = i;
        }

        for (int t = 0; t < scopes.Count; t++)
        {
            held[scopes[t].Min(item => place[item])].Add((t, scopes[t]));
        }

        List<Part> laid = [];
        for (int i = 0; i < order.Length; i++)
        {
            bool first = true;
            foreach ((List<int> scope, List<(int Table, int[] Scope)> together) in Split(order[i], held[i]))
            {
                int[] all = [.. scope];
                int passes = -1;
                if (all.Length > 1)
                {
                    passes = tables.Count;
                    tables.Add(new double[1 << (all.Length - 1)]);
                    held[all.Skip(1).Min(item => place[item])].Add((passes, all[1..]));
                }

                laid.Add(new(order[i], all, [.. together.Select(x => (x.Table, Spread(all, x.Scope)))], passes, first));
                first = false;
            }
        }

        return [.. laid];
    }

    /// <summary>Puts tables together as long as they stay narrow; the wide ones first.</summary>
    private static List<(List<int> Scope, List<(int Table, int[] Scope)> Tables)> Split(int item, List<(int Table, int[] Scope)> held)
    {
        List<(List<int> Scope, List<(int, int[])> Tables)> groups = [([item], [])];
        foreach ((int table, int[] scope) in held.OrderByDescending(x => x.Scope.Length).ThenBy(x => x.Table))
        {
            int fits = groups.FindIndex(g => g.Scope.Count + scope.Count(x => !g.Scope.Contains(x)) <= Widest);
            if (fits < 0)
            {
                fits = groups.Count;
                groups.Add(([item], []));
            }

            groups[fits].Scope.AddRange(scope.Where(x => !groups[fits].Scope.Contains(x)).ToArray());
            groups[fits].Tables.Add((table, scope));
        }

        return groups;
    }

    // For each state of the wide scope, the state of the narrow one.
    private static int[] Spread(int[] wide, int[] narrow)
    {
        int[] at = new int[1 << wide.Length];
        for (int k = 0; k < wide.Length; k++)
        {
            int bit = Array.IndexOf(narrow, wide[k]) is var position and >= 0 ? 1 << position : 0;
            for (int s = 0; s < 1 << k; s++)
            {
                at[s | (1 << k)] = at[s] | bit;
            }
        }

        return at;
    }

    /// <summary>One table to maximise: the item is the first of the scope.</summary>
    private sealed record Part(int Item, int[] Scope, (int Table, int[] At)[] Tables, int Passes, bool CarriesOwn);
}
