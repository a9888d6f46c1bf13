using FixPlanner.Core.Planning.Effects;

namespace FixPlanner.Core.Planning.BestSet;

/// <summary>
/// The items that can be chosen at all, packed close together for the search: items that are ruled out are gone, links without worth are gone,
/// and a term that only one item touches has become a fixed gain of that item.
/// </summary>
internal sealed class SearchItems
{
    private readonly int[] packed;
    private readonly int[] touches;
    private readonly int[] termOf;
    private readonly int[] sourceOf;
    private readonly bool[] out_;

    public SearchItems(SetStructure structure)
    {
        int n = structure.Items;
        packed = new int[n];
        out_ = new bool[n];
        touches = new int[structure.Terms];
        termOf = new int[structure.Terms];
        sourceOf = new int[structure.Sources];
        Original = new int[n];
        LinkStart = new int[n + 1];
        LinkTerm = new int[structure.LinkTerm.Length];
        LinkFraction = new double[structure.LinkTerm.Length];
        NoiseStart = new int[n + 1];
        NoiseSource = new int[structure.NoiseSource.Length];
        NoiseFraction = new double[structure.NoiseSource.Length];
        Solo = new double[n];
        Added = new double[n];
        Load = new double[n];
        Money = new double[n];
        Time = new double[n];
        Worth = new double[structure.Terms];
        Power = new double[structure.Sources];
        Needs = new int[n][];
        NeededBy = new int[n][];
        Excludes = new int[n][];
    }

    public int Count { get; private set; }

    public int Terms { get; private set; }

    public int Sources { get; private set; }

    public int[] Original { get; }

    public int[] LinkStart { get; }

    public int[] LinkTerm { get; }

    public double[] LinkFraction { get; }

    public int[] NoiseStart { get; }

    public int[] NoiseSource { get; }

    public double[] NoiseFraction { get; }

    public double[] Solo { get; }

    public double[] Added { get; }

    public double[] Load { get; }

    public double[] Money { get; }

    public double[] Time { get; }

    public double[] Worth { get; }

    public double[] Power { get; }

    public int[][] Needs { get; }

    public int[][] NeededBy { get; }

    public int[][] Excludes { get; }

    /// <summary>Points per natural logarithm of the noise energy.</summary>
    public double NoiseWorth { get; private set; }

    /// <summary>Noise energy of the rest of the car.</summary>
    public double NoiseRest { get; private set; }

    /// <summary>Place of an item in the packed list, or -1 when it is ruled out.</summary>
    public int PlaceOf(int item) => packed[item];

    public void Pack(SetProblem problem, SearchLimits limits)
    {
        SetStructure s = problem.Structure;
        RuleOut(problem);
        Count = 0;
        for (int i = 0; i < s.Items; i++)
        {
            packed[i] = out_[i] ? -1 : Count;
            if (!out_[i])
            {
                Original[Count++] = i;
            }
        }

        CountTouches(problem);
        PackLinks(problem, limits);
        PackNoise(problem);
        for (int p = 0; p < Count; p++)
        {
            int i = Original[p];
            Needs[p] = Mapped(s.Needs[i]);
            NeededBy[p] = Mapped(s.NeededBy[i]);
            Excludes[p] = Mapped(s.Excludes[i]);
        }
    }

    /// <summary>Never, impossible, beyond a limit alone or with what it needs; and whatever needs such an item.</summary>
    private void RuleOut(SetProblem problem)
    {
        SetStructure s = problem.Structure;
        Array.Clear(out_);
        for (int i = 0; i < s.Items; i++)
        {
            bool gone = problem.Never[i] || s.Impossible[i];
            int cents = problem.Cents[i];
            int minutes = problem.Minutes[i];
            foreach (int need in s.Needs[i])
            {
                gone |= problem.Never[need];
                cents += problem.Must[need] ? 0 : problem.Cents[need];
                minutes += problem.Must[need] ? 0 : problem.Minutes[need];
            }

            out_[i] = gone || (!problem.Must[i] && (cents > problem.MoneyCents || minutes > problem.TimeMinutes) && !IsNeededByMust(problem, i));
        }
    }

