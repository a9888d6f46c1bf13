using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>Rolling resistance of the tyres: force along the road for each newton of weight, rising with the square of the speed.</summary>
public sealed record RollingResistance
{
    private RollingResistance(double standing, double perSquareKilometreEachHour)
    {
        Standing = standing;
        RisePerSquareKilometreEachHour = perSquareKilometreEachHour;
    }

    /// <summary>Radial tyres on a smooth hard road.</summary>
    /// <validity>Up to 150 km/h, passenger-car tyres at their pressure.</validity>
    /// <uncertainty>±20 % for a tyre that nobody measured; a survey of modern tyres spans 0.007 to 0.017.</uncertainty>
    /// <source key="wong" place="ch. 1 (from memory)">f = 0.0136 + 0.40e-7 V², V in km/h</source>
    public static RollingResistance Radial { get; } = new(0.0136, 0.40e-7);

    /// <summary>Cross-ply tyres on a smooth hard road: worse, and rising five times as fast.</summary>
    /// <validity>Up to 150 km/h, passenger-car tyres at their pressure.</validity>
    /// <uncertainty>±20 % for a tyre that nobody measured.</uncertainty>
    /// <source key="wong" place="ch. 1 (from memory)">f = 0.0169 + 0.19e-6 V², V in km/h</source>
    public static RollingResistance CrossPly { get; } = new(0.0169, 0.19e-6);

    /// <summary>f at walking pace.</summary>
    public double Standing { get; }

    /// <summary>Rise of f for each (km/h)².</summary>
    public double RisePerSquareKilometreEachHour { get; }

    /// <summary>Tyres whose resistance was measured or is stated by their maker.</summary>
    /// <param name="standing">f at walking pace, 0.003 to 0.1.</param>
    /// <param name="perSquareKilometreEachHour">Rise for each (km/h)²; zero for a constant f.</param>
    /// <returns>The tyres.</returns>
    /// <validity>As measured.</validity>
    /// <uncertainty>As measured; a tow test on one flat road gives about 5 %.</uncertainty>
    /// <source key="own-value" place="given by the owner">f = f0 + k V²</source>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public static RollingResistance Own(double standing, double perSquareKilometreEachHour) => new(
        Valid.Within(standing, 0.003, 0.1, "(a coefficient)"),
        Valid.Within(perSquareKilometreEachHour, 0, 1e-5, "for each (km/h)2"));

    /// <summary>The same tyres with all their resistance multiplied: by their state, or to try a range.</summary>
    /// <param name="factor">Above zero.</param>
    /// <returns>The tyres.</returns>
    /// <validity>Factors of 0.5 to 2.</validity>
    /// <uncertainty>That of the factor.</uncertainty>
    /// <source key="own-derivation" place="multiplication">f' = k f</source>
    public RollingResistance Times(double factor) => new(Standing * Valid.Positive(factor, "(a factor)"), RisePerSquareKilometreEachHour * factor);

    /// <summary>f at a speed.</summary>
    /// <param name="speed">V over the road.</param>
    /// <returns>Force along the road for each newton of weight.</returns>
    /// <validity>As the tyres.</validity>
    /// <uncertainty>As the tyres.</uncertainty>
    /// <source key="wong" place="ch. 1 (from memory)">f = f0 + k V²</source>
    public double Coefficient(RoadSpeed speed) => Standing + (RisePerSquareKilometreEachHour * speed.KilometresPerHour * speed.KilometresPerHour);

    /// <summary>V df/dV, for the slope of the power curve.</summary>
    internal double SpeedTimesSlope(RoadSpeed speed) => 2 * RisePerSquareKilometreEachHour * speed.KilometresPerHour * speed.KilometresPerHour;
}
