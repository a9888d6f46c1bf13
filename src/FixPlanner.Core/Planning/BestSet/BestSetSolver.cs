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

    /// <summary>Evaluations for the limit that a stopped search states.</summary>
    private const int QuoteTries = 24;

    private readonly SearchItems items;
    private readonly List<SearchFrame> frames = [];
    private readonly SetStructure structure;
    private readonly SearchMoves moves;
    private readonly NodeGains gains;
    private readonly SurePicks sure;
    private readonly byte[] best;
    private SearchLimits limits;
    private double bestValue;
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
        moves = new(items);
        gains = new(items, moves, structure);
        sure = new(items, moves, structure);
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
        moves.Start(root, problem);
        if (InsistsOn(root, problem) is { } refusal)
        {
            return refusal;
        }

        start ??= new(structure.Items, structure.Terms, structure.Sources);
        start.CopyFrom(root, items.Count, items.Terms, items.Sources);
        nodes = 0;
        rootPrices = default;
        stopped = false;
        openBound = double.NegativeInfinity;
        bestValue = double.NegativeInfinity;
        Explore(0, default, double.PositiveInfinity);
        if (stopped && limits.Quote && openBound > bestValue)
        {
            openBound = Math.Min(openBound, Overlapping());
        }

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

    /// <summary>The close limit of the whole search.</summary>
    private double Overlapping()
    {
        trial ??= new(structure.Items, structure.Terms, structure.Sources);
        trial.CopyFrom(start!, items.Count, items.Terms, items.Sources);
        gains.Update(trial);
        Multipliers prices = rootPrices;
        prices.Lower(trial, items, gains.Of(trial), RootSteps, double.NegativeInfinity, 0.5);
        return new OverlapBound(trial, items, gains).Lowest(prices, QuoteTries);
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
            else if (!moves.TakeIn(root, place, keepLimits: false))
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
            if (moves.TakeIn(child, branch, keepLimits: true))
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

            moves.TakeOut(frame, branch);
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
        moves.TakeOut(trial, without);
        for (int i = 0; i < items.Count; i++)
        {
            if (from[i] == SearchFrame.In && trial.State[i] == SearchFrame.Open)
            {
                moves.TakeIn(trial, i, keepLimits: true);
            }
        }

        while (true)
        {
            gains.Update(trial);
            if (trial.ActiveCount == 0)
            {
                return;
            }

            int dearest = 0;
            for (int a = 1; a < trial.ActiveCount; a++)
            {
                dearest = Density(trial, a) > Density(trial, dearest) ? a : dearest;
            }

            if (!moves.TakeIn(trial, trial.Active[dearest], keepLimits: true))
            {
                return;
            }

            Keep(trial);
        }
    }

    private double Density(SearchFrame frame, int place)
    {
        int i = frame.Active[place];
        return gains[place] / (1e-9 + (rootPrices.Money * items.Money[i]) + (rootPrices.Time * items.Time[i]));
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
            gains.Update(frame);
            if (frame.ActiveCount == 0)
            {
                return double.NegativeInfinity;
            }

            if (sure.TakeIn(frame))
            {
                Keep(frame);
                continue;
            }

            double bound = prices.Lower(frame, items, gains.Of(frame), root ? RootSteps : NodeSteps, bestValue + Equal, root ? 0.5 : 0.15);
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
            double rest = gains[a] - (prices.Money * items.Money[i]) - (prices.Time * items.Time[i]);
            if (frame.State[i] == SearchFrame.Open && -rest >= spare)
            {
                moves.TakeOut(frame, i);
                changed = true;
            }
            else if (rest >= spare && frame.State[i] != SearchFrame.In)
            {
                changed = true;
                if (frame.State[i] == SearchFrame.Out || !moves.TakeIn(frame, i, keepLimits: true))
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
            double own = gains[a] - (prices.Money * items.Money[i]) - (prices.Time * items.Time[i]);
            if (own > rest)
            {
                rest = own;
                branch = i;
            }
        }

        return branch;
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
