using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Draws;
using FixPlanner.Core.Planning.Effects;
using MathNet.Numerics;

namespace FixPlanner.Core.Planning.Worth;

/// <summary>A temporary trial of a fix.</summary>
/// <param name="Fix">The fix.</param>
/// <param name="On">The quantity on which it shows.</param>
/// <param name="StandardError">Standard error of what it shows, in the quantity's unit (drag in % of the car).</param>
/// <param name="Cents">What it costs.</param>
/// <param name="Minutes">How long it takes.</param>
internal sealed record TrialPlan(int Fix, EffectOn On, double StandardError, int Cents, int Minutes);

/// <summary>What a trial is worth to the whole plan.</summary>
/// <param name="Points">Expected points; below zero when the hours it takes are worth more elsewhere.</param>
/// <param name="ChanceOfBetter">Chance that it shows an improvement beyond two standard errors.</param>
/// <param name="ChanceOfWorse">Chance that it shows the opposite beyond two standard errors.</param>
internal sealed record TrialValue(double Points, double ChanceOfBetter, double ChanceOfWorse);

/// <summary>
/// The worth of a trial before the lasting work: the result (worse, nothing to see, better) is weighed by what each draw of world and effect would show,
/// changes the belief in every cause and the size of the fix itself, and the plan is chosen anew with what money and time are left.
/// </summary>
internal sealed class TrialWorth
{
    private readonly EffectLayout layout;
    private readonly CommonDraws draws;
    private readonly bool[][] worlds;
    private readonly CarProblem work;
    private readonly EffectFigures nominal;
    private readonly Worthwhile worth;
    private readonly double[] belief;
    private readonly double[] sampled;
    private readonly BestSetSolver solver;

    /// <param name="layout">Who acts on what.</param>
    /// <param name="draws">The common draws.</param>
    /// <param name="worlds">For each draw whether each cause, in the layout's order, is there.</param>
    /// <param name="work">A choice for working in, with today's limits, costs, must and never.</param>
    /// <param name="worth">What a change is worth.</param>
    /// <param name="belief">Chance of each cause today.</param>
    public TrialWorth(EffectLayout layout, CommonDraws draws, bool[][] worlds, CarProblem work, Worthwhile worth, double[] belief)
    {
        (this.layout, this.draws, this.worlds, this.work, this.worth, this.belief) = (layout, draws, worlds, work, worth, belief);
        nominal = EffectFigures.Nominal(layout);
        sampled = Shares(worlds, [.. Enumerable.Repeat(1.0 / worlds.Length, worlds.Length)]);
        solver = new(work.Problem.Structure);
    }

    /// <summary>Works out a trial.</summary>
    /// <param name="trial">The trial.</param>
    /// <param name="today">Points of today's plan.</param>
    public TrialValue Of(TrialPlan trial, double today)
    {
        EffectTable table = trial.On == EffectOn.Noise ? layout.Noise : layout.Additive;
        int row = Enumerable.Range(table.FixStart[trial.Fix], table.FixStart[trial.Fix + 1] - table.FixStart[trial.Fix]).FirstOrDefault(e => table.On[e] == trial.On, -1);
        if (row < 0)
        {
            return new(0, 0, 0);
        }

        double[] effect = [.. Enumerable.Range(0, worlds.Length).Select(d => table.PlusGood[row].Quantile(draws.Effect(d)[trial.Fix]))];
        double[] shown = [.. effect.Select((x, d) => Shown(table, row, x, worlds[d]))];
        double expected = 0;
        double[] chances = new double[3];
        for (int result = 0; result < 3; result++)
        {
            double[] weight = [.. shown.Select(gain => Chance(result, gain, trial.StandardError))];
            chances[result] = weight.Sum() / weight.Length;
            expected += chances[result] > 1e-9 ? chances[result] * After(trial, row, effect, weight) : 0;
        }

        return new(expected - today, chances[2], chances[0]);
    }

