using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.RoadLoad;

/// <summary>Air, wind and slope on the road.</summary>
/// <param name="Density">ρ of the day.</param>
/// <param name="Headwind">Against the car; negative from behind.</param>
/// <param name="Slope">θ, positive uphill.</param>
public sealed record RoadDay(AirDensity Density, AirSpeed Headwind, Angle Slope)
{
    /// <summary>Still air on a level road.</summary>
    /// <param name="density">ρ of the day.</param>
    /// <returns>The day.</returns>
    /// <validity>As the density.</validity>
    /// <uncertainty>That of the density.</uncertainty>
    /// <source key="own-derivation" place="definition">no wind, no slope</source>
    public static RoadDay Calm(AirDensity density) => new(density, default, default);
}
