using FixPlanner.Core.Knowledge;

namespace FixPlanner.Tests;

/// <summary>Small packs built in code, for tests of the rooms that read a pack.</summary>
internal static class TestPack
{
    public static readonly Basis FromMemory = new("from memory", [], true, false, false, false);

    public static readonly Scales Scales = new(
        new Dictionary<Strength, StrengthRatios>
        {
            [Strength.Strong] = new(8, 0.125),
            [Strength.Medium] = new(3, 0.333),
            [Strength.Weak] = new(1.5, 0.667),
        },
        [new("quiet", "Quiet", [EffectOn.Noise, EffectOn.Throb]), new("fuel", "Fuel", [EffectOn.Drag])],
        new Dictionary<EffectOn, double> { [EffectOn.Drag] = 0.02, [EffectOn.Noise] = 2 },
        [new("faster", "faster than now", []), new("stepped", "stepped runs", ["faster", "any-run"]), new("any-run", "any test run", [])],
        0.25,
        "local rules differ",
        35);

    public static readonly TestDayNotes TestDay = new([], [], "", "", [], [], [], [], []);

    public static KnowledgePack Of(
        IReadOnlyList<Mechanism>? mechanisms = null,
        IReadOnlyList<Observation>? observations = null,
        IReadOnlyList<Fix>? fixes = null,
        IReadOnlyList<Gate>? gates = null,
        IReadOnlyList<Fact>? facts = null) =>
        new("test", "1", [new("tail", "Tail", 1, "", "", "", [], "", [])], facts ?? [], [], observations ?? [], mechanisms ?? [], fixes ?? [], gates ?? [], [], Scales, TestDay, []);

    public static Mechanism Cause(string id, double prior, params Sign[] signs) =>
        new(id, id, "", "", MechanismKind.Flow, ["tail"], prior, FromMemory) { Signs = signs };

    public static Sign For(string observation, string answer, Strength strength) => new(observation, answer, true, strength);

    public static Sign Against(string observation, string answer, Strength strength) => new(observation, answer, false, strength);

    public static Observation Question(string id, params string[] answers) =>
        new(id, "tail", id + "?", "", [.. answers.Select(a => new Answer(a, a))], FromMemory);
}
