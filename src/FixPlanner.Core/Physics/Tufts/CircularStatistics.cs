using FixPlanner.Core.Quantities;
using MathNet.Numerics.Distributions;

namespace FixPlanner.Core.Physics.Tufts;

/// <summary>Statistics of directions. 355 and 5 degrees have the mean 0, not 180.</summary>
public sealed class CircularStatistics
{
    private readonly double secondAboutMean;

    private CircularStatistics(double[] radians, bool axial)
    {
        double cosine = radians.Average(Math.Cos);
        double sine = radians.Average(Math.Sin);
        double mean = Math.Atan2(sine, cosine);
        Count = radians.Length;
        IsAxial = axial;
        ResultantLength = Math.Min(1, Math.Sqrt((cosine * cosine) + (sine * sine)));
        Mean = Angle.FromRadians(axial ? mean / 2 : mean);
        secondAboutMean = radians.Average(angle => Math.Cos(2 * (angle - mean)));
    }

    /// <summary>Number of directions.</summary>
    public int Count { get; }

    /// <summary>True when the ends of the tufts could not be told apart, so that angles count modulo 180 degrees.</summary>
    public bool IsAxial { get; }

    /// <summary>Mean direction; without meaning when the resultant length is near zero.</summary>
    public Angle Mean { get; }

    /// <summary>Resultant length R: 1 when all agree, near 0 when they point everywhere.</summary>
    public double ResultantLength { get; }

    /// <summary>Circular variance 1 - R.</summary>
    public double Variance => 1 - ResultantLength;

    /// <summary>Circular standard deviation, radians; infinite when the directions cancel.</summary>
    /// <source key="fisher-1993" place="from memory">sqrt(-2 ln R)</source>
    public double StandardDeviationRadians => ResultantLength == 0 ? double.PositiveInfinity : Math.Sqrt(Math.Max(0, -2 * Math.Log(ResultantLength)));

    /// <summary>Angular deviation, radians.</summary>
    /// <source key="zar" place="ch. 26, from memory">sqrt(2 (1 - R))</source>
    public double AngularDeviationRadians => Math.Sqrt(2 * Variance);

    /// <summary>Rayleigh's z.</summary>
    /// <source key="zar" place="ch. 27, from memory">N R2</source>
    public double RayleighZ => Count * ResultantLength * ResultantLength;

    /// <summary>Chance of so large a resultant when the directions point anywhere.</summary>
    /// <source key="zar" place="ch. 27, from memory">exp(sqrt(1 + 4N + 4(N2 - R_n2)) - (1 + 2N)), R_n = N R</source>
    public double RayleighChance
    {
        get
        {
            double n = Count;
            double resultant = n * ResultantLength;
            return Math.Min(1, Math.Exp(Math.Sqrt(1 + (4 * n) + (4 * ((n * n) - (resultant * resultant)))) - (1 + (2 * n))));
        }
    }

    /// <summary>Takes directions.</summary>
    /// <param name="angles">At least one.</param>
    /// <param name="axial">True when the end of a tuft is unknown: angles are doubled first.</param>
    /// <returns>Their statistics.</returns>
    /// <validity>Independent frames: at least the time that the air takes to pass the height of the car apart.</validity>
    /// <uncertainty>Reading an angle from film: 3 to 5 degrees.</uncertainty>
    /// <source key="fisher-1993" place="from memory">mean of cosines and sines</source>
    /// <exception cref="ArgumentException">No direction given.</exception>
    public static CircularStatistics Of(IReadOnlyCollection<Angle> angles, bool axial = false)
    {
        if (angles.Count == 0)
        {
            throw new ArgumentException("statistics of directions need at least one", nameof(angles));
        }

        double factor = axial ? 2 : 1;
        return new([.. angles.Select(angle => factor * angle.Radians)], axial);
    }

    /// <summary>Half width of the confidence interval of the mean direction.</summary>
    /// <param name="confidence">From 0.5 to 0.999; 0.95 as a rule.</param>
    /// <returns>Half width, or nothing when the directions do not single one out.</returns>
    /// <validity>Ten frames or more, one main direction; the large-sample form by the spread across the mean.</validity>
    /// <uncertainty>Approximate below 25 frames.</uncertainty>
    /// <source key="fisher-1993" place="sect. 4.4, from memory">asin(z sqrt((1 - R_2) / (2 N R2))), R_2 about twice the mean</source>
    /// <exception cref="ArgumentOutOfRangeException">Confidence outside its range.</exception>
    public Angle? MeanHalfWidth(double confidence = 0.95)
    {
        Valid.Within(confidence, 0.5, 0.999, "(a share)");
        double across = Math.Max(0, 1 - secondAboutMean) / (2 * ResultantLength * ResultantLength * Count);
        double reach = Normal.InvCDF(0, 1, (1 + confidence) / 2) * Math.Sqrt(across);
        return reach <= 1 ? Angle.FromRadians(Math.Asin(reach) / (IsAxial ? 2 : 1)) : null;
    }
}
