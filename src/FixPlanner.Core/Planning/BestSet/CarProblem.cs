using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.Effects;

namespace FixPlanner.Core.Planning.BestSet;

/// <summary>
/// The choice for one car: fills the figures of a <see cref="SetProblem"/> from beliefs, effects and what a change is worth to this owner.
/// Items are the fixes, terms the cells, sources the noise sources of the layout, in the same order.
/// </summary>
internal sealed class CarProblem
{
    private readonly EffectLayout layout;
    private readonly bool[] fitted;

    /// <param name="layout">Who acts on what.</param>
    /// <param name="requires">What must come first; what is fitted already asks for nothing.</param>
    /// <param name="excludes">What excludes what.</param>
    /// <param name="fitted">Fixes that are on the car now: their part of each harm is gone already, and they cannot be chosen again.</param>
    public CarProblem(EffectLayout layout, IReadOnlyList<(int Item, int Needs)> requires, IReadOnlyList<(int One, int Other)> excludes, bool[]? fitted = null)
    {
        this.layout = layout;
        this.fitted = fitted ?? new bool[layout.Fixes];
        (int Item, int Needs)[] open = [.. requires.Where(r => !this.fitted[r.Needs] && !this.fitted[r.Item])];
        Problem = new(new(
            layout.Fixes,
            layout.Cells.Length,
            layout.SourceCause.Length,
            LinkStarts(layout.Additive),
            layout.Additive.LinkPlace,
            LinkStarts(layout.Noise),
            layout.Noise.LinkPlace,
            open,
            excludes));
    }

    /// <summary>The figures as filled last.</summary>
    public SetProblem Problem { get; }

    /// <summary>Fills worths, fractions, sides and noise; costs, times, must and never are set by the caller.</summary>
    /// <param name="figures">Amounts and fractions.</param>
    /// <param name="belief">Chance of each cause, 0 to 1.</param>
    /// <param name="worth">What a change is worth.</param>
    public void Fill(EffectFigures figures, ReadOnlySpan<double> belief, Worthwhile worth)
    {
        FillAdditive(figures, belief, worth);
        FillNoise(figures, belief, worth);
    }

    private void FillAdditive(EffectFigures figures, ReadOnlySpan<double> belief, Worthwhile worth)
    {
        EffectTable table = layout.Additive;
        SetProblem p = Problem;
        for (int c = 0; c < layout.Cells.Length; c++)
        {
            (int cause, EffectOn on) = layout.Cells[c];
            p.TermWorth[c] = belief[cause] * figures.Amount[c] * worth.PerUnit(on);
        }

        Array.Copy(figures.Fraction, p.Fraction, p.Fraction.Length);
        Array.Clear(p.Side);
        Array.Clear(p.SharedLoad);
        double carried = 0;
        for (int e = 0; e < table.Rows; e++)
        {
            int fix = table.Fix[e];
            double side = figures.Side[e] * worth.PerUnit(table.On[e]);
            if (table.CountsOnce[e])
            {
                p.SharedLoad[fix] = -side;
                carried = fitted[fix] ? Math.Max(carried, -side) : carried;
            }
            else
            {
                p.Side[fix] += side;
            }

            for (int l = table.LinkStart[e]; fitted[fix] && l < table.LinkStart[e + 1]; l++)
            {
                p.TermWorth[table.LinkPlace[l]] *= 1 - figures.Fraction[l];
            }
        }

        for (int i = 0; carried > 0 && i < p.SharedLoad.Length; i++)
        {
            p.SharedLoad[i] = Math.Max(0, p.SharedLoad[i] - carried);
        }
    }

    private void FillNoise(EffectFigures figures, ReadOnlySpan<double> belief, Worthwhile worth)
    {
        EffectTable table = layout.Noise;
        SetProblem p = Problem;
        p.NoiseWorth = worth.PerUnit(EffectOn.Noise);
        p.NoiseRest = 1;
        for (int s = 0; s < p.NoisePower.Length; s++)
        {
            p.NoisePower[s] = belief[layout.SourceCause[s]] * figures.Energy[s];
        }

        Array.Copy(figures.NoiseFraction, p.NoiseFraction, p.NoiseFraction.Length);
        Array.Clear(p.NoiseAdded);
        for (int e = 0; e < table.Rows; e++)
        {
            int fix = table.Fix[e];
            p.NoiseAdded[fix] += figures.Added[e];
            if (!fitted[fix])
            {
                continue;
            }

            p.NoiseRest += figures.Added[e];
            for (int l = table.LinkStart[e]; l < table.LinkStart[e + 1]; l++)
            {
                p.NoisePower[table.LinkPlace[l]] *= 1 - figures.NoiseFraction[l];
            }
        }
    }

    private static int[] LinkStarts(EffectTable table) => [.. table.FixStart.Select(row => table.LinkStart[row])];
}
