using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Planning;

/// <summary>
/// Safety is paid first: for each gate in force where something was found wrong, the work that leads to its first sign-off. Where an
/// answer points strongly to a cause, the cheapest of it that acts against that cause; else the cheapest that the sign-off names.
/// </summary>
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
            Fix[][] aimed = [.. PointedAt(s, gate.Gate).Select(cause => Against(cause, cures)).Where(against => against.Length > 0)];
            foreach (Fix[] ways in aimed.Length > 0 ? aimed : [cures])
            {
                bool settled = ways.Any(f => s.OnTheCar.Contains(f.Id) || work.Any(w => w.Fix.Id == f.Id));
                if (!settled && ways.OrderBy(f => f.Cost.Likely).ThenBy(f => f.Id, StringComparer.Ordinal).FirstOrDefault() is { } cheapest)
                {
                    work.Add((cheapest, gate));
                }
            }
        }

        return work;
    }

    // Sealing something else while the exhaust is known to leak would be cheap and would save nobody.
    private static IEnumerable<string> PointedAt(Situation s, Gate gate)
    {
        HashSet<(string, string)> found =
        [
            .. gate.TriggeredByAnswers.Select(t => (s.Pack.Observation(t.Observation)?.Id ?? t.Observation, t.Answer)),
            .. gate.TriggeredByFacts.SelectMany(c => c.All).Where(t => t.Observation is not null && t.Comparison is Comparison.Is or Comparison.In).SelectMany(t => t.Values.Select(v => (t.Observation!, v))),
        ];
        found.RemoveWhere(look => s.Answer(look.Item1) != look.Item2);
        return s.Pack.Mechanisms.Where(m => m.Signs.Any(sign => sign.SpeaksFor && sign.Strength == Strength.Strong && found.Contains((sign.Observation, sign.Answer)))).Select(m => m.Id);
    }

    private static Fix[] Against(string cause, Fix[] fixes) =>
        [.. fixes.Where(f => f.ActsOn.TryGetValue(cause, out FixAction does) && does is FixAction.Cures or FixAction.Reduces)];

    // A cure that another gate holds comes after that gate's own cure; only a gate that names it outright rules it out here.
    private static bool Free(Fix fix, IReadOnlyList<GateStatus> gates, GateStatus own) =>
        !gates.Any(g => g.HoldsFixes && g.Gate.Id != own.Gate.Id && g.Gate.BlocksFixes.Contains(fix.Id) && !g.Gate.HelpedByFixes.Contains(fix.Id));
}
