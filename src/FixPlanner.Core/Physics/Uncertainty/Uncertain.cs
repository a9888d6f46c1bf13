using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Uncertainty;

/// <summary>How a value that is not known exactly is spread, given as its quantile function so that draws can be common.</summary>
public sealed class Uncertain
{
    private readonly Func<double, double> quantile;

    private Uncertain(Func<double, double> quantile, double likely, bool isCertain)
    {
        this.quantile = quantile;
        Likely = likely;
        IsCertain = isCertain;
    }

    /// <summary>Mode of a triangle, middle of the others.</summary>
    public double Likely { get; }

    /// <summary>True when there is nothing to draw.</summary>
    public bool IsCertain { get; }

    /// <summary>A range somebody stated.</summary>
    /// <param name="range">Low, likely, high in order.</param>
    /// <returns>The distribution.</returns>
    public static Uncertain Triangular(Triangle range) => new(range.Quantile, range.Likely, range.High <= range.Low);

    /// <summary>Measured or modelled with a standard error.</summary>
    /// <param name="mean">Mean.</param>
    /// <param name="deviation">Standard deviation, zero or more.</param>
    /// <returns>The distribution.</returns>
    public static Uncertain Normal(double mean, double deviation) =>
        new(share => mean + (deviation * StandardNormal(share)), mean, deviation == 0);

    /// <summary>A positive value known to a factor, such as the strength of an old seal.</summary>
    /// <param name="median">Above zero: half lie below.</param>
    /// <param name="logDeviation">Standard deviation of the natural logarithm, zero or more.</param>
    /// <returns>The distribution.</returns>
    public static Uncertain LogNormal(double median, double logDeviation) =>
        new(share => median * Math.Exp(logDeviation * StandardNormal(share)), median, logDeviation == 0);

    /// <summary>Anywhere between two ends.</summary>
    /// <param name="low">Low end.</param>
    /// <param name="high">High end.</param>
    /// <returns>The distribution.</returns>
    public static Uncertain Uniform(double low, double high) =>
        new(share => low + (share * (high - low)), (low + high) / 2, high <= low);

    /// <summary>The value below which a share of the distribution lies.</summary>
    /// <param name="share">Above 0 and below 1.</param>
    /// <returns>The value.</returns>
    public double Quantile(double share) => IsCertain ? Likely : quantile(share);

    private static double StandardNormal(double share) => MathNet.Numerics.Distributions.Normal.InvCDF(0, 1, share);
}
