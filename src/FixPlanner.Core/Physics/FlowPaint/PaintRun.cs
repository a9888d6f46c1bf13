using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Physics.FlowPaint;

/// <summary>A paint run as planned: what is painted on, where, and how it is driven.</summary>
/// <param name="Carrier">The liquid.</param>
/// <param name="Weather">The day.</param>
/// <param name="Speed">Steady speed of the run, 5 to 45 m/s.</param>
/// <param name="Slope">Angle of the panel from level, 0 to 90 degrees.</param>
public sealed record PaintRun(Carrier Carrier, PaintWeather Weather, AirSpeed Speed, Angle Slope)
{
    /// <summary>Length of attached flow ahead of the place; a metre unless said otherwise.</summary>
    public Length Run { get; init; } = Length.FromMetres(1);

    /// <summary>Thickness of the fresh film; a brushed coat is about a tenth of a millimetre.</summary>
    public Length Thickness { get; init; } = Length.FromMetres(100e-6);

    /// <summary>Time from painting to the steady speed.</summary>
    public Duration TimeToSpeed { get; init; } = Duration.FromSeconds(45);

    /// <summary>Time for which the steady speed can be held.</summary>
    public Duration SteadyTime { get; init; } = Duration.FromMinutes(4);
}
