using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads the sign-offs of a gate.</summary>
internal static class SignOffBinder
{
    public static IReadOnlyList<SignOffRule> Read(MapReader gate, FileBinder binder)
    {
        List<SignOffRule> found = [];
        foreach (MapReader map in gate.Inners("sign_offs", "a sign-off"))
        {
            found.Add(new(map.NeedText("kind"), map.NeedText("by"), map.NeedText("evidence"), map.NeedText("lapses_when"), Lifts(map, binder))
            {
                ValidMonths = binder.FigureIn(map, "valid", PackUnit.Months) is { } months ? (int)months : null,
                LapsesOnFixes = binder.NamedList(map, "lapses_on_fixes", RuleKind.Fix),
                LapsesIfRaised = binder.NamedList(map, "lapses_if_raised", RuleKind.Fact),
                NeedsRuns = binder.NamedList(map, "needs_runs", RuleKind.Run),
                AfterFixes = binder.NamedList(map, "after_fixes", RuleKind.Fix),
                NeedsGates = binder.NamedList(map, "needs_gates", RuleKind.Gate),
            });
            map.Done();
        }

        return found;
    }

    private static List<string> Lifts(MapReader map, FileBinder binder)
    {
        List<string> found = [];
        foreach (YamlScalar scalar in map.NeedScalars("lifts"))
        {
            if (scalar.Text is "all" or "fixes")
            {
                found.Add(scalar.Text);
            }
            else if (binder.Named(scalar, RuleKind.Run) is { } run)
            {
                found.Add(run);
            }
        }

        return found;
    }
}
