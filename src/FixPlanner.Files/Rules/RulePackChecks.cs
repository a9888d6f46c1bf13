using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules.Checks;

namespace FixPlanner.Files.Rules;

/// <summary>Reads a pack for those who write rules: all that <see cref="RulePackReader"/> checks, and what only shows in the whole.</summary>
public static class RulePackChecks
{
    /// <summary>Reads and checks the layers.</summary>
    /// <param name="layers">Folders, the shipped pack first.</param>
    /// <returns>The pack, or null when there are errors; all problems, warnings and notes among them; what later layers changed.</returns>
    public static RulePackReading Check(IReadOnlyList<string> layers)
    {
        BoundLayers bound = RulePackReader.Bind(layers, withCases: true);
        ProblemList problems = new();
        problems.AddRange(bound.Rules.Problems.InOrder());
        if (bound.Pack is { } pack)
        {
            Definitions ids = Definitions.Of(bound.Rules);
            problems.AddRange(UseCheck.Run(pack, ids, bound.Files));
            problems.AddRange(WholePackCheck.Run(pack, ids, layers[0]));
        }

        KnowledgePack? usable = problems.HasErrors ? null : bound.Pack;
        return new(usable, problems.InOrder(), bound.Files.Changes);
    }
}
