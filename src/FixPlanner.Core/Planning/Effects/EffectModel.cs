using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning.Effects;

/// <summary>
/// The pack's effects turned into amounts per cause and fractions per fix, once per pack. Fixes and causes are numbered in the order of their ids,
/// so that nothing depends on the order of files.
/// </summary>
public sealed class EffectModel
{
    private readonly Dictionary<string, int> fixIndex;
    private readonly Dictionary<string, int> causeIndex;

    private EffectModel(string[] causes, string[] fixes, EffectLayout layout, Dictionary<string, int> causeIndex, Dictionary<string, int> fixIndex)
    {
        CauseIds = causes;
        FixIds = fixes;
        Layout = layout;
        Nominal = EffectFigures.Nominal(layout);
        this.causeIndex = causeIndex;
        this.fixIndex = fixIndex;
    }

    /// <summary>Ids of the causes in the order of their numbers.</summary>
    public IReadOnlyList<string> CauseIds { get; }

    /// <summary>Ids of the fixes in the order of their numbers.</summary>
    public IReadOnlyList<string> FixIds { get; }

    /// <summary>Who acts on what.</summary>
    internal EffectLayout Layout { get; }

    /// <summary>Amounts and fractions of the mean effects.</summary>
    internal EffectFigures Nominal { get; }

    /// <summary>Compiles the pack's effects.</summary>
    /// <param name="pack">A checked pack.</param>
    /// <returns>The model.</returns>
    public static EffectModel Compile(KnowledgePack pack)
    {
        ArgumentNullException.ThrowIfNull(pack);
        string[] causes = [.. pack.Mechanisms.Select(m => m.Id).Order(StringComparer.Ordinal)];
        Fix[] fixes = [.. pack.Fixes.OrderBy(f => f.Id, StringComparer.Ordinal)];
        Dictionary<string, int> causeIndex = causes.Index().ToDictionary(c => c.Item, c => c.Index);
        List<StatedEffect> stated = [];
        for (int f = 0; f < fixes.Length; f++)
        {
            foreach (Effect effect in fixes[f].Effects)
            {
                stated.Add(State(pack, fixes[f], f, effect, causeIndex));
            }
        }

        string[] ids = [.. fixes.Select(f => f.Id)];
        return new(causes, ids, new(causes.Length, ids.Length, stated), causeIndex, ids.Index().ToDictionary(c => c.Item, c => c.Index));
    }

    /// <summary>Number of a fix.</summary>
    /// <param name="id">Its id in the pack.</param>
    /// <returns>The number, or -1 when there is no such fix.</returns>
    public int FixNumber(string id) => fixIndex.GetValueOrDefault(id, -1);

    /// <summary>Number of a cause.</summary>
    /// <param name="id">Its id in the pack.</param>
    /// <returns>The number, or -1 when there is no such cause.</returns>
    public int CauseNumber(string id) => causeIndex.GetValueOrDefault(id, -1);

    private static StatedEffect State(KnowledgePack pack, Fix fix, int number, Effect effect, Dictionary<string, int> causeIndex)
    {
        Triangle range = Sense.Of(effect.On) > 0 ? effect.Range : effect.Range.Negated();
        bool once = fix.SealsCabin && effect.On == EffectOn.GlassLoad;
        return new(number, effect.On, range, [.. EffectCauses.Of(pack, fix, effect.On).Select(c => (causeIndex[c.Mechanism], c.Action))], once);
    }
}
