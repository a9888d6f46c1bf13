using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Rules.Binding;

namespace FixPlanner.Files.Rules.Checks;

/// <summary>What comes first can come first: no ring of prerequisites, and none that excludes what needs it.</summary>
internal static class PrerequisiteCheck
{
    public static void Run(BoundRules rules, Definitions ids)
    {
        Dictionary<string, Fix> fixes = rules.Fixes.ToDictionary(fix => fix.Id);
        foreach (IReadOnlyList<string> ring in Rings.Find(fixes.Keys, id => fixes[id].Requires.Select(first => first.Fix)))
        {
            rules.Problems.Add(Messages.PrerequisiteRing(ids.PlaceOf(RuleKind.Fix, ring[0]), ring));
        }

        foreach (Fix fix in rules.Fixes)
        {
            foreach (Requirement first in fix.Requires)
            {
                if (fix.Conflicts.Any(conflict => conflict.Fix == first.Fix && conflict.Kind == ConflictKind.Excludes))
                {
                    rules.Problems.Add(Messages.NeedsWhatItExcludes(ids.PlaceOf(RuleKind.Fix, fix.Id), fix.Id, first.Fix));
                }
            }
        }
    }
}

/// <summary>Finds rings in what leads to what.</summary>
internal static class Rings
{
    /// <summary>Each ring once, beginning with its first id in alphabetical order.</summary>
    public static IEnumerable<IReadOnlyList<string>> Find(IEnumerable<string> ids, Func<string, IEnumerable<string>> next)
    {
        HashSet<string> done = [];
        HashSet<string> told = [];
        foreach (string id in ids.Order(StringComparer.Ordinal))
        {
            foreach (IReadOnlyList<string> ring in From(id, [], done, next))
            {
                if (told.Add(string.Join(' ', ring)))
                {
                    yield return ring;
                }
            }
        }
    }

    private static IEnumerable<IReadOnlyList<string>> From(string id, List<string> path, HashSet<string> done, Func<string, IEnumerable<string>> next)
    {
        int at = path.IndexOf(id);
        if (at >= 0)
        {
            List<string> ring = path[at..];
            int first = ring.IndexOf(ring.Min(StringComparer.Ordinal)!);
            yield return [.. ring[first..], .. ring[..first]];
            yield break;
        }

        if (done.Contains(id))
        {
            yield break;
        }

        path.Add(id);
        foreach (string other in next(id))
        {
            foreach (IReadOnlyList<string> ring in From(other, path, done, next))
            {
                yield return ring;
            }
        }

        path.RemoveAt(path.Count - 1);
        done.Add(id);
    }
}
