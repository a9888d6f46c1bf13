using System.Globalization;
using System.Xml;

namespace FixPlanner.Files.Runs;

/// <summary>
/// GPX 1.1 and 1.0 read with the reader of the platform (docs/decisions says why): places, times, and a speed in
/// whatever extension holds one. Nothing outside the file is ever fetched.
/// </summary>
internal static class GpxRunReader
{
    public static bool Looks(string text) => text.TrimStart('\uFEFF', ' ', '\r', '\n', '\t').StartsWith('<');

    public static List<LoggedPoint> Read(string text, RunReadingOptions options, LimitedProblems problems)
    {
        List<LoggedPoint> points = [];
        DateTime? origin = null;
        XmlReaderSettings settings = new() { DtdProcessing = DtdProcessing.Prohibit, XmlResolver = null, IgnoreComments = true, IgnoreWhitespace = true };
        using XmlReader reader = XmlReader.Create(new StringReader(text), settings);
        try
        {
            while (reader.Read())
            {
                if (reader.NodeType == XmlNodeType.Element && reader.LocalName == "trkpt" && Point(reader, problems, ref origin) is { } point)
                {
                    points.Add(point);
                }
            }
        }
        catch (XmlException broken)
        {
            problems.Add(RunMessages.BrokenXml(problems.File, broken.LineNumber, broken.LinePosition, FirstSentence(broken.Message)));
        }

        return CheckUnit(points, options, problems);
    }

    private static LoggedPoint? Point(XmlReader reader, LimitedProblems problems, ref DateTime? origin)
    {
        IXmlLineInfo place = (IXmlLineInfo)reader;
        int line = place.LineNumber;
        int column = place.LinePosition;
        double latitude = Number(reader.GetAttribute("lat"));
        double longitude = Number(reader.GetAttribute("lon"));
        string time = "";
        double speed = double.NaN;
        double course = double.NaN;
        if (!reader.IsEmptyElement)
        {
            int depth = reader.Depth;
            string name = "";
            while (reader.Read() && reader.Depth > depth)
            {
                if (reader.NodeType == XmlNodeType.Element)
                {
                    name = reader.LocalName;
                }
                else if (reader.NodeType is XmlNodeType.Text or XmlNodeType.CDATA)
                {
                    time = name == "time" ? reader.Value.Trim() : time;
                    speed = name is "speed" or "velocity" ? Number(reader.Value) : speed;
                    course = name is "course" or "bearing" or "heading" ? Number(reader.Value) : course;
                }
            }
        }

        if (!DateTime.TryParse(time, CultureInfo.InvariantCulture, DateTimeStyles.AdjustToUniversal | DateTimeStyles.AssumeUniversal, out DateTime moment))
        {
            problems.Add(RunMessages.PointWithoutTime(problems.File, line, column));
            return null;
        }

        origin ??= moment.Date;
        return new((moment - origin.Value).TotalSeconds, speed, line)
        {
            Latitude = latitude,
            Longitude = longitude,
            Course = course,
            Conditions = new(Day: moment.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)),
        };
    }

    // The places in the file give a second speed: where the two differ by the factor of a unit, that unit was written.
    private static List<LoggedPoint> CheckUnit(List<LoggedPoint> points, RunReadingOptions options, LimitedProblems problems)
    {
        if (points.Count(point => double.IsFinite(point.MetresPerSecond)) < points.Count / 2)
        {
            return [.. points.Select(point => point with { MetresPerSecond = double.NaN })];
        }

        if (options.SpeedUnit is { } said)
        {
            return [.. points.Select(point => point with { MetresPerSecond = point.MetresPerSecond * said.MetresPerSecond })];
        }

        double[] fromPlaces = TrackSpeed.Speeds(points);
        double[] ratios = [.. points.Select((point, i) => point.MetresPerSecond / fromPlaces[i]).Where((ratio, i) => fromPlaces[i] > 8 && double.IsFinite(ratio)).Order()];
        if (ratios.Length < 5)
        {
            return points;
        }

        double ratio = ratios[ratios.Length / 2];
        foreach (SpeedUnit unit in new[] { SpeedUnit.MetresPerSecondUnit, SpeedUnit.KilometresPerHour, SpeedUnit.MilesPerHour, SpeedUnit.Knots })
        {
            double off = Math.Abs((ratio * unit.MetresPerSecond) - 1);
            if (off < 0.06 && unit == SpeedUnit.MetresPerSecondUnit)
            {
                return points;
            }

            if (off < 0.06)
            {
                problems.Add(RunMessages.ExtensionUnit(problems.File, unit.Name, ratio));
                return [.. points.Select(point => point with { MetresPerSecond = point.MetresPerSecond * unit.MetresPerSecond })];
            }
        }

        problems.Add(RunMessages.ExtensionUnitUnknown(problems.File, ratio));
        return [];
    }

    private static double Number(string? text) => text is null ? double.NaN : CsvTime.Number(text, decimalComma: false);

    private static string FirstSentence(string message)
    {
        int end = message.IndexOf(". ", StringComparison.Ordinal);
        return end < 0 ? message : message[..end];
    }
}
