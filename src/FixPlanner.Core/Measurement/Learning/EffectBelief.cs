using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Learning;

/// <summary>
/// What the pack says that a fix would show on a car in one quantity, for each state of its causes: the good part of a draw belongs to the causes
/// that are there, the bad part happens anyway. From it follow how likely a measured change is in each state, and what is believed of the size after it.
/// </summary>
internal sealed class EffectBelief
{
    private const int Draws = 200;

    // The pack's ranges are judgement: with this chance the effect is somewhere else, so that no single measurement settles a cause for good.
    private const double ElsewhereShare = 0.05;

    private readonly double[] draws;
    private readonly double[] share;
    private readonly int sense;

    private EffectBelief(IReadOnlyList<string> causes, double[] share, Triangle range, int sense)
    {
        (Causes, this.share, this.sense) = (causes, share, sense);
        Triangle plusGood = sense > 0 ? range : range.Negated();
        draws = [.. Enumerable.Range(0, Draws).Select(i => plusGood.Quantile((i + 0.5) / Draws))];
    }

    /// <summary>The causes, in the order of the bits of a state.</summary>
    public IReadOnlyList<string> Causes { get; }

    /// <summary>Number of states.</summary>
    public int States => share.Length;

    /// <summary>The belief of the pack; null where it states no effect of that fix on that quantity.</summary>
    public static EffectBelief? Of(KnowledgePack pack, Fix fix, EffectOn on)
    {
        if (fix.Effects.FirstOrDefault(e => e.On == on) is not { } effect)
        {
            return null;
        }

        IReadOnlyList<(string Mechanism, FixAction Action, double Share)> causes = EffectCauses.Of(pack, fix, on);
        double[] share = new double[1 << causes.Count];
        for (int state = 0; state < share.Length; state++)
        {
            share[state] = causes.Where((_, bit) => (state >> bit & 1) == 1).Sum(c => c.Share);
        }

        return new([.. causes.Select(c => c.Mechanism)], share, effect.Range, Sense.Of(on));
    }

    /// <summary>How likely the measured change is in each state of the causes, the largest 1.</summary>
    public double[] Likelihood(double measured, double error)
    {
        double elsewhere = ElsewhereShare * Elsewhere(measured, error);
        double[] table = [.. Enumerable.Range(0, States).Select(state => ((1 - ElsewhereShare) * draws.Average(draw => Density(measured, At(draw, state), error))) + elsewhere)];
        double most = table.Max();
        return [.. table.Select(value => value / most)];
    }

    /// <summary>Mean and standard deviation of what the fix shows, with the states as likely as given; in the quantity's own sign.</summary>
    public (double Mean, double Deviation) Shown(IReadOnlyList<double> stateChances) =>
        Moments(Enumerable.Range(0, States).SelectMany(state => draws.Select(draw => (At(draw, state), stateChances[state] / Draws))));

    /// <summary>Mean and standard deviation of the effect with all of its causes there, after the measurement; in the quantity's own sign.</summary>
    public (double Mean, double Deviation) SizeAfter(IReadOnlyList<double> stateChancesBefore, double measured, double error)
    {
        double elsewhere = ElsewhereShare * Elsewhere(measured, error) / 2;
        IEnumerable<(double, double)> inRange = Enumerable.Range(0, States).SelectMany(state => draws.Select(draw =>
            (sense * draw, (1 - ElsewhereShare) * stateChancesBefore[state] / Draws * Density(measured, At(draw, state), error))));
        return Moments(inRange.Concat([(measured - error, elsewhere), (measured + error, elsewhere)]));
    }

    private double Elsewhere(double measured, double error)
    {
        double width = 3 * Math.Max(Math.Abs(draws[0]), Math.Abs(draws[^1]));
        return Density(measured, 0, Math.Sqrt((width * width) + (error * error)));
    }

    // The change that a draw shows in a state, in the quantity's own sign.
    private double At(double draw, int state) => sense * ((share[state] * Math.Max(draw, 0)) + Math.Min(draw, 0));

    private static double Density(double x, double mean, double deviation)
    {
        double z = (x - mean) / deviation;
        return Math.Exp(-z * z / 2) / deviation;
    }

    private static (double Mean, double Deviation) Moments(IEnumerable<(double Value, double Weight)> values)
    {
        double weight = 0;
        double mean = 0;
        double square = 0;
        foreach ((double value, double w) in values)
        {
            weight += w;
            double step = value - mean;
            mean += weight > 0 ? step * w / weight : 0;
            square += w * step * (value - mean);
        }

        return (mean, Math.Sqrt(square / weight));
    }
}
