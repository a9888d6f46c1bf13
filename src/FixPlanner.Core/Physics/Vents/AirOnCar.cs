using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.Vents;

/// <summary>What the air does to the car as a whole: its speed and angle, density and temperature.</summary>
public sealed record AirOnCar
{
    /// <summary>Air of a drive.</summary>
    /// <param name="speed">Over the road, zero or more.</param>
    /// <param name="density">Of the outside air.</param>
    /// <param name="temperature">Of the outside air.</param>
    /// <exception cref="ArgumentOutOfRangeException">Speed below zero, or density not above zero.</exception>
    public AirOnCar(RoadSpeed speed, AirDensity density, Temperature temperature)
    {
        Speed = RoadSpeed.FromMetresPerSecond(Valid.NotNegative(speed.MetresPerSecond, "m/s", nameof(speed)));
        Density = AirDensity.FromKilogramsPerCubicMetre(density.KilogramsPerCubicMetre);
        Temperature = Temperature.FromKelvins(temperature.Kelvins);
    }

    /// <summary>Speed over the road.</summary>
    public RoadSpeed Speed { get; init; }

    /// <summary>Density of the outside air.</summary>
    public AirDensity Density { get; }

    /// <summary>Temperature of the outside air.</summary>
    public Temperature Temperature { get; }

    /// <summary>Natural wind along the road, against the car positive; zero by default.</summary>
    public AirSpeed HeadWind { get; init; }

    /// <summary>Natural wind across the road; zero by default.</summary>
    public AirSpeed CrossWind { get; init; }

    /// <summary>Speed of the air on the car, wind and all.</summary>
    public AirSpeed AirSpeed => AirSpeed.FromMetresPerSecond(Math.Sqrt(
        Square(Speed.MetresPerSecond + HeadWind.MetresPerSecond) + Square(CrossWind.MetresPerSecond)));

    /// <summary>Angle between the air and the car's length; zero in still air and at rest without wind.</summary>
    /// <source key="from-memory" place="triangle of velocities">psi = atan(crosswind / (V + headwind))</source>
    public Angle Yaw => Angle.FromRadians(Math.Atan2(Math.Abs(CrossWind.MetresPerSecond), Math.Abs(Speed.MetresPerSecond + HeadWind.MetresPerSecond)));

    /// <summary>Pressure that stopping this air would give.</summary>
    /// <source key="definition" place="dynamic pressure">q = rho V² / 2</source>
    public PressureDifference DynamicPressure => PressureDifference.FromPascals(
        0.5 * Density.KilogramsPerCubicMetre * Square(AirSpeed.MetresPerSecond));

    private static double Square(double value) => value * value;
}
