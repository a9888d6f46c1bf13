namespace FixPlanner.Core.Planning.BestSet;

/// <summary>
/// Exact choice of the best set by branch and bound, depth first. Every node is a set that can be done, so the best so far is an answer at any time.
/// The bound takes each item's gain as if it were chosen next (overlap within a cause only lowers it; noise is replaced by its chord) and prices money and time.
/// A solver keeps its buffers from one problem to the next and is not meant for several threads at once.
/// </summary>
internal sealed class BestSetSolver
{
    private const int RootSteps = 120;
    private const int NodeSteps = 4;
    private const double Equal = 1e-12;

    /// <summary>A search that is not over after so many nodes tries to better its best set by exchanges, once.</summary>
    private const long ExchangeAt = 1500;
    private const int MostRounds = 12;

    private readonly SearchItems items;
    private readonly List<SearchFrame> frames = [];
    private readonly SetStructure structure;
    private readonly double[] gain;
    private readonly double[] power;
    private readonly byte[] best;
    private SearchLimits limits;
    private double bestValue;
    private double noiseBefore;
    private double openBound;
    private long nodes;
    private bool stopped;
    private SearchFrame? start;
    private SearchFrame? trial;
    private Multipliers rootPrices;

    public BestSetSolver(SetStructure structure)
    {
        this.structure = structure;
        items = new(structure);
        gain = new double[structure.Items];
        power = new double[structure.Sources];
        best = new byte[structure.Items];
    }

    /// <summary>Finds the best set.</summary>
    /// <param name="problem">The figures; its structure is that of the solver.</param>
    /// <param name="searchLimits">When to stop.</param>
    public SetAnswer Solve(SetProblem problem, SearchLimits searchLimits)
    {
        limits = searchLimits;
        items.Pack(problem, limits);
        SearchFrame root = FrameAt(0);
        Start(root, problem);
        if (InsistsOn(root, problem) is { } refusal)
        {
            return refusal;
        }

        start ??= new(structure.Items, structure.Terms, structure.Sources);
        start.CopyFrom(root, items.Count, items.Terms, items.Sources);
        nodes = 0;
        stopped = false;
        openBound = double.NegativeInfinity;
        bestValue = double.NegativeInfinity;
        Explore(0, default, double.PositiveInfinity);
        bool[] chosen = new bool[structure.Items];
        for (int p = 0; p < items.Count; p++)
        {
            chosen[items.Original[p]] = best[p] == SearchFrame.In;
        }

        TieBreak.PreferFirst(problem, chosen);
        double points = problem.Points(chosen);
        int cents = problem.CentsOf(chosen);
        int minutes = problem.MinutesOf(chosen);
        double price = (limits.PointsPerCent * problem.MoneyCents) + (limits.PointsPerMinute * problem.TimeMinutes);
        double upper = stopped && openBound > bestValue ? Math.Max(points, openBound + price) : points;
        return new(chosen, points, upper, cents, minutes, nodes, BrokenLimit.None, 0, 0);
    }

    private void Start(SearchFrame root, SetProblem problem)
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

    /// <summary>Puts in what must be in; an answer when that cannot be done.</summary>
    private SetAnswer? InsistsOn(SearchFrame root, SetProblem problem)
    {
        BrokenLimit broken = BrokenLimit.None;
        for (int i = 0; i < structure.Items; i++)
        {
            if (!problem.Must[i] || broken != BrokenLimit.None)
            {
                continue;
            }

            int place = items.PlaceOf(i);
            if (place < 0)
            {
                broken = structure.Impossible[i] ? BrokenLimit.Conflict : BrokenLimit.RuledOut;
            }
            else if (!TakeIn(root, place, keepLimits: false))
            {
                broken = BrokenLimit.Conflict;
            }
        }

        if (broken == BrokenLimit.None)
        {
            broken = (root.Money < 0, root.Time < 0) switch
            {
                (true, true) => BrokenLimit.MoneyAndTime,
                (true, false) => BrokenLimit.Money,
                (false, true) => BrokenLimit.Time,
                _ => BrokenLimit.None,
            };
        }

        return broken == BrokenLimit.None
            ? null
            : new(new bool[structure.Items], 0, 0, 0, 0, 0, broken, (int)(problem.MoneyCents - root.Money), (int)(problem.TimeMinutes - root.Time));
    }

