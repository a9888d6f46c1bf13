namespace FixPlanner.Core.Planning.BestSet;

/// <summary>What a decision does to a node: taking an item in or out, with what it needs and excludes.</summary>
internal sealed class SearchMoves(SearchItems items)
{
    private double noiseBefore;

    /// <summary>The node in which nothing is decided.</summary>
    public void Start(SearchFrame root, SetProblem problem)
    {
        Array.Clear(root.State);
        Array.Copy(items.Worth, root.Left, items.Terms);
        Array.Copy(items.Power, root.Power, items.Sources);
        noiseBefore = items.NoiseRest;
        for (int k = 0; k < items.Sources; k++)
        {
            noiseBefore += items.Power[k];
        }

        root.ActiveCount = items.Count;
        for (int p = 0; p < items.Count; p++)
        {
            root.Active[p] = p;
        }

        root.Additive = 0;
        root.Noise = noiseBefore;
        root.Load = 0;
        root.Money = problem.MoneyCents;
        root.Time = problem.TimeMinutes;
        root.Value = 0;
    }

    /// <summary>True when an item and what it still needs keep money and time, and nothing that it needs is out.</summary>
    public bool Fits(SearchFrame frame, int item)
    {
        double money = items.Money[item];
        double time = items.Time[item];
        foreach (int need in items.Needs[item])
        {
            if (frame.State[need] == SearchFrame.Out)
            {
                return false;
            }

            if (frame.State[need] == SearchFrame.Open)
            {
                money += items.Money[need];
                time += items.Time[need];
            }
        }

        return money <= frame.Money && time <= frame.Time;
    }

    /// <summary>Takes an item in with all that it needs, and out what they exclude. False when that cannot be done.</summary>
    public bool TakeIn(SearchFrame frame, int item, bool keepLimits)
    {
        foreach (int need in items.Needs[item])
        {
            if (!Add(frame, need))
            {
                return false;
            }
        }

        return Add(frame, item) && (!keepLimits || (frame.Money >= 0 && frame.Time >= 0));
    }

    private bool Add(SearchFrame frame, int item)
    {
        if (frame.State[item] != SearchFrame.Open)
        {
            return frame.State[item] == SearchFrame.In;
        }

        frame.State[item] = SearchFrame.In;
        frame.Money -= items.Money[item];
        frame.Time -= items.Time[item];
        frame.Load = Math.Max(frame.Load, items.Load[item]);
        double additive = items.Solo[item];
        for (int l = items.LinkStart[item]; l < items.LinkStart[item + 1]; l++)
        {
            ref double left = ref frame.Left[items.LinkTerm[l]];
            double part = left * items.LinkFraction[l];
            additive += part;
            left -= part;
        }

        frame.Additive += additive;
        double noise = items.Added[item];
        for (int l = items.NoiseStart[item]; l < items.NoiseStart[item + 1]; l++)
        {
            ref double left = ref frame.Power[items.NoiseSource[l]];
            double part = left * items.NoiseFraction[l];
            noise -= part;
            left -= part;
        }

        frame.Noise += noise;
        frame.Value = frame.Additive - frame.Load + (items.NoiseWorth > 0 ? items.NoiseWorth * Math.Log(noiseBefore / frame.Noise) : 0);
        foreach (int other in items.Excludes[item])
        {
            if (frame.State[other] == SearchFrame.In)
            {
                return false;
            }

            TakeOut(frame, other);
        }

        return true;
    }

    /// <summary>Takes an item out with all that need it.</summary>
    public void TakeOut(SearchFrame frame, int item)
    {
        frame.State[item] = SearchFrame.Out;
        foreach (int by in items.NeededBy[item])
        {
            frame.State[by] = SearchFrame.Out;
        }
    }
}
