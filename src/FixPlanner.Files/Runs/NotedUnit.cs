namespace FixPlanner.Files.Runs;

/// <summary>Units of what is noted beside the speed. A value without a unit is not known: 20 may be either scale.</summary>
internal static class NotedUnit
{
    public static double? ToBase(string role, string unit, double value)
    {
        if (!double.IsFinite(value))
        {
            return null;
        }

        double? converted = (role, unit) switch
        {
            ("wind", _) => SpeedUnit.Of(unit) is { } speed ? value * speed.MetresPerSecond : null,
            ("temperature", "c" or "degc" or "°c") => value + 273.15,
            ("temperature", "f" or "degf" or "°f") => ((value - 32) / 1.8) + 273.15,
            ("temperature", "k") => value,
            ("pressure", "hpa" or "mbar") => value * 100,
            ("pressure", "kpa") => value * 1000,
            ("pressure", "pa") => value,
            ("pressure", "inhg") => value * 3386.389,
            ("mass", "kg") => value,
            ("mass", "lb") => value * 0.45359237,
            _ => null,
        };
        return role switch
        {
            "temperature" when converted is < 200 or > 350 => null,
            "pressure" when converted is < 50_000 or > 115_000 => null,
            "wind" when converted is < 0 or > 60 => null,
            "mass" when converted is <= 0 => null,
            _ => converted,
        };
    }

    public static string Example(string role) => role switch
    {
        "wind" => "wind_ms with 1.5 below it",
        "temperature" => "temperature_c with 12 below it",
        "pressure" => "pressure_hpa with 1013 below it",
        _ => "mass_kg with 900 below it",
    };
}