    private void Explore(int depth, Multipliers prices, double inherited)
    {
        SearchFrame frame = FrameAt(depth);
        while (true)
        {
            if (nodes >= limits.MostNodes || limits.Stop.IsCancellationRequested)
            {
                Keep(frame);
                stopped = true;
                openBound = Math.Max(openBound, inherited);
                return;
            }

            if (++nodes == ExchangeAt)
            {
                Exchange();
            }

            Keep(frame);
            double bound = Math.Min(Tighten(frame, ref prices, depth == 0 && nodes == 1), inherited);
            if (bound <= bestValue + Equal || frame.ActiveCount == 0)
            {
                return;
            }

            rootPrices = nodes == 1 ? prices : rootPrices;
            int branch = LargestRest(frame, prices, out double rest);
            inherited = bound - Math.Max(rest, 0);
            SearchFrame child = FrameAt(depth + 1);
            child.CopyFrom(frame, items.Count, items.Terms, items.Sources);
            if (TakeIn(child, branch, keepLimits: true))
            {
                Explore(depth + 1, prices, bound + Math.Min(rest, 0));
                if (stopped)
                {
                    openBound = Math.Max(openBound, inherited);
                    return;
                }
            }

            if (inherited <= bestValue + Equal)
            {
                return;
            }

            TakeOut(frame, branch);
        }
    }

    /// <summary>Betters the best set: leave one item out, fill up greedily at the prices of the root, keep what is better, until nothing is.</summary>
    private void Exchange()
    {
        byte[] from = new byte[items.Count];
        double before = double.NegativeInfinity;
        for (int round = 0; round < MostRounds && bestValue > before; round++)
        {
            before = bestValue;
            for (int without = 0; without < items.Count && !limits.Stop.IsCancellationRequested; without++)
            {
                if (best[without] == SearchFrame.In && start!.State[without] != SearchFrame.In)
                {
                    Array.Copy(best, from, items.Count);
                    FillUp(from, without);
                }
            }
        }
    }

    private void FillUp(byte[] from, int without)
    {
        trial ??= new(structure.Items, structure.Terms, structure.Sources);
        trial.CopyFrom(start!, items.Count, items.Terms, items.Sources);
        TakeOut(trial, without);
        for (int i = 0; i < items.Count; i++)
        {
            if (from[i] == SearchFrame.In && trial.State[i] == SearchFrame.Open)
            {
                TakeIn(trial, i, keepLimits: true);
            }
        }

        while (true)
        {
            Gains(trial);
            if (trial.ActiveCount == 0)
            {
                return;
            }

            int dearest = 0;
            for (int a = 1; a < trial.ActiveCount; a++)
            {
                dearest = Density(trial, a) > Density(trial, dearest) ? a : dearest;
            }

            if (!TakeIn(trial, trial.Active[dearest], keepLimits: true))
            {
                return;
            }

            Keep(trial);
        }
    }

    private double Density(SearchFrame frame, int place)
    {
        int i = frame.Active[place];
        return gain[place] / (1e-9 + (rootPrices.Money * items.Money[i]) + (rootPrices.Time * items.Time[i]));
    }

    /// <summary>Keeps the node's set when it is the best so far.</summary>
    private void Keep(SearchFrame frame)
    {
        if (frame.Value > bestValue)
        {
            bestValue = frame.Value;
            Array.Copy(frame.State, best, items.Count);
        }
    }

    /// <summary>Bounds the node and decides every item that can be decided, until nothing changes. Minus infinity when the node is done.</summary>
    private double Tighten(SearchFrame frame, ref Multipliers prices, bool root)
    {
        while (true)
        {
            Gains(frame);
            if (frame.ActiveCount == 0)
            {
                return double.NegativeInfinity;
            }

            double bound = prices.Lower(frame, items, gain.AsSpan(0, frame.ActiveCount), root ? RootSteps : NodeSteps, bestValue + Equal, root ? 0.5 : 0.15);
            if (bound <= bestValue + Equal)
            {
                return double.NegativeInfinity;
            }

            if (!Decide(frame, prices, bound, out bool impossible))
            {
                return bound;
            }

            if (impossible)
            {
                return double.NegativeInfinity;
            }

            Keep(frame);
            root = false;
        }
    }

    /// <summary>Largest gain of every item that still fits; items that cannot gain leave unless something that can gain needs them.</summary>
    private void Gains(SearchFrame frame)
    {
        int kept = 0;
        for (int a = 0; a < frame.ActiveCount; a++)
        {
            int i = frame.Active[a];
            if (frame.State[i] != SearchFrame.Open)
            {
                continue;
            }

            if (Fits(frame, i))
            {
                frame.Active[kept++] = i;
            }
            else
            {
                frame.State[i] = SearchFrame.Out;
            }
        }

        frame.ActiveCount = kept;
        double chord = Chord(frame, out double addedPrice);
        double share = LoadShare(frame);
        for (int a = 0; a < kept; a++)
        {
            int i = frame.Active[a];
            double most = items.Solo[i] - (addedPrice * items.Added[i]) - (share * Math.Max(0, items.Load[i] - frame.Load));
            for (int l = items.LinkStart[i]; l < items.LinkStart[i + 1]; l++)
            {
                most += frame.Left[items.LinkTerm[l]] * items.LinkFraction[l];
            }

            if (chord > 0)
            {
                double removed = 0;
                for (int l = items.NoiseStart[i]; l < items.NoiseStart[i + 1]; l++)
                {
                    removed += frame.Power[items.NoiseSource[l]] * items.NoiseFraction[l];
                }

                most += chord * removed;
            }

            gain[a] = most;
        }

        DropWithoutGain(frame);
    }

