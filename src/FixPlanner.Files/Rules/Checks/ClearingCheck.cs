using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules.Binding;

namespace FixPlanner.Files.Rules.Checks;

/// <summary>No gate depends for its clearing on what it blocks.</summary>
internal static class ClearingCheck
{
    public static void Run(BoundRules rules, Definitions ids)
    {
        Dictionary<string, Fix> fixes = rules.Fixes.ToDictionary(fix => fix.Id);
        Dictionary<string, Gate> gates = rules.Gates.ToDictionary(gate => gate.Id);
        Dictionary<string, IReadOnlyList<string>> partOf = rules.Runs.ToDictionary(run => run.Id, run => run.PartOf);
        foreach (Gate gate in rules.Gates)
        {
            Place place = ids.PlaceOf(RuleKind.Gate, gate.Id);
            if (gate.SignOffs.Count == 0 || !gate.SignOffs[^1].Lifts.Contains("all"))
            {
                rules.Problems.Add(Messages.NeverClear(place, gate.Id));
            }

            foreach (SignOffRule signOff in gate.SignOffs)
            {
                Runs(gate, signOff, rules.Gates, partOf, run => rules.Problems.Add(Messages.RunBlocksItself(place, gate.Id, signOff.Kind, run)));
                if (signOff.AfterFixes.Count > 0 && signOff.AfterFixes.All(fix => IsHeld(gate, fixes[fix])))
                {
                    rules.Problems.Add(Messages.CureBlocked(place, gate.Id, signOff.Kind, signOff.AfterFixes));
                }
            }
        }

        foreach (IReadOnlyList<string> ring in Rings.Find(gates.Keys, id => gates[id].SignOffs.SelectMany(signOff => signOff.NeedsGates)))
        {
            rules.Problems.Add(Messages.GateRing(ids.PlaceOf(RuleKind.Gate, ring[0]), ring));
        }
    }

    // A run that the evidence needs must be free in every gate that blocks it, by a sign-off that does not need the run itself.
    private static void Runs(Gate gate, SignOffRule signOff, IReadOnlyList<Gate> all, Dictionary<string, IReadOnlyList<string>> partOf, Action<string> report)
    {
        foreach (string run in signOff.NeedsRuns)
        {
            HashSet<string> wider = [run, .. partOf.GetValueOrDefault(run) ?? []];
            bool stuck = all
                .Where(other => other.BlocksRuns.Any(wider.Contains))
                .Any(other => !other.SignOffs
                    .TakeWhile(earlier => other.Id != gate.Id || earlier != signOff)
                    .Any(earlier => !earlier.NeedsRuns.Contains(run) && (earlier.Lifts.Contains("all") || earlier.Lifts.Any(wider.Contains))));
            if (stuck)
            {
                report(run);
            }
        }
    }

    private static bool IsHeld(Gate gate, Fix fix) =>
        fix.Before.Contains(gate.Id)
        || (!gate.HelpedByFixes.Contains(fix.Id) && (gate.BlocksAllFixes || gate.BlocksFixes.Contains(fix.Id)));
}
