using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads a fix that comes first, unless an answer makes it unnecessary.</summary>
internal static class RequirementBinder
{
    public static Requirement? Read(MapReader map, FileBinder binder)
    {
        string? fix = map.NeedScalar("fix") is { } scalar ? binder.Named(scalar, RuleKind.Fix) : null;
        IReadOnlyList<(string Observation, string Answer)> unless = binder.Answers(map, "unless");
        map.Done();
        if (unless.Count > 1)
        {
            binder.Problems.Add(Messages.OneUnless(map.PlaceOf("unless")));
        }

        if (fix is null)
        {
            return null;
        }

        return unless.Count == 0 ? new(fix) : new(fix, unless[0].Observation, unless[0].Answer);
    }
}