    /// <summary>What the trial would show in a world: the good part as far as the causes are there, the bad part in any case.</summary>
    private double Shown(EffectTable table, int row, double value, bool[] world)
    {
        double there = 0;
        for (int l = table.LinkStart[row]; l < table.LinkStart[row + 1]; l++)
        {
            int cause = ReferenceEquals(table, layout.Noise) ? layout.SourceCause[table.LinkPlace[l]] : layout.Cells[table.LinkPlace[l]].Cause;
            there += world[cause] ? table.LinkShare[l] : 0;
        }

        return (there * Math.Max(value, 0)) + Math.Min(value, 0);
    }

    /// <summary>Chance of a result: 0 worse, 1 nothing to see, 2 better, by two standard errors.</summary>
    private static double Chance(int result, double gain, double standardError)
    {
        double better = Normal((gain / standardError) - 2);
        double worse = Normal((-gain / standardError) - 2);
        return result switch { 0 => worse, 2 => better, _ => Math.Max(0, 1 - better - worse) };
    }

    private double After(TrialPlan trial, int row, double[] effect, double[] weight)
    {
        double total = weight.Sum();
        double[] parts = [.. weight.Select(w => w / total)];
        double good = parts.Zip(effect, (part, x) => part * Math.Max(x, 0)).Sum();
        double bad = parts.Zip(effect, (part, x) => part * Math.Min(x, 0)).Sum();

        // The worlds are a sample: what they say is carried over as a shift of the exact belief.
        double[] then = Shares(worlds, parts);
        for (int c = 0; c < then.Length; c++)
        {
            then[c] = Math.Clamp(belief[c] + then[c] - sampled[c], 0, 1);
        }

        work.Fill(nominal, then, worth);
        Rescale(trial, row, good, bad);
        SetProblem problem = work.Problem;
        (int money, int time) = (problem.MoneyCents, problem.TimeMinutes);
        problem.MoneyCents = Math.Max(0, money - trial.Cents);
        problem.TimeMinutes = Math.Max(0, time - trial.Minutes);
        SetAnswer best = solver.Solve(problem, SearchLimits.None);
        (problem.MoneyCents, problem.TimeMinutes) = (money, time);
        return best.Points;
    }

    /// <summary>The result also tells how large the fix's own effect is: its fractions and its side effect on that quantity follow.</summary>
    private void Rescale(TrialPlan trial, int row, double good, double bad)
    {
        bool noise = trial.On == EffectOn.Noise;
        EffectTable table = noise ? layout.Noise : layout.Additive;
        TriangleParts mean = TriangleParts.Of(table.PlusGood[row]);
        double[] fractions = noise ? work.Problem.NoiseFraction : work.Problem.Fraction;
        double scale = mean.Good <= 0 ? 1 : noise ? Decibels.Removed(good) / Decibels.Removed(mean.Good) : good / mean.Good;
        for (int l = table.LinkStart[row]; l < table.LinkStart[row + 1]; l++)
        {
            fractions[l] = Math.Min(fractions[l] * scale, table.LinkCap[l]);
        }

        if (noise)
        {
            work.Problem.NoiseAdded[trial.Fix] += Decibels.Added(-bad) - nominal.Added[row];
        }
        else if (!table.CountsOnce[row])
        {
            work.Problem.Side[trial.Fix] += (bad - nominal.Side[row]) * worth.PerUnit(trial.On);
        }
    }

    private static double[] Shares(bool[][] worlds, double[] parts)
    {
        double[] shares = new double[worlds[0].Length];
        for (int d = 0; d < worlds.Length; d++)
        {
            bool[] world = worlds[d];
            for (int c = 0; c < shares.Length; c++)
            {
                shares[c] += world[c] ? parts[d] : 0;
            }
        }

        return shares;
    }

    private static double Normal(double z) => SpecialFunctions.Erfc(-z / Math.Sqrt(2)) / 2;
}
