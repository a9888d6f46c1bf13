namespace FixPlanner.Core.Planning.BestSet;

/// <summary>
/// What acts on what in the choice of a set: which items take parts away from which terms and noise sources, which need and which exclude each other.
/// Made once; the figures that change with beliefs and draws are in <see cref="SetProblem"/>. Links of item i are from start[i] to start[i + 1].
/// </summary>
internal sealed class SetStructure
{
    public SetStructure(int items, int terms, int sources, int[] linkStart, int[] linkTerm, int[] noiseStart, int[] noiseSource, IReadOnlyList<(int Item, int Needs)> requires, IReadOnlyList<(int One, int Other)> excludes)
    {
        Items = items;
        Terms = terms;
        Sources = sources;
        LinkStart = linkStart;
        LinkTerm = linkTerm;
        NoiseStart = noiseStart;
        NoiseSource = noiseSource;
        Needs = Closure(items, requires);
        NeededBy = Turned(Needs);
        List<int>[] against = [.. Enumerable.Range(0, items).Select(_ => new List<int>())];
        foreach ((int one, int other) in excludes)
        {
            against[one].Add(other);
            against[other].Add(one);
        }

        Excludes = [.. against.Select(a => a.Distinct().Order().ToArray())];
        Impossible = [.. Enumerable.Range(0, items).Select(i => ContradictsItself(i))];
    }

    /// <summary>Number of items.</summary>
    public int Items { get; }

    /// <summary>Number of additive terms.</summary>
    public int Terms { get; }

    /// <summary>Number of noise sources.</summary>
    public int Sources { get; }

    /// <summary>First link of each item, and one past the last.</summary>
    public int[] LinkStart { get; }

    /// <summary>Term of each link.</summary>
    public int[] LinkTerm { get; }

    /// <summary>First noise link of each item, and one past the last.</summary>
    public int[] NoiseStart { get; }

    /// <summary>Source of each noise link.</summary>
    public int[] NoiseSource { get; }

    /// <summary>All that each item needs, also at second hand; not itself.</summary>
    public int[][] Needs { get; }

    /// <summary>All that need each item, also at second hand.</summary>
    public int[][] NeededBy { get; }

    /// <summary>What each item excludes; both ways.</summary>
    public int[][] Excludes { get; }

    /// <summary>Items that need two things that exclude each other.</summary>
    public bool[] Impossible { get; }

    private static int[][] Closure(int items, IReadOnlyList<(int Item, int Needs)> requires)
    {
        List<int>[] direct = [.. Enumerable.Range(0, items).Select(_ => new List<int>())];
        foreach ((int item, int needs) in requires)
        {
            direct[item].Add(needs);
        }

        int[][] all = new int[items][];
        for (int i = 0; i < items; i++)
        {
            HashSet<int> seen = [];
            Stack<int> open = new(direct[i]);
            while (open.TryPop(out int next))
            {
                if (next != i && seen.Add(next))
                {
                    direct[next].ForEach(open.Push);
                }
            }

            all[i] = [.. seen.Order()];
        }

        return all;
    }

    private static int[][] Turned(int[][] lists)
    {
        List<int>[] turned = [.. lists.Select(_ => new List<int>())];
        for (int i = 0; i < lists.Length; i++)
        {
            foreach (int other in lists[i])
            {
                turned[other].Add(i);
            }
        }

        return [.. turned.Select(t => t.ToArray())];
    }

    private bool ContradictsItself(int item)
    {
        int[] together = [item, .. Needs[item]];
        return together.Any(one => Excludes[one].Intersect(together).Any());
    }
}
