namespace FixPlanner.Core.Knowledge;

/// <summary>
/// Everything the pack knows, checked: every id that is named exists, figures are in order and have a unit and a basis.
/// Lists are in the pack's order (zones in walking order), which is also the order of ties.
/// </summary>
/// <param name="Id">Id of the pack.</param>
/// <param name="Version">Version of the pack.</param>
/// <param name="Zones">Zones in walking order.</param>
/// <param name="Facts">Facts.</param>
/// <param name="BodyTemplates">What is usual for a body shape.</param>
/// <param name="Observations">Observations in walking order.</param>
/// <param name="Mechanisms">Causes.</param>
/// <param name="Fixes">Fixes.</param>
/// <param name="Gates">Safety gates in the pack's order.</param>
/// <param name="Sources">Sources.</param>
/// <param name="Scales">Scales.</param>
/// <param name="TestDay">Notes for the day of the test.</param>
/// <param name="Disappointments">Things people do that usually disappoint.</param>
public sealed record KnowledgePack(
    string Id,
    string Version,
    IReadOnlyList<Zone> Zones,
    IReadOnlyList<Fact> Facts,
    IReadOnlyList<BodyTemplate> BodyTemplates,
    IReadOnlyList<Observation> Observations,
    IReadOnlyList<Mechanism> Mechanisms,
    IReadOnlyList<Fix> Fixes,
    IReadOnlyList<Gate> Gates,
    IReadOnlyList<Source> Sources,
    Scales Scales,
    TestDayNotes TestDay,
    IReadOnlyList<Disappointment> Disappointments)
{
    private readonly Dictionary<string, Zone> zones = WithAliases(Zones, z => z.Id, z => z.Aliases);
    private readonly Dictionary<string, Fact> facts = WithAliases(Facts, f => f.Id, f => f.Aliases);
    private readonly Dictionary<string, Observation> observations = WithAliases(Observations, o => o.Id, o => o.Aliases);
    private readonly Dictionary<string, Mechanism> mechanisms = WithAliases(Mechanisms, m => m.Id, m => m.Aliases);
    private readonly Dictionary<string, Fix> fixes = WithAliases(Fixes, f => f.Id, f => f.Aliases);
    private readonly Dictionary<string, Gate> gates = WithAliases(Gates, g => g.Id, g => g.Aliases);

    /// <summary>Name of the pack in a few words.</summary>
    public string Title { get; init; } = "";

    /// <summary>What the pack is about.</summary>
    public string What { get; init; } = "";

    /// <summary>The closed lists of words, each with what it means.</summary>
    public IReadOnlyList<TermList> Terms { get; init; } = [];

    /// <summary>The same pack with other fixes; everything is found by its id in the new one.</summary>
    /// <param name="fixes">The fixes, with the ids of the old ones.</param>
    /// <returns>The pack.</returns>
    public KnowledgePack WithFixes(IReadOnlyList<Fix> fixes) =>
        new(Id, Version, Zones, Facts, BodyTemplates, Observations, Mechanisms, fixes, Gates, Sources, Scales, TestDay, Disappointments) { Title = Title, What = What, Terms = Terms };

    /// <summary>The zone of that id or draft id, or null.</summary>
    /// <param name="id">Id.</param>
    /// <returns>The zone, or null.</returns>
    public Zone? Zone(string id) => zones.GetValueOrDefault(id);

    /// <summary>The fact of that id or draft id, or null.</summary>
    /// <param name="id">Id.</param>
    /// <returns>The fact, or null.</returns>
    public Fact? Fact(string id) => facts.GetValueOrDefault(id);

    /// <summary>The observation of that id or draft id, or null.</summary>
    /// <param name="id">Id.</param>
    /// <returns>The observation, or null.</returns>
    public Observation? Observation(string id) => observations.GetValueOrDefault(id);

    /// <summary>The cause of that id or draft id, or null.</summary>
    /// <param name="id">Id.</param>
    /// <returns>The cause, or null.</returns>
    public Mechanism? Mechanism(string id) => mechanisms.GetValueOrDefault(id);

    /// <summary>The fix of that id or draft id, or null.</summary>
    /// <param name="id">Id.</param>
    /// <returns>The fix, or null.</returns>
    public Fix? Fix(string id) => fixes.GetValueOrDefault(id);

    /// <summary>The gate of that id or draft id, or null.</summary>
    /// <param name="id">Id.</param>
    /// <returns>The gate, or null.</returns>
    public Gate? Gate(string id) => gates.GetValueOrDefault(id);

    private static Dictionary<string, T> WithAliases<T>(IReadOnlyList<T> items, Func<T, string> id, Func<T, IReadOnlyList<string>> aliases)
    {
        Dictionary<string, T> map = [];
        foreach (T item in items)
        {
            map[id(item)] = item;
        }

        foreach (T item in items)
        {
            foreach (string alias in aliases(item))
            {
                map.TryAdd(alias, item);
            }
        }

        return map;
    }
}
