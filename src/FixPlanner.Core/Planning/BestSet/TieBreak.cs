namespace FixPlanner.Core.Planning.BestSet;

/// <summary>Of two items that can stand for each other at equal points, cost and time, the one that comes first is taken.</summary>
internal static class TieBreak
{
    /// <summary>Points that differ by less count as equal here.</summary>
    public const double Tolerance = 1e-9;

    /// <summary>Exchanges single items for earlier twins as long as that works; the order of items is that of their ids.</summary>
    public static void PreferFirst(SetProblem problem, bool[] chosen)
    {
        double points = double.NaN;
        for (int late = 1; late < chosen.Length; late++)
        {
            for (int early = 0; early < late && chosen[late]; early++)
            {
                if (chosen[early] || problem.Must[late] || !LooksLike(problem, early, late))
                {
                    continue;
                }

                points = double.IsNaN(points) ? problem.Points(chosen) : points;
                (chosen[early], chosen[late]) = (true, false);
                if (!problem.Allows(chosen) || Math.Abs(problem.Points(chosen) - points) > Tolerance)
                {
                    (chosen[early], chosen[late]) = (false, true);
                }
            }
        }
    }

    private static bool LooksLike(SetProblem problem, int one, int other) =>
        problem.Cents[one] == problem.Cents[other]
        && problem.Minutes[one] == problem.Minutes[other]
        && Math.Abs(problem.Side[one] - problem.Side[other]) <= Tolerance;
}
