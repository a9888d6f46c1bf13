using MathNet.Numerics;
using MathNet.Numerics.Distributions;

namespace FixPlanner.Core.Measurement.Statistics;

/// <summary>Student's t: quantiles, tail shares, and the power of a two-sided test.</summary>
public static class StudentT
{
    private const int PowerSteps = 300;

    /// <summary>The value with the given share of the distribution below it.</summary>
    /// <param name="share">Above 0, below 1.</param>
    /// <param name="degreesOfFreedom">Above 0; need not be whole.</param>
    /// <returns>The quantile.</returns>
    /// <source key="40 CFR 1065.602" place="Table 1">two-sided 90 and 95 % values</source>
    public static double Quantile(double share, double degreesOfFreedom) =>
        MathNet.Numerics.Distributions.StudentT.InvCDF(0, 1, degreesOfFreedom, share);

    /// <summary>Share of the distribution at least as far from zero as t.</summary>
    /// <param name="t">Any number.</param>
    /// <param name="degreesOfFreedom">Above 0.</param>
    /// <returns>The two-sided p value.</returns>
    public static double TwoSidedShare(double t, double degreesOfFreedom) =>
        Math.Min(1, 2 * MathNet.Numerics.Distributions.StudentT.CDF(0, 1, degreesOfFreedom, -Math.Abs(t)));

    /// <summary>Chance that a two-sided test cries out when the true change is this many standard errors.</summary>
    /// <param name="noncentrality">True change over its standard error.</param>
    /// <param name="degreesOfFreedom">Above 0.</param>
    /// <param name="level">Share of false alarms allowed, for example 0.05.</param>
    /// <param name="bothSides">Count alarms of the wrong sign as well.</param>
    /// <returns>The power, 0 to 1.</returns>
    /// <remarks>The noncentral t by Simpson's rule over the spread of the estimated standard error; good to about 1e-8.</remarks>
    public static double Power(double noncentrality, double degreesOfFreedom, double level, bool bothSides = true)
    {
        double limit = Quantile(1 - (level / 2), degreesOfFreedom);
        double half = degreesOfFreedom / 2;
        double logScale = Math.Log(2) + (half * Math.Log(half)) - SpecialFunctions.GammaLn(half);
        double reach = 12 / Math.Sqrt(2 * degreesOfFreedom);
        double from = Math.Max(0, 1 - reach);
        double step = (1 + reach - from) / PowerSteps;
        double sum = 0;
        for (int i = 0; i <= PowerSteps; i++)
        {
            double ratio = from + (i * step);
            double weight = i is 0 or PowerSteps ? 1 : i % 2 == 1 ? 4 : 2;
            double logDensity = logScale + (ratio > 0 ? (degreesOfFreedom - 1) * Math.Log(ratio) : degreesOfFreedom > 1 ? double.NegativeInfinity : 0) - (half * ratio * ratio);
            double above = Normal.CDF(0, 1, noncentrality - (limit * ratio));
            double below = bothSides ? Normal.CDF(0, 1, -noncentrality - (limit * ratio)) : 0;
            sum += weight * Math.Exp(logDensity) * (above + below);
        }

        return sum * step / 3;
    }

    /// <summary>How many standard errors a true change must have for the test to see it with this power.</summary>
    /// <param name="power">Wanted chance, for example 0.80; above the level, below 1.</param>
    /// <param name="degreesOfFreedom">Above 0.</param>
    /// <param name="level">Share of false alarms allowed.</param>
    /// <returns>The noncentrality: smallest change = this times the standard error.</returns>
    public static double NoncentralityFor(double power, double degreesOfFreedom, double level)
    {
        double low = 0;
        double lowMiss = level - power;
        double high = 4;
        double highMiss = Power(high, degreesOfFreedom, level) - power;
        while (highMiss < 0)
        {
            (low, lowMiss) = (high, highMiss);
            high *= 2;
            highMiss = Power(high, degreesOfFreedom, level) - power;
        }

        // Straight lines between the ends; an end that stays put is given half its weight, so that both close in.
        for (int i = 0; i < 100 && high - low > 1e-9 * high; i++)
        {
            double middle = low - (lowMiss * (high - low) / (highMiss - lowMiss));
            double miss = Power(middle, degreesOfFreedom, level) - power;
            if (Math.Abs(miss) < 1e-10)
            {
                return middle;
            }

            if (miss < 0)
            {
                (low, lowMiss, highMiss) = (middle, miss, highMiss / 2);
            }
            else
            {
                (high, highMiss, lowMiss) = (middle, miss, lowMiss / 2);
            }
        }

        return (low + high) / 2;
    }
}
