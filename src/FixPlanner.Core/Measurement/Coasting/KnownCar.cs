using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>What a logbook says of the car that matters to a coast-down. What it does not say stays unknown: usual values of a body shape are no measurement.</summary>
/// <param name="Mass">As driven, with the load of the test day; null when not said.</param>
/// <param name="RotatingShare">What turns, as a share of the mass; null when not said.</param>
/// <param name="FrontalArea">Measured, or width times height times the usual factor of the body shape; null when neither is known.</param>
/// <param name="RollingCoefficient">Of the tyres, where the owner knows it; null when not said.</param>
public sealed record KnownCar(Mass? Mass, double? RotatingShare, Area? FrontalArea, double? RollingCoefficient)
{
    /// <summary>Looks it up.</summary>
    /// <param name="s">What is known.</param>
    /// <returns>What is known of the car.</returns>
    public static KnownCar Of(Situation s)
    {
        ArgumentNullException.ThrowIfNull(s);
        bool sized = s.Number("frontal_area_m2") is not null || (s.Number("width_m") is not null && s.Number("height_m") is not null);
        return new(
            s.Number("mass_kg") is { } mass ? Core.Quantities.Mass.FromKilograms(mass + (s.Number("test_load_kg") ?? 0)) : null,
            s.Number("rotating_mass_percent") / 100,
            sized ? Area.FromSquareMetres(CarEstimate.Of(s).FrontalAreaSquareMetres.Mean) : null,
            s.Number("rolling_resistance_percent") / 100);
    }
}
