using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads what a fix leaves of the ways of the air: below 100 % it closes, above it opens.</summary>
internal static class AirWaysBinder
{
    public static IReadOnlyList<AirWay> Read(MapReader map, FileBinder binder)
    {
        if (map.Inner("air_ways", "the ways of the air") is not { } inner)
        {
            return [];
        }

        List<AirWay> ways = [];
        foreach (string opening in OldCarVents.Names)
        {
            if (inner.Inner(opening.Replace(' ', '_'), opening) is { } one)
            {
                ways.Add(new(opening, binder.NeedTriangle(one, opening, PackUnit.Percent, least: 1).Scaled(0.01)));
                one.Done();
            }
        }

        binder.NeedBasis(inner, "basis", "the ways of the air");
        inner.Done();
        return ways;
    }
}
