namespace FixPlanner.Core.Planning.BestSet;

/// <summary>The order in which items are maximised out: fewest neighbours first, ties by number.</summary>
internal static class OverlapOrder
{
    /// <summary>An item with more neighbours than this does not join them: its tables are split anyway.</summary>
    private const int MostJoined = 16;

    /// <summary>Finds an order.</summary>
    /// <param name="count">Number of items.</param>
    /// <param name="scopes">Items of each table.</param>
    public static int[] Of(int count, IReadOnlyList<int[]> scopes)
    {
        HashSet<int>[] near = [.. Enumerable.Range(0, count).Select(_ => new HashSet<int>())];
        foreach (int[] scope in scopes)
        {
            Join(near, scope);
        }

        SortedSet<(int Neighbours, int Item)> open = [.. near.Index().Select(n => (n.Item.Count, n.Index))];
        int[] order = new int[count];
        for (int i = 0; i < count; i++)
        {
            (int, int Item) next = open.Min;
            open.Remove(next);
            order[i] = next.Item;
            int[] around = [.. near[next.Item]];
            foreach (int other in around)
            {
                open.Remove((near[other].Count, other));
                near[other].Remove(next.Item);
            }

            if (around.Length <= MostJoined)
            {
                Join(near, around);
            }

            open.UnionWith(around.Select(other => (near[other].Count, other)));
        }

        return order;
    }

    private static void Join(HashSet<int>[] near, int[] scope)
    {
        foreach (int one in scope)
        {
            near[one].UnionWith(scope);
            near[one].Remove(one);
        }
    }
}
