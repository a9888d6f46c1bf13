using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.Safety;

/// <summary>Which kinds of run the gates hold back.</summary>
public static class RunHold
{
    /// <summary>Gates that hold back a kind of run now.</summary>
    /// <param name="run">The kind of run.</param>
    /// <param name="gates">All gates as they stand.</param>
    /// <param name="pack">The pack.</param>
    /// <returns>The gates that hold it, in their order; none means free.</returns>
    public static IReadOnlyList<GateStatus> Of(string run, IReadOnlyList<GateStatus> gates, KnowledgePack pack)
    {
        HashSet<string> kinds = Wider(run, pack);
        return [.. gates.Where(g => g.State == GateState.InForce
            ? g.Gate.BlocksRuns.Any(kinds.Contains) && !g.SignOffs.Any(s => s.Counts && (s.Rule.Lifts.Contains("all") || s.Rule.Lifts.Contains(run)))
            : g.State == GateState.NotChecked && kinds.Contains("faster"))];
    }

    private static HashSet<string> Wider(string run, KnowledgePack pack)
    {
        HashSet<string> kinds = [run];
        Queue<string> open = new([run]);
        while (open.TryDequeue(out string? kind))
        {
            foreach (string wider in pack.Scales.RunKinds.FirstOrDefault(k => k.Id == kind)?.PartOf ?? [])
            {
                if (kinds.Add(wider))
                {
                    open.Enqueue(wider);
                }
            }
        }

        return kinds;
    }
}
