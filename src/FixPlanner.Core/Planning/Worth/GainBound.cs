using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Core.Planning.Worth;

/// <summary>
/// The most that a change of beliefs can make another set better than today's, without solving: whatever set T is best then, today it was no better than today's plan S.
/// Additive terms: a change of worth counts in full where it is for T and against S. Noise: the change of each logarithm, at its least over all that T could leave.
/// How much worse T was today is known too: at least as much as the best set that differs from S in one of the same fixes. So fixes are taken together by what
/// they would cost today, and a change must make up for the dearest that it moves.
/// </summary>
internal sealed class GainBound
{
    private readonly SetProblem now;
    private readonly double[] leftByPlan;
    private readonly double[] powerByPlan;
    private readonly double addedByPlan;
    private readonly Level[] levels;

    /// <param name="now">Today's figures; not changed afterwards.</param>
    /// <param name="plan">Today's best set.</param>
    /// <param name="loss">Points that today's best set loses when an item is the other way round, in or out, than in the plan; infinite for what cannot be.</param>
    /// <param name="steps">Losses at which items are taken together, rising; items above the last are one more level.</param>
    public GainBound(SetProblem now, ReadOnlySpan<bool> plan, ReadOnlySpan<double> loss, ReadOnlySpan<double> steps)
    {
        this.now = now;
        SetStructure s = now.Structure;
        (leftByPlan, powerByPlan, addedByPlan) = Left(plan);
        List<Level> made = [];
        bool[] most = plan.ToArray(), fewest = plan.ToArray();
        for (int step = 0; step <= steps.Length; step++)
        {
            double upTo = step < steps.Length ? steps[step] : double.MaxValue;
            double dearest = double.PositiveInfinity;
            for (int i = 0; i < s.Items; i++)
            {
                if (loss[i] <= upTo && (step == 0 || loss[i] > steps[step - 1]))
                {
                    dearest = Math.Min(dearest, loss[i]);
                    (most[i], fewest[i]) = (true, false);
                }
            }

            if (dearest < double.PositiveInfinity)
            {
                made.Add(new(Math.Max(0, dearest), Left(most), Left(fewest)));
            }
        }

        levels = [.. made];
    }

    /// <summary>The bound for figures that differ from today's in worths of terms and powers of noise only.</summary>
    public double Of(SetProblem then)
    {
        double bound = 0;
        foreach (Level level in levels)
        {
            bound = Math.Max(bound, Additive(then, level) + Noise(then, level) - level.LostToday);
        }

        return bound;
    }

    private double Additive(SetProblem then, Level level)
    {
        double bound = 0;
        for (int t = 0; t < leftByPlan.Length; t++)
        {
            double change = then.TermWorth[t] - now.TermWorth[t];
            bound += change * (leftByPlan[t] - (change > 0 ? level.Most.Left[t] : level.Fewest.Left[t]));
        }

        return bound;
    }

    private double Noise(SetProblem then, Level level)
    {
        if (now.NoiseWorth <= 0)
        {
            return 0;
        }

        double before = now.NoiseRest + addedByPlan;
        double after = before;
        for (int s = 0; s < powerByPlan.Length; s++)
        {
            before += now.NoisePower[s] * powerByPlan[s];
            after += then.NoisePower[s] * powerByPlan[s];
        }

        return Math.Max(0, 10 * now.NoiseWorth * (Math.Log10(after / before) - Math.Log10(LeastRatio(then, level))));
    }

    /// <summary>Least ratio of noise then to noise now over all that can be left, by a fixed point: what lowers the ratio stays, the rest goes.</summary>
    private double LeastRatio(SetProblem then, Level level)
    {
        double ratio = 1;
        for (int round = 0; round < 60; round++)
        {
            double numerator = now.NoiseRest + (ratio > 1 ? level.Most.Added : level.Fewest.Added);
            double denominator = numerator;
            for (int s = 0; s < powerByPlan.Length; s++)
            {
                double left = then.NoisePower[s] < ratio * now.NoisePower[s] ? level.Fewest.Power[s] : level.Most.Power[s];
                numerator += then.NoisePower[s] * left;
                denominator += now.NoisePower[s] * left;
            }

            double next = numerator / denominator;
            if (Math.Abs(next - ratio) <= 1e-13)
            {
                return next - 1e-12;
            }

            ratio = next;
        }

        return ratio - 1e-9;
    }

    private (double[] Left, double[] Power, double Added) Left(ReadOnlySpan<bool> set)
    {
        SetStructure s = now.Structure;
        double[] left = new double[s.Terms], power = new double[s.Sources];
        Array.Fill(left, 1);
        Array.Fill(power, 1);
        double added = 0;
        for (int i = 0; i < s.Items; i++)
        {
            if (!set[i])
            {
                continue;
            }

            added += now.NoiseAdded[i];
            for (int l = s.LinkStart[i]; l < s.LinkStart[i + 1]; l++)
            {
                left[s.LinkTerm[l]] *= 1 - now.Fraction[l];
            }

            for (int l = s.NoiseStart[i]; l < s.NoiseStart[i + 1]; l++)
            {
                power[s.NoiseSource[l]] *= 1 - now.NoiseFraction[l];
            }
        }

        return (left, power, added);
    }

    /// <summary>Sets that differ from the plan only in items up to some loss, and at least in one that loses so much today.</summary>
    private sealed record Level(double LostToday, (double[] Left, double[] Power, double Added) Most, (double[] Left, double[] Power, double Added) Fewest);
}
