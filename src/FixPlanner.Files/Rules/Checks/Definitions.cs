using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules.Binding;

namespace FixPlanner.Files.Rules.Checks;

/// <summary>Every id with the place where it is defined.</summary>
internal sealed class Definitions
{
    private readonly Dictionary<(RuleKind Kind, string Id), Definition> found = [];

    public static Definitions Of(BoundRules rules)
    {
        Definitions all = new();
        foreach (Definition definition in rules.Definitions)
        {
            all.found.TryAdd((definition.Kind, definition.Id), definition);
        }

        return all;
    }

    public bool Has(RuleKind kind, string id) => found.ContainsKey((kind, id));

    public Place PlaceOf(RuleKind kind, string id) => found.GetValueOrDefault((kind, id))?.Place ?? default;

    /// <summary>The layer that an id comes from, from 0.</summary>
    public int LayerOf(RuleKind kind, string id) => found.GetValueOrDefault((kind, id))?.Layer ?? 0;

    public IEnumerable<string> Ids(RuleKind kind) => found.Keys.Where(key => key.Kind == kind).Select(key => key.Id);
}
