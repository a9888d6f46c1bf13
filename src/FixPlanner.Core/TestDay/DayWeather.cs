using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.TestDay;

/// <summary>The weather that the day is planned for; what is not known stays unknown.</summary>
/// <param name="Air">Temperature of the air, or null.</param>
/// <param name="Humidity">Relative humidity, 0 to 1, or null.</param>
/// <param name="Wind">Mean wind, or null.</param>
/// <param name="Dry">True for a dry road, false for a wet one, or null.</param>
/// <param name="From">Where it was taken from, in words.</param>
public sealed record DayWeather(Temperature? Air, double? Humidity, AirSpeed? Wind, bool? Dry, string From)
{
    /// <summary>Nothing is known.</summary>
    public static DayWeather Unknown { get; } = new(null, null, null, null, "not said");

    /// <summary>The weather of the newest round that names any: a first guess for the day.</summary>
    /// <param name="logbook">The logbook.</param>
    /// <returns>The weather; unknown when no round names any.</returns>
    public static DayWeather Of(Logbook logbook)
    {
        ArgumentNullException.ThrowIfNull(logbook);
        if (logbook.Rounds.Where(r => r.Weather.Count > 0).OrderBy(r => r.Date ?? DateOnly.MinValue).LastOrDefault() is not { } round)
        {
            return Unknown;
        }

        string? dry = round.Weather.GetValueOrDefault("road");
        return new(
            Read(round, "temperature", UnitKind.Temperature, "°C") is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null,
            Read(round, "humidity", UnitKind.Ratio, "%") / 100,
            Read(round, "wind", UnitKind.Speed, "m/s") is { } wind ? AirSpeed.FromMetresPerSecond(wind) : null,
            dry is null ? null : dry.Trim() == "dry",
            $"as in the round '{round.Id}'{(round.Date is { } day ? $" of {day:yyyy-MM-dd}" : "")}");
    }

    private static double? Read(Round round, string name, UnitKind kind, string unit) =>
        round.Weather.TryGetValue(name, out string? text) && QuantityText.Read(text, kind).TryGet(out Amount amount, out _) ? amount.In(UnitTable.Get(kind, unit)) : null;
}
