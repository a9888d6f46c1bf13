using FixPlanner.Core.Knowledge;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>What must be known before the other files can be bound.</summary>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Facts">Facts by id: their units and choices decide how a condition is read.</param>
/// <param name="PriorWords">Words that stand for a prior, with its value from 0 to 1.</param>
/// <param name="Retired">Ids that a layer took out: what names them is left out.</param>
internal sealed record BindContext(
    IReadOnlySet<string> Sources,
    IReadOnlyDictionary<string, Fact> Facts,
    IReadOnlyDictionary<string, double> PriorWords,
    IReadOnlySet<(RuleKind Kind, string Id)> Retired);
