using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads a place on the car.</summary>
internal static class ZoneBinder
{
    public static void Bind(MapReader map, FileBinder binder)
    {
        string id = binder.ListedId(map, RuleKind.Zone);
        if (id.Length > 0 && id != binder.File.ZoneFolder)
        {
            binder.Problems.Add(Messages.IdIsNotFileName(map.PlaceOf("id"), id, binder.File.ZoneFolder));
        }

        binder.Bound.Zones.Add(new(
            id,
            map.NeedText("title"),
            map.NeedInteger("order", 1, 999),
            map.NeedText("good_flow"),
            map.NeedText("tufts_when_bad"),
            map.NeedText("paint_when_bad"),
            map.TextList("look_at"),
            map.NeedText("tuft_placing"),
            map.TextList("traps"),
            map.Text("pressure_hint"))
        {
            TuftPattern = Pattern(map, binder),
            Basis = binder.NeedBasis(map, "sources", "the place"),
            Aliases = map.Aliases(),
        });
    }

    private static TuftPattern? Pattern(MapReader map, FileBinder binder)
    {
        if (map.Inner("tuft_pattern", "the tuft pattern") is not { } inner)
        {
            return null;
        }

        double count = binder.NeedFigure(inner, "count", PackUnit.Tufts) ?? 1;
        double minutes = binder.NeedFigure(inner, "minutes", PackUnit.Minutes) ?? 1;
        TuftPattern pattern = new(inner.NeedText("what"), (int)count, minutes, inner.NeedOneOf("default_day", Words.YesNo, false));
        inner.Done();
        return pattern;
    }
}
