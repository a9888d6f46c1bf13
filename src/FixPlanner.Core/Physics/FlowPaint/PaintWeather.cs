using FixPlanner.Core.Physics.Air;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.FlowPaint;

/// <summary>The day and the place on the car at which paint is tried.</summary>
public sealed record PaintWeather
{
    /// <summary>Takes the day.</summary>
    /// <param name="air">Air temperature, -5 to 45 degrees Celsius.</param>
    /// <param name="humidity">Relative humidity, 0 to 1; matters for water only.</param>
    /// <param name="pressure">Air pressure at the place, 70 to 108 kPa.</param>
    /// <param name="panel">Temperature of the panel, -5 to 80 degrees Celsius; leave out when it is not in the sun.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input outside its range.</exception>
    public PaintWeather(Temperature air, double humidity, Pressure pressure, Temperature? panel = null)
    {
        Valid.Within(air.DegreesCelsius, -5, 45, "degrees Celsius", nameof(air));
        Valid.Within(humidity, 0, 1, "(a share)");
        Valid.Within(pressure.Pascals, 70_000, 108_000, "Pa", nameof(pressure));
        Valid.Within((panel ?? air).DegreesCelsius, -5, 80, "degrees Celsius", nameof(panel));
        Air = air;
        Humidity = humidity;
        Pressure = pressure;
        Panel = panel ?? air;
    }

    /// <summary>Air temperature.</summary>
    public Temperature Air { get; }

    /// <summary>Relative humidity, 0 to 1.</summary>
    public double Humidity { get; }

    /// <summary>Air pressure.</summary>
    public Pressure Pressure { get; }

    /// <summary>Temperature of the painted panel.</summary>
    public Temperature Panel { get; }

    // Dry air: the moisture of the day changes density by under 1 %, the plate law is good to 40 %.
    internal double DensityKgM3 => Pressure.Pascals / (AirProperties.GasConstantDryAir * Air.Kelvins);

    internal double KinematicViscosityM2S => AirProperties.KinematicViscosity(Air, AirDensity.FromKilogramsPerCubicMetre(DensityKgM3));
}
