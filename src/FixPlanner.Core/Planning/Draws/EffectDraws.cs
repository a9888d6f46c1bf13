using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.Effects;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Planning.Draws;

/// <summary>The computed range of one quantity, in the unit and sign in which it is shown (drag in m2 of drag area; minus is less).</summary>
/// <param name="On">The quantity.</param>
/// <param name="AsBelieved">With each cause there or not, as believed now.</param>
/// <param name="IfCause">With the causes there.</param>
internal sealed record EffectSpread(EffectOn On, Spread AsBelieved, Spread IfCause)
{
    /// <summary>Its draws as believed; empty for a range that was computed otherwise. Not to be changed.</summary>
    public double[] BelievedDraws { get; init; } = [];

    /// <summary>Its draws with the causes there.</summary>
    public double[] IfCauseDraws { get; init; } = [];
}

/// <summary>
/// Computed ranges of effects: in each draw a world (each cause there or not, from the joint posterior) and drawn effects, from which amounts and fractions are derived afresh.
/// A single fix is counted on the car as it is; what is fitted already has taken its part.
/// </summary>
internal sealed class EffectDraws
{
    private readonly EffectLayout layout;
    private readonly CommonDraws draws;
    private readonly bool[][] worlds;
    private readonly bool[] fitted;
    private readonly double[] dragAreas;

    /// <param name="layout">Who acts on what.</param>
    /// <param name="draws">The common draws.</param>
    /// <param name="worlds">For each draw whether each cause, in the layout's order, is there.</param>
    /// <param name="fitted">Fixes on the car now.</param>
    /// <param name="dragAreas">Drag area of the car in each draw, in m2.</param>
    public EffectDraws(EffectLayout layout, CommonDraws draws, bool[][] worlds, bool[] fitted, double[] dragAreas) =>
        (this.layout, this.draws, this.worlds, this.fitted, this.dragAreas) = (layout, draws, worlds, fitted, dragAreas);

    /// <summary>Ranges of single fixes, of a whole set and of a part of it, from the same draws.</summary>
    /// <param name="fixes">The single fixes.</param>
    /// <param name="set">The set, without what is fitted.</param>
    /// <param name="part">The part; none unless given.</param>
    /// <returns>For each single fix its quantities; then those of the set and of the part.</returns>
    public (IReadOnlyList<EffectSpread>[] Fixes, IReadOnlyList<EffectSpread> Set, IReadOnlyList<EffectSpread> Part) Run(IReadOnlyList<int> fixes, bool[] set, int[]? part = null)
    {
        int[] whole = [.. Enumerable.Range(0, set.Length).Where(i => set[i])];
        IReadOnlyList<EffectSpread>[] all = Of([.. fixes.Select(f => new[] { f }), whole, part ?? []]);
        return (all[..^2], all[^2], all[^1]);
    }

    /// <summary>Ranges of several sets from the same draws, as many as there are worlds.</summary>
    /// <param name="sets">The fixes of each set, without what is fitted.</param>
    /// <returns>For each set its quantities.</returns>
    public IReadOnlyList<EffectSpread>[] Of(IReadOnlyList<int[]> sets)
    {
        EffectFigures buffer = new(layout);
        SetCount[] counts = [.. sets.Select(s => new SetCount(layout, s, worlds.Length))];
        double[] left = new double[layout.Cells.Length];
        double[] energy = new double[layout.SourceCause.Length];
        for (int draw = 0; draw < worlds.Length; draw++)
        {
            EffectFigures figures = draws.Figures(draw, buffer);
            (double rest, double carried) = OnTheCar(figures, left, energy);
            foreach (SetCount count in counts)
            {
                count.Count(draw, figures, worlds[draw], left, energy, rest, carried, dragAreas[draw]);
            }
        }

        return [.. counts.Select(c => c.Spreads())];
    }

    /// <summary>What is left of each cell and source if its cause is there, after what is fitted; noise of the rest; glass load that sealing already brought.</summary>
    private (double Noise, double Carried) OnTheCar(EffectFigures figures, double[] left, double[] energy)
    {
        figures.Amount.CopyTo(left, 0);
        figures.Energy.CopyTo(energy, 0);
        double rest = 1;
        double carried = 0;
        for (int f = 0; f < fitted.Length; f++)
        {
            if (!fitted[f])
            {
                continue;
            }

            for (int e = layout.Additive.FixStart[f]; e < layout.Additive.FixStart[f + 1]; e++)
            {
                carried = layout.Additive.CountsOnce[e] ? Math.Min(carried, figures.Side[e]) : carried;
                for (int l = layout.Additive.LinkStart[e]; l < layout.Additive.LinkStart[e + 1]; l++)
                {
                    left[layout.Additive.LinkPlace[l]] *= 1 - figures.Fraction[l];
                }
            }

            for (int e = layout.Noise.FixStart[f]; e < layout.Noise.FixStart[f + 1]; e++)
            {
                rest += figures.Added[e];
                for (int l = layout.Noise.LinkStart[e]; l < layout.Noise.LinkStart[e + 1]; l++)
                {
                    energy[layout.Noise.LinkPlace[l]] *= 1 - figures.NoiseFraction[l];
                }
            }
        }

        return (rest, carried);
    }
}