    private static bool IsNeededByMust(SetProblem problem, int item)
    {
        foreach (int by in problem.Structure.NeededBy[item])
        {
            if (problem.Must[by])
            {
                return true;
            }
        }

        return false;
    }

    private void CountTouches(SetProblem problem)
    {
        SetStructure s = problem.Structure;
        Array.Clear(touches);
        for (int p = 0; p < Count; p++)
        {
            for (int l = s.LinkStart[Original[p]]; l < s.LinkStart[Original[p] + 1]; l++)
            {
                touches[s.LinkTerm[l]] += problem.Fraction[l] > 0 ? 1 : 0;
            }
        }

        Terms = 0;
        for (int t = 0; t < touches.Length; t++)
        {
            termOf[t] = -1;
            if (touches[t] > 1 && problem.TermWorth[t] > 0)
            {
                Worth[Terms] = problem.TermWorth[t];
                termOf[t] = Terms++;
            }
        }
    }

    private void PackLinks(SetProblem problem, SearchLimits limits)
    {
        SetStructure s = problem.Structure;
        int next = 0;
        for (int p = 0; p < Count; p++)
        {
            int i = Original[p];
            LinkStart[p] = next;
            Money[p] = problem.Cents[i];
            Time[p] = problem.Minutes[i];
            Load[p] = problem.SharedLoad[i];
            double solo = problem.Side[i] - (limits.PointsPerCent * Money[p]) - (limits.PointsPerMinute * Time[p]);
            for (int l = s.LinkStart[i]; l < s.LinkStart[i + 1]; l++)
            {
                int term = s.LinkTerm[l];
                if (termOf[term] < 0)
                {
                    solo += problem.TermWorth[term] * problem.Fraction[l];
                }
                else if (problem.Fraction[l] > 0)
                {
                    LinkTerm[next] = termOf[term];
                    LinkFraction[next++] = problem.Fraction[l];
                }
            }

            Solo[p] = solo;
        }

        LinkStart[Count] = next;
    }

    private void PackNoise(SetProblem problem)
    {
        SetStructure s = problem.Structure;
        NoiseWorth = problem.NoiseWorth * Decibels.PerNeper;
        NoiseRest = problem.NoiseRest;
        Sources = 0;
        for (int k = 0; k < s.Sources; k++)
        {
            sourceOf[k] = -1;
            if (NoiseWorth > 0 && problem.NoisePower[k] > 0)
            {
                Power[Sources] = problem.NoisePower[k];
                sourceOf[k] = Sources++;
            }
        }

        int next = 0;
        for (int p = 0; p < Count; p++)
        {
            int i = Original[p];
            NoiseStart[p] = next;
            Added[p] = NoiseWorth > 0 ? problem.NoiseAdded[i] : 0;
            for (int l = s.NoiseStart[i]; l < s.NoiseStart[i + 1]; l++)
            {
                if (sourceOf[s.NoiseSource[l]] >= 0 && problem.NoiseFraction[l] > 0)
                {
                    NoiseSource[next] = sourceOf[s.NoiseSource[l]];
                    NoiseFraction[next++] = problem.NoiseFraction[l];
                }
            }
        }

        NoiseStart[Count] = next;
    }

    private int[] Mapped(int[] items)
    {
        int kept = 0;
        foreach (int item in items)
        {
            kept += packed[item] >= 0 ? 1 : 0;
        }

        if (kept == 0)
        {
            return [];
        }

        int[] mapped = new int[kept];
        kept = 0;
        foreach (int item in items)
        {
            if (packed[item] >= 0)
            {
                mapped[kept++] = packed[item];
            }
        }

        return mapped;
    }
}
