using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Planning.Effects;
using FixPlanner.Core.Planning.Recomputing;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning;

/// <summary>What planning needs of a pack, compiled once. Fixes and causes are numbered in the order of their ids.</summary>
internal sealed class PlanModel
{
    private readonly int[] placeInPack;
    private readonly Lazy<CommonDraws> draws;
    private readonly MoneyOfFix?[] money;

    public PlanModel(KnowledgePack pack)
    {
        Pack = pack;
        Effects = EffectModel.Compile(pack);
        Fixes = [.. Effects.FixIds.Select(id => pack.Fix(id)!)];
        Cost = [.. Fixes.Select(f => f.Cost)];
        Hours = [.. Fixes.Select(f => f.Skill == Skill.Professional ? Triangle.Certain(0) : f.Hours)];
        Dictionary<string, int> places = pack.Mechanisms.Index().ToDictionary(m => m.Item.Id, m => m.Index);
        placeInPack = [.. Effects.CauseIds.Select(id => places[id])];
        Excludes = [.. Fixes.SelectMany((f, i) => f.Conflicts.Where(c => c.Kind == ConflictKind.Excludes).Select(c => (One: i, Other: Number(c.Fix)))).Where(x => x.Other >= 0)];
        draws = new(() => CommonDraws.Of(Effects));
        money = new MoneyOfFix?[Fixes.Length];
    }

    /// <summary>The pack.</summary>
    public KnowledgePack Pack { get; }

    /// <summary>Physics of whole sets; null for the pack's sums alone.</summary>
    public ISetPhysics? Physics { get; set; } = new CarSetPhysics();

    /// <summary>Amounts and fractions.</summary>
    public EffectModel Effects { get; }

    /// <summary>The fixes.</summary>
    public Fix[] Fixes { get; }

    /// <summary>Cost of each fix in EUR.</summary>
    public Triangle[] Cost { get; }

    /// <summary>The owner's hours for each fix: none for professional work.</summary>
    public Triangle[] Hours { get; }

    /// <summary>What excludes what.</summary>
    public (int One, int Other)[] Excludes { get; }

    /// <summary>The draws behind every computed range, made when first needed.</summary>
    public CommonDraws Draws => draws.Value;

    /// <summary>Cost and hours of a fix in every draw. They hang on the pack alone and are kept, so that a key does not wait for them.</summary>
    public MoneyOfFix Money(int fix)
    {
        // Two threads that come at once work out the same.
        if (Volatile.Read(ref money[fix]) is not { } kept)
        {
            kept = MoneyOfFix.Of(Draws, fix, Cost[fix], Hours[fix]);
            Volatile.Write(ref money[fix], kept);
        }

        return kept;
    }

    /// <summary>Number of a fix by id or draft id, or -1.</summary>
    public int Number(string fix) => Effects.FixNumber(Pack.Fix(fix)?.Id ?? fix);

    /// <summary>Chances in the pack's order put into the order of the model.</summary>
    public double[] InOrder(IReadOnlyList<double> byPack) => [.. placeInPack.Select(place => byPack[place])];

    /// <summary>Worlds in the pack's order put into the order of the model.</summary>
    public bool[][] InOrder(bool[][] byPack) => [.. byPack.Select(world => placeInPack.Select(place => world[place]).ToArray())];

    /// <summary>One flag for each fix.</summary>
    public bool[] Flags(IEnumerable<int> numbers)
    {
        bool[] flags = new bool[Fixes.Length];
        foreach (int number in numbers)
        {
            flags[number] = true;
        }

        return flags;
    }
}
