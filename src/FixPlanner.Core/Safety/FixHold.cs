using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.Safety;

/// <summary>What the gates say of one fix.</summary>
/// <param name="BlockedBy">Gates in force that rule it out for now.</param>
/// <param name="HeldBy">Gates not checked that must be clear before the work: 'first check …'.</param>
/// <param name="WithTheWork">Gates whose required action is part of the job.</param>
/// <param name="BeforeFastUse">Gates that must be clear before driving faster than now with it.</param>
public sealed record FixHold(
    IReadOnlyList<GateStatus> BlockedBy,
    IReadOnlyList<GateStatus> HeldBy,
    IReadOnlyList<Gate> WithTheWork,
    IReadOnlyList<Gate> BeforeFastUse)
{
    /// <summary>Looks up what the gates say of a fix.</summary>
    /// <param name="fix">The fix.</param>
    /// <param name="gates">All gates as they stand.</param>
    /// <param name="pack">The pack.</param>
    /// <returns>What blocks and what holds it.</returns>
    public static FixHold Of(Fix fix, IReadOnlyList<GateStatus> gates, KnowledgePack pack)
    {
        GateStatus[] blocked = [.. Blocking(fix, [.. gates.Where(g => g.HoldsFixes)])];

        // The candidate counts as planned, so a gate that only concerns planned fixes is looked at as if it did.
        GateStatus[] held = [.. gates.Where(g => fix.Before.Contains(g.Gate.Id) && g.Open.Count > 0
            && (g.State == GateState.NotChecked || (g.State == GateState.NotConcerned && g.Gate.ConcernedWhen.Fixes)))];
        return new(blocked, held, Named(fix.WithTheWork, pack), Named(fix.BeforeFastUse, pack));
    }

    /// <summary>Gates that rule a fix out for now.</summary>
    /// <param name="fix">The fix.</param>
    /// <param name="holding">The gates that hold back fixes now, in order.</param>
    /// <returns>Those of them that hold this one.</returns>
    public static IEnumerable<GateStatus> Blocking(Fix fix, IReadOnlyList<GateStatus> holding)
    {
        bool helpsOne = holding.Any(g => g.Gate.HelpedByFixes.Contains(fix.Id));
        return holding.Where(g => Blocks(g.Gate, fix, helpsOne));
    }

    private static bool Blocks(Gate gate, Fix fix, bool helpsOne)
    {
        bool helps = gate.HelpedByFixes.Contains(fix.Id);
        return !helps && (fix.Before.Contains(gate.Id) || gate.BlocksFixes.Contains(fix.Id) || (gate.BlocksAllFixes && !helpsOne));
    }

    private static Gate[] Named(IReadOnlyList<string> ids, KnowledgePack pack) => [.. ids.Select(pack.Gate).OfType<Gate>()];
}
