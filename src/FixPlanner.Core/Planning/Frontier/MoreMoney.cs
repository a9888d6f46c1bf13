using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Core.Planning.Frontier;

/// <summary>What some more of a limit would buy.</summary>
/// <param name="MorePoints">Points gained; zero when nothing better fits.</param>
/// <param name="Comes">Items that come in.</param>
/// <param name="Goes">Items that give way.</param>
/// <param name="NeedsMoreCents">How much more the better set really needs, in cents; 0 when nothing better fits.</param>
internal sealed record MoreMoney(double MorePoints, IReadOnlyList<int> Comes, IReadOnlyList<int> Goes, int NeedsMoreCents)
{
    /// <summary>Compares the best set now with the best set for more money.</summary>
    /// <param name="problem">The choice; its money limit is put back afterwards.</param>
    /// <param name="now">Its best set.</param>
    /// <param name="moreCents">How much more.</param>
    public static MoreMoney Of(SetProblem problem, SetAnswer now, int moreCents)
    {
        int kept = problem.MoneyCents;
        problem.MoneyCents = kept + moreCents;
        SetAnswer then = new BestSetSolver(problem.Structure).Solve(problem, SearchLimits.None);
        problem.MoneyCents = kept;
        return then.Points - now.Points <= TieBreak.Tolerance
            ? new(0, [], [], 0)
            : new(then.Points - now.Points, Only(then.Chosen, now.Chosen), Only(now.Chosen, then.Chosen), Math.Max(0, then.Cents - kept));
    }

    private static int[] Only(bool[] here, bool[] there) => [.. here.Index().Where(x => x.Item && !there[x.Index]).Select(x => x.Index)];
}
