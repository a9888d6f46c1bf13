using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Core.Planning.Recomputing;

/// <summary>A set that may not be chosen as it stands, and why.</summary>
/// <param name="Items">Numbers of its fixes: the smallest subset that breaks the margin by itself.</param>
/// <param name="Break">What it breaks.</param>
internal sealed record MarginCut(IReadOnlyList<int> Items, MarginBreak Break);

/// <summary>
/// The exact search, repeated until the best set breaks no margin. A breaking set is cut off by its smallest breaking subset: every set that keeps the
/// margin leaves out one of the subset, or has something more that relieves it. Each of these ways is searched for itself, most points first, so
/// the first set that breaks nothing is the best of all.
/// </summary>
/// <validity>A fix that does not relieve the subset by itself is taken not to relieve it in company either.</validity>
internal sealed class MarginSearch(IReadOnlyList<Fix> fixes, BestSetSolver solver, SetProblem problem, SearchLimits limits, Func<IReadOnlyList<Fix>, IReadOnlyList<MarginBreak>> margins)
{
    /// <summary>Ways tried before the search gives up and leaves out the whole of the last breaking subset.</summary>
    private const int MostWays = 60;

    private readonly List<MarginCut> cuts = [];

    /// <summary>What was cut off, in the order in which it was found.</summary>
    public IReadOnlyList<MarginCut> Cuts => cuts;

    /// <summary>For each cut that the best set holds with something that relieves it: one fix of the cut, and the relief that it then needs.</summary>
    public IReadOnlyList<(int Item, int Needs)> Reliefs { get; private set; } = [];

    /// <summary>The best set that keeps every margin. Of every cut that it does not hold, one fix stays out of the problem, so that the answer is the best of it.</summary>
    public SetAnswer Best(SetAnswer first)
    {
        bool[] never = [.. problem.Never], must = [.. problem.Must];
        PriorityQueue<(SetAnswer Answer, bool[] Never, bool[] Must), double> open = new();
        open.Enqueue((first, never, must), -first.Points);
        int ways = 0;
        while (open.TryDequeue(out var node, out _))
        {
            int[] air = [.. Chosen(node.Answer)];
            IReadOnlyList<MarginBreak> broken = margins([.. air.Select(i => fixes[i])]);
            if (broken.Count == 0)
            {
                never.CopyTo(problem.Never, 0);
                must.CopyTo(problem.Must, 0);
                Reliefs = [.. Kept(node.Answer)];
                return node.Answer;
            }

            MarginCut cut = Smallest(air, broken[0].Margin);
            if (!cuts.Any(c => c.Items.SequenceEqual(cut.Items)))
            {
                cuts.Add(cut);
            }

            foreach ((bool[] nextNever, bool[] nextMust) in Ways(node.Never, node.Must, cut, giveUp: ++ways >= MostWays))
            {
                nextNever.CopyTo(problem.Never, 0);
                nextMust.CopyTo(problem.Must, 0);
                SetAnswer answer = solver.Solve(problem, limits);
                if (answer.Feasible)
                {
                    open.Enqueue((answer, nextNever, nextMust), -answer.Points);
                }
            }
        }

        // What the owner insists on breaks a margin by itself: nothing with it may be proposed.
        never.CopyTo(problem.Never, 0);
        foreach (int i in cuts.SelectMany(c => c.Items))
        {
            problem.Never[i] = true;
        }

        Array.Clear(problem.Must);
        return solver.Solve(problem, limits);
    }

    // Whatever beats the answer holds one of the cuts without its relief.
    private IEnumerable<(int Item, int Needs)> Kept(SetAnswer answer)
    {
        foreach (MarginCut cut in cuts)
        {
            if (cut.Items.FirstOrDefault(i => !answer.Chosen[i], -1) is var missing and >= 0)
            {
                problem.Never[missing] = true;
            }
            else if (Chosen(answer).FirstOrDefault(i => !cut.Items.Contains(i) && Relieves(i, cut), -1) is var relief and >= 0)
            {
                yield return (cut.Items[^1], relief);
            }
        }
    }

    private bool Relieves(int relief, MarginCut cut) =>
        margins([.. cut.Items.Select(i => fixes[i]), fixes[relief]]).All(b => b.Margin != cut.Break.Margin);

    private IEnumerable<int> Chosen(SetAnswer answer) => Enumerable.Range(0, fixes.Count).Where(i => answer.Chosen[i] && fixes[i].AirWays.Count > 0);

    private MarginCut Smallest(int[] breaking, string margin)
    {
        for (int size = 1; size < breaking.Length; size++)
        {
            foreach (int[] subset in Subsets(breaking, size))
            {
                if (margins([.. subset.Select(i => fixes[i])]).FirstOrDefault(b => b.Margin == margin) is { } one)
                {
                    return new(subset, one);
                }
            }
        }

        return new(breaking, margins([.. breaking.Select(i => fixes[i])]).First(b => b.Margin == margin));
    }

    private static IEnumerable<int[]> Subsets(int[] of, int size)
    {
        if (size == 0)
        {
            yield return [];
            yield break;
        }

        for (int first = 0; first <= of.Length - size; first++)
        {
            foreach (int[] rest in Subsets(of[(first + 1)..], size - 1))
            {
                yield return [of[first], .. rest];
            }
        }
    }

    private IEnumerable<(bool[] Never, bool[] Must)> Ways(bool[] never, bool[] must, MarginCut cut, bool giveUp)
    {
        foreach (int leave in cut.Items.Where(i => !must[i]))
        {
            bool[] without = [.. never];
            without[leave] = true;
            yield return (without, must);
        }

        for (int relief = 0; !giveUp && relief < fixes.Count; relief++)
        {
            if (fixes[relief].AirWays.Count > 0 && !never[relief] && !must[relief] && !cut.Items.Contains(relief) && Relieves(relief, cut))
            {
                bool[] with = [.. must];
                foreach (int i in cut.Items)
                {
                    with[i] = true;
                }

                with[relief] = true;
                yield return (never, with);
            }
        }
    }
}
