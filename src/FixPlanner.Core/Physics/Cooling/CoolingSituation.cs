using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Cooling;

/// <summary>A situation in which cooling is judged: standing in traffic, climbing, at top speed.</summary>
/// <param name="Name">What it is called.</param>
/// <param name="Speed">Air past the car.</param>
/// <param name="Heat">Heat to be carried away.</param>
/// <param name="Air">Air of the day.</param>
/// <param name="Density">Density of that air.</param>
public sealed record CoolingSituation(string Name, AirSpeed Speed, Power Heat, Temperature Air, AirDensity Density)
{
    /// <summary>How much hotter than the day the air is that enters: hot air drawn in again. Zero at speed, 5 to 20 K standing.</summary>
    /// <source key="common practice" place="from memory">5 to 20 K standing with a fan and gaps beside the core</source>
    public TemperatureChange DrawnInAgain { get; init; }

    /// <summary>Temperature of the air as it enters.</summary>
    public Temperature InletAir => Air + DrawnInAgain;
}
