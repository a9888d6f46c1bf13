using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>A car that rolls out of gear: what slows it, and how long and far it rolls.</summary>
/// <param name="Mass">As driven, with people and fuel; above zero.</param>
/// <param name="RotatingShare">Wheels and gears as a share of the mass; 0.03 unless measured (Regulation (EU) 2017/1151, 2.5.1).</param>
/// <param name="DragArea">CdA; above zero.</param>
/// <param name="RollingCoefficient">Rolling force over weight; 0.006 to 0.03 for road tyres.</param>
/// <param name="Grade">Rise over run, uphill positive; within ±0.05.</param>
/// <param name="Density">Of the day's air; above zero.</param>
public sealed record CoastingCar(Mass Mass, double RotatingShare, DragArea DragArea, double RollingCoefficient, double Grade, AirDensity Density)
{
    /// <summary>Standard gravity in m/s2, by definition.</summary>
    public const double Gravity = 9.80665;

    /// <summary>Mass that the force must slow: the car and, as a share, what turns in it.</summary>
    public Mass EffectiveMass => (1 + RotatingShare) * Mass;

    internal CoastCurve Curve => new(
        Gravity * (RollingCoefficient + Grade) / (1 + RotatingShare),
        0.5 * Density.KilogramsPerCubicMetre * DragArea.SquareMetres / EffectiveMass.Kilograms);

    /// <summary>Time to roll from one speed down to another in still air.</summary>
    /// <param name="from">The higher speed.</param>
    /// <param name="to">The lower speed; above zero.</param>
    /// <returns>The time; not finite where the car never reaches the lower speed downhill.</returns>
    /// <validity>No wind; constant rolling coefficient and grade.</validity>
    /// <uncertainty>Follows the inputs; the form itself is exact.</uncertainty>
    /// <source key="40 CFR 86.529-98" place="Figure F98-9">25 printed times follow from this form within 0.3 %, one row misprinted</source>
    public Duration TimeBetween(RoadSpeed from, RoadSpeed to) => Duration.FromSeconds(Curve.TimeBetween(from.MetresPerSecond, to.MetresPerSecond));

    /// <summary>Road needed to roll from one speed down to another in still air.</summary>
    /// <param name="from">The higher speed.</param>
    /// <param name="to">The lower speed; zero or more.</param>
    /// <returns>The distance.</returns>
    /// <validity>As <see cref="TimeBetween"/>.</validity>
    /// <uncertainty>Follows the inputs.</uncertainty>
    /// <source key="arithmetic" place="integral of v dv / (a + b v²)">closed form</source>
    public Length DistanceBetween(RoadSpeed from, RoadSpeed to) => Length.FromMetres(Curve.DistanceBetween(from.MetresPerSecond, to.MetresPerSecond));

    /// <summary>Speed after some time of rolling in still air.</summary>
    /// <param name="from">Speed at first.</param>
    /// <param name="time">Zero or more.</param>
    /// <returns>The speed; zero once the car stands.</returns>
    /// <validity>As <see cref="TimeBetween"/>.</validity>
    /// <uncertainty>Follows the inputs.</uncertainty>
    /// <source key="arithmetic" place="inverse of the time form">closed form</source>
    public RoadSpeed SpeedAfter(RoadSpeed from, Duration time)
    {
        double speed = Curve.SpeedAfter(from.MetresPerSecond, time.Seconds);
        return RoadSpeed.FromMetresPerSecond(double.IsNaN(speed) ? 0 : speed);
    }
}
