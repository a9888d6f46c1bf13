using System.Text.RegularExpressions;

namespace FixPlanner.Files.Runs;

/// <summary>A header cell: its name in plain words and its unit, wherever that is written.</summary>
internal sealed partial record CsvHeader(string Text, string Name, string Unit)
{
    private static readonly Dictionary<string, string> Roles = new[]
    {
        ("time", "time|t|elapsed|elapsed time|seconds|timestamp|utc|utc time|gps time|time of day|clock|zeit|temps|tempo|tijd|tid"),
        ("speed", "speed|velocity|v|gps speed|vehicle speed|ground speed|road speed|geschwindigkeit|vitesse|velocidad|velocita|snelheid|hastighet"),
        ("run", "run|pass|run number|run id|lauf"),
        ("direction", "direction|way|dir|richtung|sens"),
        ("configuration", "configuration|config|setup|variant|konfiguration"),
        ("wind", "wind|wind speed|windspeed"),
        ("temperature", "temperature|temp|air temperature|air temp|ambient temperature|temperatur"),
        ("pressure", "pressure|air pressure|barometer|baro|barometric pressure|luftdruck"),
        ("date", "date|day|datum"),
        ("mass", "mass|weight"),
        ("latitude", "latitude|lat"),
        ("longitude", "longitude|lon|lng|long"),
        ("course", "course|heading|bearing|track"),
    }.SelectMany(role => role.Item2.Split('|').Select(name => (name, role.Item1))).ToDictionary(pair => pair.name, pair => pair.Item2);

    private static readonly HashSet<string> Units =
    [
        "kmh", "km/h", "kph", "kmph", "mph", "mi/h", "ms", "m/s", "mps", "kn", "kt", "kts", "knots", "s", "sec", "secs", "msec", "min",
        "c", "degc", "°c", "f", "degf", "°f", "k", "hpa", "mbar", "kpa", "pa", "inhg", "kg", "lb", "deg", "km_h", "m_s",
    ];

    public string Role => Roles.GetValueOrDefault(Name, "");

    public static CsvHeader Of(string cell)
    {
        string text = cell.Trim();
        Match bracket = Bracketed().Match(text);
        if (bracket.Success)
        {
            return new(text, Plain(bracket.Groups[1].Value), bracket.Groups[2].Value.Trim().ToLowerInvariant());
        }

        string lower = text.ToLowerInvariant();
        foreach (string unit in Units.OrderByDescending(unit => unit.Length))
        {
            if (lower.Length > unit.Length + 1 && lower.EndsWith(unit, StringComparison.Ordinal) && lower[^(unit.Length + 1)] is '_' or ' ' or ',' or ';')
            {
                return new(text, Plain(text[..^(unit.Length + 1)]), unit);
            }
        }

        return new(text, Plain(text), "");
    }

    private static string Plain(string text) => Blanks().Replace(text.Trim().ToLowerInvariant(), " ").Trim();

    [GeneratedRegex(@"^(.*?)[\s_]*[\[\(]([^\]\)]+)[\]\)]\s*$")]
    private static partial Regex Bracketed();

    [GeneratedRegex(@"[\s_\-,]+")]
    private static partial Regex Blanks();
}
