using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Rules;

/// <summary>What came of reading a pack.</summary>
/// <param name="Pack">The pack; null when the problems have errors.</param>
/// <param name="Problems">All problems in the order of file, line, column.</param>
/// <param name="Changes">What later layers changed in the first.</param>
public sealed record RulePackReading(KnowledgePack? Pack, IReadOnlyList<Problem> Problems, IReadOnlyList<LayerChange> Changes)
{
    /// <summary>Hands out pack and problems.</summary>
    /// <param name="pack">The pack, or null.</param>
    /// <param name="problems">All problems.</param>
    public void Deconstruct(out KnowledgePack? pack, out IReadOnlyList<Problem> problems)
    {
        pack = Pack;
        problems = Problems;
    }
}
