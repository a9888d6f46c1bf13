using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Noise;

/// <summary>The pitch at which a pane of glass shakes by itself.</summary>
public static class PaneModes
{
    /// <summary>Stiffness of glass (Young's modulus), Pa.</summary>
    public const double GlassModulus = 70e9;

    /// <summary>How much glass narrows when stretched (Poisson's ratio).</summary>
    public const double GlassPoisson = 0.22;

    /// <summary>Density of glass, kg/m3.</summary>
    public const double GlassDensity = 2500;

    /// <summary>How much rubber may stiffen the edge above a simple support: low, likely, high. No unit.</summary>
    /// <source key="common practice" place="from memory">plus 0 to 20 %</source>
    public static Triangle RubberEdge { get; } = new(1.0, 1.07, 1.2);

    /// <summary>First pitch of a flat glass pane whose edges can turn but not move.</summary>
    /// <param name="longSide">a: 0.05 to 2.5 m.</param>
    /// <param name="shortSide">b: 0.05 m up to the long side.</param>
    /// <param name="thickness">t: 2 to 12 mm.</param>
    /// <returns>The pitch.</returns>
    /// <validity>Flat rectangle held all round. A curved pane is stiffer; a wind-down pane held on three sides is softer.</validity>
    /// <uncertainty>Rubber adds 0 to 20 %; curvature can double it; temperature has no effect worth naming.</uncertainty>
    /// <source key="leissa-1973" place="from memory">f = lambda / (2 pi a2) sqrt(D / (rho t)), lambda = pi2 (1 + (a/b)2)</source>
    /// <exception cref="ArgumentOutOfRangeException">A size outside its range, or the short side longer than the long one.</exception>
    public static Frequency First(Length longSide, Length shortSide, Length thickness)
    {
        double longM = Valid.Within(longSide.Metres, 0.05, 2.5, "m", nameof(longSide));
        double shortM = Valid.Within(shortSide.Metres, 0.05, longM, "m", nameof(shortSide));
        double thickM = Valid.Within(thickness.Metres, 0.002, 0.012, "m", nameof(thickness));
        return Frequency.FromHertz(Hertz(HingedParameter(longM / shortM), longM, thickM, GlassModulus, GlassPoisson, GlassDensity));
    }

    /// <summary>Pitch of a thin flat plate of any material from its frequency parameter.</summary>
    internal static double Hertz(double parameter, double longM, double thickM, double modulusPa, double poisson, double densityKgM3)
    {
        double bendingNm = modulusPa * Math.Pow(thickM, 3) / (12 * (1 - (poisson * poisson)));
        return parameter / (2 * Math.PI * longM * longM) * Math.Sqrt(bendingNm / (densityKgM3 * thickM));
    }

    /// <summary>Frequency parameter with hinged edges; side ratio a/b, any above zero.</summary>
    internal static double HingedParameter(double sideRatio) => Math.PI * Math.PI * (1 + (sideRatio * sideRatio));

    /// <summary>
    /// Frequency parameter with clamped edges by the product of two clamped-beam shapes: within 0.4 % of the tabled values,
    /// always a little high, as any assumed shape is.
    /// </summary>
    internal static double ClampedParameter(double sideRatio)
    {
        const double beam = 4.7300407;
        const double slope = 12.3026;
        double ratio2 = sideRatio * sideRatio;
        return Math.Sqrt((Math.Pow(beam, 4) * (1 + (ratio2 * ratio2))) + (2 * slope * slope * ratio2));
    }
}
