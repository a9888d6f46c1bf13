using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads sources.</summary>
internal static class SourceBinder
{
    public static void Bind(MapReader root, FileBinder binder)
    {
        foreach (MapReader map in root.Inners("sources", "a source"))
        {
            binder.Bound.Sources.Add(new(
                binder.ListedId(map, RuleKind.Source),
                map.NeedText("kind"),
                map.NeedOneOf("grade", Words.Grades, SourceGrade.D),
                map.NeedText("what"),
                map.NeedText("used_for"),
                map.NeedText("where"),
                map.Text("erratum"))
            {
                Read = map.NeedText("read"),
            });
            map.Done();
        }
    }
}
