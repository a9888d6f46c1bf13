using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.Effects;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning.Draws;

/// <summary>Counts the effects of one set of fixes draw by draw, twice: in the drawn world, and with all its causes there.</summary>
internal sealed class SetCount
{
    private readonly EffectLayout layout;
    private readonly int[] fixes;
    private readonly EffectOn[] quantities;
    private readonly double[]?[] believed;
    private readonly double[]?[] ifCause;
    private readonly int[] cells;
    private readonly int[] sources;
    private readonly double[] untouched;
    private readonly double[] quiet;
    private readonly double[] bothSums = new double[2 * Sense.Quantities];

    public SetCount(EffectLayout layout, int[] fixes, int draws)
    {
        this.layout = layout;
        this.fixes = fixes;
        int[] additive = [.. fixes.SelectMany(f => Rows(layout.Additive, f))];
        int[] noise = [.. fixes.SelectMany(f => Rows(layout.Noise, f))];
        quantities = [.. additive.Select(e => layout.Additive.On[e]).Concat(noise.Select(_ => EffectOn.Noise)).Distinct().Order()];
        believed = new double[]?[Sense.Quantities];
        ifCause = new double[]?[Sense.Quantities];
        foreach (EffectOn on in quantities)
        {
            believed[(int)on] = new double[draws];
            ifCause[(int)on] = new double[draws];
        }

        cells = [.. additive.SelectMany(e => Links(layout.Additive, e)).Distinct().Order()];
        sources = [.. noise.SelectMany(e => Links(layout.Noise, e)).Distinct().Order()];
        untouched = new double[layout.Cells.Length];
        quiet = new double[layout.SourceCause.Length];
    }

    /// <summary>Counts one draw.</summary>
    public void Count(int draw, EffectFigures figures, bool[] world, double[] left, double[] energy, double rest, double carried, double dragArea)
    {
        CountAdditive(draw, figures, world, left, carried, dragArea / 100);
        if (believed[(int)EffectOn.Noise] is { } dB)
        {
            (dB[draw], ifCause[(int)EffectOn.Noise]![draw]) = Noise(figures, world, energy, rest);
        }
    }

    /// <summary>The computed ranges, in the quantity's own sign.</summary>
    public IReadOnlyList<EffectSpread> Spreads() => [.. quantities.Select(on =>
    {
        Spread Range(double[] draws) => Spread.OfDraws([.. draws]).Scaled(Sense.Of(on));
        (double[] inWorld, double[] there) = (believed[(int)on]!, ifCause[(int)on]!);
        return new EffectSpread(on, Range(inWorld), Range(there)) { BelievedDraws = Shown(inWorld, on), IfCauseDraws = Shown(there, on) };
    })];

    private static double[] Shown(double[] draws, EffectOn on) => [.. draws.Select(draw => draw * Sense.Of(on))];

    private void CountAdditive(int draw, EffectFigures figures, bool[] world, double[] left, double carried, double perPercentOfDrag)
    {
        Array.Clear(bothSums);
        foreach (int cell in cells)
        {
            untouched[cell] = 1;
        }

        double load = carried;
        EffectTable table = layout.Additive;
        foreach (int fix in fixes)
        {
            for (int e = table.FixStart[fix]; e < table.FixStart[fix + 1]; e++)
            {
                if (table.CountsOnce[e])
                {
                    load = Math.Min(load, figures.Side[e]);
                }
                else
                {
                    Add(table.On[e], figures.Side[e], figures.Side[e]);
                }

                for (int l = table.LinkStart[e]; l < table.LinkStart[e + 1]; l++)
                {
                    untouched[table.LinkPlace[l]] *= 1 - figures.Fraction[l];
                }
            }
        }

        foreach (int cell in cells)
        {
            (int cause, EffectOn on) = layout.Cells[cell];
            double gain = left[cell] * (1 - untouched[cell]);
            Add(on, world[cause] ? gain : 0, gain);
        }

        Add(EffectOn.GlassLoad, load - carried, load - carried);
        foreach (EffectOn on in quantities)
        {
            if (on != EffectOn.Noise)
            {
                double unit = on == EffectOn.Drag ? perPercentOfDrag : 1;
                believed[(int)on]![draw] = unit * bothSums[2 * (int)on];
                ifCause[(int)on]![draw] = unit * bothSums[(2 * (int)on) + 1];
            }
        }
    }

    private void Add(EffectOn on, double inWorld, double withCauses)
    {
        bothSums[2 * (int)on] += inWorld;
        bothSums[(2 * (int)on) + 1] += withCauses;
    }

    /// <summary>Drop of level in dB: in the drawn world, and in the reference state of the claims, exactly the causes of the set there.</summary>
    private (double InWorld, double WithCauses) Noise(EffectFigures figures, bool[] world, double[] energy, double rest)
    {
        foreach (int source in sources)
        {
            quiet[source] = 1;
        }

        double added = 0;
        EffectTable table = layout.Noise;
        foreach (int fix in fixes)
        {
            for (int e = table.FixStart[fix]; e < table.FixStart[fix + 1]; e++)
            {
                added += figures.Added[e];
                for (int l = table.LinkStart[e]; l < table.LinkStart[e + 1]; l++)
                {
                    quiet[table.LinkPlace[l]] *= 1 - figures.NoiseFraction[l];
                }
            }
        }

        double before = rest;
        for (int s = 0; s < energy.Length; s++)
        {
            before += world[layout.SourceCause[s]] ? energy[s] : 0;
        }

        double removed = 0;
        double own = rest;
        double ownRemoved = 0;
        foreach (int source in sources)
        {
            double part = energy[source] * (1 - quiet[source]);
            removed += world[layout.SourceCause[source]] ? part : 0;
            own += energy[source];
            ownRemoved += part;
        }

        return (Decibels.Drop(before, before - removed + added), Decibels.Drop(own, own - ownRemoved + added));
    }

    private static IEnumerable<int> Rows(EffectTable table, int fix) => Enumerable.Range(table.FixStart[fix], table.FixStart[fix + 1] - table.FixStart[fix]);

    private static int[] Links(EffectTable table, int row) => table.LinkPlace[table.LinkStart[row]..table.LinkStart[row + 1]];
}