    private void DropWithoutGain(SearchFrame frame)
    {
        int kept = 0;
        for (int a = 0; a < frame.ActiveCount; a++)
        {
            int i = frame.Active[a];
            if (gain[a] > 0 || IsNeeded(frame, i))
            {
                frame.Active[kept] = i;
                gain[kept++] = gain[a];
            }
            else
            {
                frame.State[i] = SearchFrame.Out;
            }
        }

        frame.ActiveCount = kept;
    }

    private bool IsNeeded(SearchFrame frame, int item)
    {
        foreach (int by in items.NeededBy[item])
        {
            if (frame.State[by] == SearchFrame.Open)
            {
                return true;
            }
        }

        return false;
    }

    private bool Fits(SearchFrame frame, int item)
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

    /// <summary>
    /// Points per unit of removed noise energy along the chord from now to everything active: the logarithm is convex, so it lies under its chord.
    /// Energy that an item adds costs at least its share of the loudest state.
    /// </summary>
    private double Chord(SearchFrame frame, out double addedPrice)
    {
        addedPrice = 0;
        if (items.NoiseWorth <= 0)
        {
            return 0;
        }

        Array.Copy(frame.Power, power, items.Sources);
        double added = 0;
        for (int a = 0; a < frame.ActiveCount; a++)
        {
            int i = frame.Active[a];
            added += items.Added[i];
            for (int l = items.NoiseStart[i]; l < items.NoiseStart[i + 1]; l++)
            {
                power[items.NoiseSource[l]] *= 1 - items.NoiseFraction[l];
            }
        }

        double removable = 0;
        for (int k = 0; k < items.Sources; k++)
        {
            removable += frame.Power[k] - power[k];
        }

        addedPrice = items.NoiseWorth / (frame.Noise + added);
        double least = frame.Noise - removable;
        return removable > 1e-9 * frame.Noise
            ? items.NoiseWorth * Math.Log(frame.Noise / least) / removable
            : items.NoiseWorth / least;
    }

    /// <summary>
    /// A load that counts once: the largest of a set is at least the mean of those in it, so each may be charged its part of all that are open.
    /// </summary>
    private double LoadShare(SearchFrame frame)
    {
        int count = 0;
        for (int a = 0; a < frame.ActiveCount; a++)
        {
            count += items.Load[frame.Active[a]] > frame.Load ? 1 : 0;
        }

        return count == 0 ? 0 : 1.0 / count;
    }

    /// <summary>Fixes items by reduced cost: out when a set with them, in when a set without them, cannot beat the best so far.</summary>
    private bool Decide(SearchFrame frame, Multipliers prices, double bound, out bool impossible)
    {
        impossible = false;
        bool changed = false;
        double spare = bound - bestValue - Equal;
        int count = frame.ActiveCount;
        for (int a = 0; a < count; a++)
        {
            int i = frame.Active[a];
            double rest = gain[a] - (prices.Money * items.Money[i]) - (prices.Time * items.Time[i]);
            if (frame.State[i] == SearchFrame.Open && -rest >= spare)
            {
                TakeOut(frame, i);
                changed = true;
            }
            else if (rest >= spare && frame.State[i] != SearchFrame.In)
            {
                changed = true;
                if (frame.State[i] == SearchFrame.Out || !TakeIn(frame, i, keepLimits: true))
                {
                    impossible = true;
                    return true;
                }
            }
        }

        return changed;
    }

    private int LargestRest(SearchFrame frame, Multipliers prices, out double rest)
    {
        int branch = frame.Active[0];
        rest = double.NegativeInfinity;
        for (int a = 0; a < frame.ActiveCount; a++)
        {
            int i = frame.Active[a];
            double own = gain[a] - (prices.Money * items.Money[i]) - (prices.Time * items.Time[i]);
            if (own > rest)
            {
                rest = own;
                branch = i;
            }
        }

        return branch;
    }

    /// <summary>Takes an item in with all that it needs, and out what they exclude. False when that cannot be done.</summary>
    private bool TakeIn(SearchFrame frame, int item, bool keepLimits)
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

    private void TakeOut(SearchFrame frame, int item)
    {
        frame.State[item] = SearchFrame.Out;
        foreach (int by in items.NeededBy[item])
        {
            frame.State[by] = SearchFrame.Out;
        }
    }

    private SearchFrame FrameAt(int depth)
    {
        while (frames.Count <= depth)
        {
            frames.Add(new(structure.Items, structure.Terms, structure.Sources));
        }

        return frames[depth];
    }
}
