using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Planning;

/// <summary>Safety is paid first: for each gate in force where something was found wrong, the cheapest cure that leads to its first sign-off.</summary>
internal static class SafetyWork
{
    public static IReadOnlyList<(Fix Fix, GateStatus Gate)> Of(Situation s, IReadOnlyList<GateStatus> gates)
    {
        List<(Fix Fix, GateStatus Gate)> work = [];
        foreach (GateStatus gate in gates.Where(g => g.State == GateState.InForce && g.Triggers.Any(t => t.FoundWrong)))
        {
            if (gate.SignOffs is not [{ Counts: false } first, ..])
            {
                continue;
            }

            Fix[] cures = [.. first.Rule.AfterFixes.Select(s.Pack.Fix).OfType<Fix>().Where(f => s.Is(f.AppliesWhen) != Truth.No && Free(f, gates, gate))];
            bool settled = cures.Any(f => s.OnTheCar.Contains(f.Id) || work.Any(w => w.Fix.Id == f.Id));
            if (!settled && cures.OrderBy(f => f.Cost.Likely).ThenBy(f => f.Id, StringComparer.Ordinal).FirstOrDefault() is { } cheapest)
            {
                work.Add((cheapest, gate));
            }
        }

        return work;
    }

    // A cure that another gate holds comes after that gate's own cure; only a gate that names it outright rules it out here.
    private static bool Free(Fix fix, IReadOnlyList<GateStatus> gates, GateStatus own) =>
        !gates.Any(g => g.HoldsFixes && g.Gate.Id != own.Gate.Id && g.Gate.BlocksFixes.Contains(fix.Id) && !g.Gate.HelpedByFixes.Contains(fix.Id));
}
