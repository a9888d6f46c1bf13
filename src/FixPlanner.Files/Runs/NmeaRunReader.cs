using System.Globalization;

namespace FixPlanner.Files.Runs;

/// <summary>NMEA 0183: RMC gives time, speed, course and place; VTG gives speed where RMC has none.</summary>
internal static class NmeaRunReader
{
    private const double KnotsToMetresPerSecond = 1852.0 / 3600;

    public static bool Looks(string text) => text.TrimStart().StartsWith('$') && text.Length > 6;

    /// <summary>XOR of the characters between dollar and star, in hexadecimal.</summary>
    public static string Checksum(ReadOnlySpan<char> body)
    {
        int sum = 0;
        foreach (char c in body)
        {
            sum ^= c;
        }

        return (sum & 0xFF).ToString("X2", CultureInfo.InvariantCulture);
    }

    public static List<LoggedPoint> Read(string text, RunReadingOptions options, LimitedProblems problems)
    {
        List<LoggedPoint> points = [];
        DateTime? origin = null;
        int line = 0;
        int noFix = 0;
        int firstNoFix = 0;
        foreach (string raw in text.Split('\n'))
        {
            line++;
            string sentence = raw.Trim();
            if (sentence.Length < 6 || sentence[0] != '$' || Kind(sentence) is not ("RMC" or "VTG") || !CheckedBody(sentence, line, options, problems, out string body))
            {
                continue;
            }

            string[] fields = body.Split(',');
            if (Kind(sentence) == "VTG")
            {
                TakeSpeed(fields, points, line, problems);
                continue;
            }

            if (IsWithoutFix(fields))
            {
                noFix++;
                firstNoFix = firstNoFix == 0 ? line : firstNoFix;
                continue;
            }

            if (Point(fields, line, problems, ref origin) is { } point)
            {
                points.Add(point);
            }
        }

        if (noFix > 0)
        {
            problems.Add(RunMessages.NoFix(problems.File, firstNoFix, noFix));
        }

        return points;
    }

    /// <summary>Degrees from ddmm.mmmm and a hemisphere.</summary>
    public static double Degrees(string text, string hemisphere)
    {
        double value = Number(text);
        double degrees = Math.Floor(value / 100);
        return (degrees + ((value - (degrees * 100)) / 60)) * (hemisphere is "S" or "W" ? -1 : 1);
    }

    private static string Kind(string sentence) => sentence.Length >= 6 ? sentence.Substring(3, 3) : "";

    private static bool CheckedBody(string sentence, int line, RunReadingOptions options, LimitedProblems problems, out string body)
    {
        int star = sentence.LastIndexOf('*');
        body = star < 0 ? sentence[1..] : sentence[1..star];
        if (star < 0)
        {
            problems.Add(RunMessages.NoChecksum(problems.File, line));
            return true;
        }

        string written = sentence[(star + 1)..].Trim().ToUpperInvariant();
        string right = Checksum(body);
        if (written == right)
        {
            return true;
        }

        problems.Add(RunMessages.WrongChecksum(problems.File, line, star + 2, written, right));
        return options.IgnoreChecksum;
    }

    // Status V, or mode N in the later form, mean that the receiver only repeats its last place.
    private static bool IsWithoutFix(string[] fields) => fields.Length < 10 || fields[2] != "A" || (fields.Length > 12 && fields[12] == "N");

    private static LoggedPoint? Point(string[] fields, int line, LimitedProblems problems, ref DateTime? origin)
    {
        if (!DateTime.TryParseExact(fields[9], "ddMMyy", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateTime date) || fields[1].Length < 6)
        {
            problems.Add(RunMessages.NotANumber(problems.File, line, Column(fields, fields[1].Length < 6 ? 1 : 9), fields[fields[1].Length < 6 ? 1 : 9], "time"));
            return null;
        }

        double clock = (3600 * Number(fields[1][..2])) + (60 * Number(fields[1][2..4])) + Number(fields[1][4..]);
        origin ??= date;
        double seconds = (date - origin.Value).TotalSeconds + clock;
        if (!double.IsFinite(seconds))
        {
            problems.Add(RunMessages.NotANumber(problems.File, line, Column(fields, 1), fields[1], "time"));
            return null;
        }

        return new(seconds, Number(fields[7]) * KnotsToMetresPerSecond, line)
        {
            Latitude = Degrees(fields[3], fields[4]),
            Longitude = Degrees(fields[5], fields[6]),
            Course = Number(fields[8]),
            Conditions = new(Day: date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
        };
    }

    private static void TakeSpeed(string[] fields, List<LoggedPoint> points, int line, LimitedProblems problems)
    {
        if (points.Count == 0)
        {
            problems.Add(RunMessages.SpeedWithoutTime(problems.File, line));
            return;
        }

        // Old sentences have four bare fields; newer ones name each unit. RMC of the same fix comes first and stands.
        double kilometres = fields.Length > 8 && fields[8] == "K" ? Number(fields[7]) : fields.Length == 5 ? Number(fields[4]) : double.NaN;
        if (!double.IsFinite(points[^1].MetresPerSecond) && double.IsFinite(kilometres))
        {
            points[^1] = points[^1] with { MetresPerSecond = kilometres / 3.6 };
        }
    }

    private static int Column(string[] fields, int field) => 2 + fields.Take(field).Sum(text => text.Length + 1);

    private static double Number(string text) => CsvTime.Number(text, decimalComma: false);
}
