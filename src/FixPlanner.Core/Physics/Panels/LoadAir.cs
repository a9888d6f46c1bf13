using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Panels;

/// <summary>
/// The air for which every load on glass, panels, doors and latches is worked out: not the mean of a mild day but a gust on
/// a cold one. One place for it, so that no load is told with a kinder air than another.
/// </summary>
/// <validity>Car speeds up to 90 m/s. The gust adds to the speed of the air, so its factor on pressure falls as the car gets faster.</validity>
/// <uncertainty>A gust of 6 m/s is an ordinary windy day, 10 m/s a rough one (from memory). Between 4 and 10 m/s the load at 130 km/h changes by 40 %.</uncertainty>
/// <source key="own-derivation" place="a gust adds a speed; statistics of gusts from memory">p = rho (V + w)² / 2, factor (1 + w / V)²</source>
public sealed record LoadAir
{
    /// <summary>Dry air at -10 °C and 1030 hPa, 1.3635 kg/m3: 13.6 % denser than 1.2.</summary>
    public static AirDensity ColdDay { get; } = AirDensity.FromKilogramsPerCubicMetre(103_000 / (287.055 * 263.15));

    /// <summary>The gust that is used when nothing else is given.</summary>
    public static AirSpeed UsualGust { get; } = AirSpeed.FromMetresPerSecond(6);

    /// <summary>Factor on pressure while passing or meeting a lorry, 1.3 to 1.5 from memory; not part of the usual load.</summary>
    public const double LorryFactor = 1.3;

    /// <summary>Air for a load.</summary>
    /// <param name="speed">Of the car through still air, zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Speed below zero.</exception>
    public LoadAir(AirSpeed speed) => Speed = AirSpeed.FromMetresPerSecond(Valid.NotNegative(speed.MetresPerSecond, "m/s", nameof(speed)));

    /// <summary>Speed of the car through still air.</summary>
    public AirSpeed Speed { get; init; }

    /// <summary>Density; the coldest usual day by default.</summary>
    public AirDensity Density { get; init; } = ColdDay;

    /// <summary>Speed that a gust adds; 6 m/s by default, zero for still air.</summary>
    public AirSpeed Gust { get; init; } = UsualGust;

    /// <summary>Further factor on pressure, 1 by default; <see cref="LorryFactor"/> beside a lorry.</summary>
    public double PassingFactor { get; init; } = 1;

    /// <summary>Dynamic pressure without gust.</summary>
    public PressureDifference SteadyPressure => Dynamic(Speed.MetresPerSecond);

    /// <summary>Dynamic pressure in the gust, with the passing factor: what a load is worked out with.</summary>
    public PressureDifference PeakPressure => PassingFactor * Dynamic(Speed.MetresPerSecond + Gust.MetresPerSecond);

    /// <summary>Peak over steady pressure; not finite for a standing car.</summary>
    public double GustFactor => PeakPressure.Pascals / SteadyPressure.Pascals;

    /// <summary>Speed of the car at which the peak pressure reaches a value.</summary>
    /// <param name="peak">Pressure in the gust, zero or more.</param>
    /// <param name="density">Of the air.</param>
    /// <param name="gust">Speed that the gust adds.</param>
    /// <param name="passingFactor">Further factor on pressure, above zero.</param>
    /// <returns>Speed; zero when the gust alone is enough.</returns>
    /// <validity>As the class.</validity>
    /// <uncertainty>As the class.</uncertainty>
    /// <source key="own-derivation" place="peak pressure solved for the speed">V = sqrt(2 p / (rho f)) - w</source>
    /// <exception cref="ArgumentOutOfRangeException">Pressure below zero, or factor not above zero.</exception>
    public static AirSpeed SpeedAt(PressureDifference peak, AirDensity density, AirSpeed gust, double passingFactor = 1)
    {
        double square = 2 * Valid.NotNegative(peak.Pascals, "Pa", nameof(peak)) / (density.KilogramsPerCubicMetre * Valid.Positive(passingFactor, "(a factor)"));
        return AirSpeed.FromMetresPerSecond(Math.Max(0, Math.Sqrt(square) - gust.MetresPerSecond));
    }

    private PressureDifference Dynamic(double metresPerSecond) =>
        PressureDifference.FromPascals(0.5 * Density.KilogramsPerCubicMetre * metresPerSecond * metresPerSecond);
}
