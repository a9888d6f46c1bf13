namespace FixPlanner.Core.Diagnosis;

/// <summary>The order in which causes are summed out, made once per pack: least fill first, ties by number.</summary>
internal static class EliminationOrder
{
    /// <summary>Finds an order.</summary>
    /// <param name="count">Number of causes.</param>
    /// <param name="scopes">Causes of each question.</param>
    /// <returns>Cause numbers in the order of summing out.</returns>
    public static int[] Of(int count, IEnumerable<int[]> scopes)
    {
        HashSet<int>[] near = [.. Enumerable.Range(0, count).Select(_ => new HashSet<int>())];
        foreach (int[] scope in scopes)
        {
            Join(near, scope);
        }

        List<int> left = [.. Enumerable.Range(0, count)];
        int[] order = new int[count];
        for (int i = 0; i < count; i++)
        {
            int next = left.MinBy(v => (Fill(near, v), near[v].Count, v));
            order[i] = next;
            left.Remove(next);
            int[] around = [.. near[next]];
            Join(near, around);
            foreach (int other in around)
            {
                near[other].Remove(next);
            }
        }

        return order;
    }

    private static void Join(HashSet<int>[] near, int[] scope)
    {
        foreach (int a in scope)
        {
            foreach (int b in scope)
            {
                if (a != b)
                {
                    near[a].Add(b);
                }
            }
        }
    }

    private static int Fill(HashSet<int>[] near, int v)
    {
        int[] around = [.. near[v]];
        int fill = 0;
        for (int i = 0; i < around.Length; i++)
        {
            for (int j = i + 1; j < around.Length; j++)
            {
                fill += near[around[i]].Contains(around[j]) ? 0 : 1;
            }
        }

        return fill;
    }
}
