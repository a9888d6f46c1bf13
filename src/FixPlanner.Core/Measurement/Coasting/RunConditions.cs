using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>What was noted beside a run. Null is 'not known'.</summary>
/// <param name="AirTemperature">In the shade, at the road.</param>
/// <param name="AirPressure">At the place, not reduced to sea level.</param>
/// <param name="Wind">Strength beside the road, whatever its direction.</param>
/// <param name="Mass">As driven, where it differs between runs.</param>
/// <param name="Day">The date as yyyy-MM-dd, or any word that tells days apart.</param>
public sealed record RunConditions(Temperature? AirTemperature = null, Pressure? AirPressure = null, AirSpeed? Wind = null, Mass? Mass = null, string? Day = null)
{
    /// <summary>Nothing noted.</summary>
    public static RunConditions Unknown { get; } = new();

    /// <summary>Density by the gas law for dry air; null when temperature or pressure is not known.</summary>
    /// <source key="40 CFR 1037.528" place="(h)(10)">P / (287.058 T)</source>
    public AirDensity? Density => AirTemperature is { } temperature && AirPressure is { } pressure
        ? AirDensity.FromKilogramsPerCubicMetre(pressure.Pascals / (287.058 * temperature.Kelvins))
        : null;
}
