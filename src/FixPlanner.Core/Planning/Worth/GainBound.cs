using FixPlanner.Core.Planning.BestSet;

namespace FixPlanner.Core.Planning.Worth;

/// <summary>
/// The most that a change of beliefs can make another set better than today's, without solving: whatever set T is best then, today it was no better than today's plan S.
/// Additive terms: a change of worth counts in full where it is for T and against S. Noise: the change of each logarithm, at its least over all that T could leave.
/// </summary>
internal sealed class GainBound
{
    private readonly SetProblem now;
    private readonly double[] removedByPlan;
    private readonly double[] mostRemoved;
    private readonly double[] leftByPlan;
    private readonly double[] leastLeft;
    private readonly double addedByPlan;
    private readonly double mostAdded;

    /// <param name="now">Today's figures; not changed afterwards.</param>
    /// <param name="plan">Today's best set.</param>
    /// <param name="possible">Items that may be chosen in any answer.</param>
    public GainBound(SetProblem now, ReadOnlySpan<bool> plan, ReadOnlySpan<bool> possible)
    {
        this.now = now;
        SetStructure s = now.Structure;
        leftByPlan = Ones(s.Sources);
        leastLeft = Ones(s.Sources);
        double[] planLeft = Ones(s.Terms);
        double[] allLeft = Ones(s.Terms);
        for (int i = 0; i < s.Items; i++)
        {
            if (plan[i])
            {
                addedByPlan += now.NoiseAdded[i];
                Take(i, planLeft, leftByPlan);
            }

            if (plan[i] || possible[i])
            {
                mostAdded += now.NoiseAdded[i];
                Take(i, allLeft, leastLeft);
            }
        }

        removedByPlan = [.. planLeft.Select(left => 1 - left)];
        mostRemoved = [.. allLeft.Select(left => 1 - left)];
    }

    /// <summary>The bound for figures that differ from today's in worths of terms and powers of noise only.</summary>
    public double Of(SetProblem then)
    {
        double bound = 0;
        for (int t = 0; t < removedByPlan.Length; t++)
        {
            double change = then.TermWorth[t] - now.TermWorth[t];
            bound += change > 0 ? change * (mostRemoved[t] - removedByPlan[t]) : -change * removedByPlan[t];
        }

        return bound + Noise(then);
    }

    private double Noise(SetProblem then)
    {
        if (now.NoiseWorth <= 0)
        {
            return 0;
        }

        double before = now.NoiseRest + addedByPlan;
        double after = before;
        for (int s = 0; s < leftByPlan.Length; s++)
        {
            before += now.NoisePower[s] * leftByPlan[s];
            after += then.NoisePower[s] * leftByPlan[s];
        }

        return Math.Max(0, 10 * now.NoiseWorth * (Math.Log10(after / before) - Math.Log10(LeastRatio(then))));
    }

    /// <summary>Least ratio of noise then to noise now over all that can be left, by a fixed point: what lowers the ratio stays, the rest goes.</summary>
    private double LeastRatio(SetProblem then)
    {
        double ratio = 1;
        for (int round = 0; round < 60; round++)
        {
            double numerator = now.NoiseRest + (ratio > 1 ? mostAdded : 0);
            double denominator = numerator;
            for (int s = 0; s < leastLeft.Length; s++)
            {
                double left = then.NoisePower[s] < ratio * now.NoisePower[s] ? 1 : leastLeft[s];
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

    private void Take(int item, double[] left, double[] power)
    {
        SetStructure s = now.Structure;
        for (int l = s.LinkStart[item]; l < s.LinkStart[item + 1]; l++)
        {
            left[s.LinkTerm[l]] *= 1 - now.Fraction[l];
        }

        for (int l = s.NoiseStart[item]; l < s.NoiseStart[item + 1]; l++)
        {
            power[s.NoiseSource[l]] *= 1 - now.NoiseFraction[l];
        }
    }

    private static double[] Ones(int count)
    {
        double[] ones = new double[count];
        Array.Fill(ones, 1);
        return ones;
    }
}
