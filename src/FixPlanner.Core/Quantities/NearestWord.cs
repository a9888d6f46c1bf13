namespace FixPlanner.Core.Quantities;

/// <summary>The known word nearest to what somebody typed, for "did you mean".</summary>
public static class NearestWord
{
    /// <summary>Finds the word with the fewest changed, added, dropped or swapped letters.</summary>
    /// <param name="typed">What was typed.</param>
    /// <param name="known">The words that exist; of equals the first wins.</param>
    /// <returns>The nearest word, or null when more than a third of the letters (at least two) would have to change.</returns>
    public static string? To(string typed, IEnumerable<string> known)
    {
        string? nearest = null;
        int fewest = Math.Max(2, typed.Length / 3) + 1;
        foreach (string word in known)
        {
            int changes = Changes(typed, word);
            if (changes < fewest && changes < Math.Max(typed.Length, word.Length))
            {
                nearest = word;
                fewest = changes;
            }
        }

        return nearest;
    }

    internal static int Changes(string from, string to)
    {
        int[,] cost = new int[from.Length + 1, to.Length + 1];
        for (int i = 0; i <= from.Length; i++)
        {
            for (int j = 0; j <= to.Length; j++)
            {
                cost[i, j] = i == 0 || j == 0 ? i + j : CheapestStep(cost, from, to, i, j);
            }
        }

        return cost[from.Length, to.Length];
    }

    private static int CheapestStep(int[,] cost, string from, string to, int i, int j)
    {
        bool same = char.ToLowerInvariant(from[i - 1]) == char.ToLowerInvariant(to[j - 1]);
        int step = Math.Min(Math.Min(cost[i - 1, j], cost[i, j - 1]) + 1, cost[i - 1, j - 1] + (same ? 0 : 1));
        bool swapped = i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1];
        return swapped ? Math.Min(step, cost[i - 2, j - 2] + 1) : step;
    }
}
