using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Rules.Binding;

namespace FixPlanner.Files.Rules.Checks;

/// <summary>A clash or a good pair is written once, in the file of one of the two; here the other learns of it.</summary>
internal static class MirrorPairs
{
    public static void Run(BoundRules rules, Definitions ids)
    {
        Dictionary<string, List<Conflict>> conflicts = rules.Fixes.ToDictionary(fix => fix.Id, fix => fix.Conflicts.ToList());
        Dictionary<string, List<(string Fix, string Why)>> pairs = rules.Fixes.ToDictionary(fix => fix.Id, fix => fix.GoesWellWith.ToList());
        foreach (Fix fix in rules.Fixes)
        {
            foreach (Conflict conflict in fix.Conflicts)
            {
                if (Fits(fix.Id, conflict.Fix, conflicts[conflict.Fix].Any(other => other.Fix == fix.Id)))
                {
                    conflicts[conflict.Fix].Add(conflict with { Fix = fix.Id });
                }
            }

            foreach ((string other, string why) in fix.GoesWellWith)
            {
                if (Fits(fix.Id, other, pairs[other].Any(pair => pair.Fix == fix.Id)))
                {
                    pairs[other].Add((fix.Id, why));
                }
            }
        }

        for (int i = 0; i < rules.Fixes.Count; i++)
        {
            Fix fix = rules.Fixes[i];
            rules.Fixes[i] = fix with { Conflicts = conflicts[fix.Id], GoesWellWith = pairs[fix.Id] };
        }

        string Later(string one, string other)
        {
            int layers = ids.LayerOf(RuleKind.Fix, one).CompareTo(ids.LayerOf(RuleKind.Fix, other));
            return (layers != 0 ? layers : string.CompareOrdinal(one, other)) > 0 ? one : other;
        }

        bool Fits(string one, string other, bool already)
        {
            if (one == other)
            {
                rules.Problems.Add(Messages.NamesItself(ids.PlaceOf(RuleKind.Fix, one), one));
            }
            else if (already)
            {
                string later = Later(one, other);
                rules.Problems.Add(Messages.PairStatedTwice(ids.PlaceOf(RuleKind.Fix, later), one == later ? other : one));
            }

            return one != other && !already;
        }
    }
}
