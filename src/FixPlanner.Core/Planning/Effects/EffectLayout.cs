using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning.Effects;

/// <summary>
/// Who acts on what, laid out in plain arrays once per pack. Additive quantities and noise are kept apart, because decibels do not add.
/// A cell is one cause's harm in one additive quantity; a source is one cause's noise; a link joins an effect to a cell or a source.
/// Effects are in the order of their fixes, so that the links of one fix stand together.
/// </summary>
internal sealed class EffectLayout
{
    public EffectLayout(int causes, int fixes, IReadOnlyList<StatedEffect> stated)
    {
        Causes = causes;
        Fixes = fixes;
        StatedEffect[] additive = [.. stated.Where(e => e.On != EffectOn.Noise).OrderBy(e => e.Fix).ThenBy(e => e.On)];
        StatedEffect[] noise = [.. stated.Where(e => e.On == EffectOn.Noise).OrderBy(e => e.Fix)];
        Cells = [.. additive.SelectMany(e => e.Causes.Select(c => (c.Cause, e.On))).Distinct().Order()];
        SourceCause = [.. noise.SelectMany(e => e.Causes.Select(c => c.Cause)).Distinct().Order()];
        Dictionary<(int, EffectOn), int> cellOf = Cells.Index().ToDictionary(c => c.Item, c => c.Index);
        Dictionary<int, int> sourceOf = SourceCause.Index().ToDictionary(c => c.Item, c => c.Index);
        Additive = new(fixes, additive, (e, cause) => cellOf[(cause, e.On)]);
        Noise = new(fixes, noise, (_, cause) => sourceOf[cause]);
    }

    /// <summary>Number of causes.</summary>
    public int Causes { get; }

    /// <summary>Number of fixes.</summary>
    public int Fixes { get; }

    /// <summary>The cells: cause and quantity.</summary>
    public (int Cause, EffectOn On)[] Cells { get; }

    /// <summary>The cause of each noise source.</summary>
    public int[] SourceCause { get; }

    /// <summary>Effects on quantities that add.</summary>
    public EffectTable Additive { get; }

    /// <summary>Effects on noise.</summary>
    public EffectTable Noise { get; }
}

/// <summary>Effects of one family in rows; the links of row e are from <see cref="LinkStart"/>[e] to <see cref="LinkStart"/>[e + 1].</summary>
internal sealed class EffectTable
{
    public EffectTable(int fixes, StatedEffect[] rows, Func<StatedEffect, int, int> place)
    {
        Fix = [.. rows.Select(e => e.Fix)];
        On = [.. rows.Select(e => e.On)];
        PlusGood = [.. rows.Select(e => e.PlusGood)];
        CountsOnce = [.. rows.Select(e => e.CountsOnce)];
        FixStart = new int[fixes + 1];
        LinkStart = new int[rows.Length + 1];
        List<int> places = [];
        List<double> shares = [];
        List<double> caps = [];
        for (int e = 0; e < rows.Length; e++)
        {
            double total = rows[e].Causes.Sum(c => ActionCaps.Share(c.Action));
            foreach ((int cause, FixAction action) in rows[e].Causes.OrderBy(c => c.Cause))
            {
                places.Add(place(rows[e], cause));
                shares.Add(ActionCaps.Share(action) / total);
                caps.Add(ActionCaps.Cap(action));
            }

            LinkStart[e + 1] = places.Count;
            FixStart[rows[e].Fix + 1] = e + 1;
        }

        for (int f = 1; f <= fixes; f++)
        {
            FixStart[f] = Math.Max(FixStart[f], FixStart[f - 1]);
        }

        LinkPlace = [.. places];
        LinkShare = [.. shares];
        LinkCap = [.. caps];
    }

    /// <summary>Number of effects.</summary>
    public int Rows => Fix.Length;

    /// <summary>Fix of each effect.</summary>
    public int[] Fix { get; }

    /// <summary>Quantity of each effect.</summary>
    public EffectOn[] On { get; }

    /// <summary>Range of each effect, plus is good.</summary>
    public Triangle[] PlusGood { get; }

    /// <summary>Whether the bad part counts once per set.</summary>
    public bool[] CountsOnce { get; }

    /// <summary>First effect of each fix, and one past the last.</summary>
    public int[] FixStart { get; }

    /// <summary>First link of each effect, and one past the last.</summary>
    public int[] LinkStart { get; }

    /// <summary>Cell or source of each link.</summary>
    public int[] LinkPlace { get; }

    /// <summary>Share of the effect that goes to the link's cause; the shares of one effect add to 1.</summary>
    public double[] LinkShare { get; }

    /// <summary>Largest fraction that the fix can take from the link's cause.</summary>
    public double[] LinkCap { get; }
}
