using System.Globalization;
using System.Text;
using FixPlanner.Core.Measurement.Coasting;

namespace FixPlanner.Tests.Measurement;

/// <summary>Writes simulated runs the way loggers do.</summary>
internal static class LogWriter
{
    private const double MetresPerDegree = 111_195;

    public static string Csv(IEnumerable<CoastDownRun> runs, char delimiter = ',', bool decimalComma = false)
    {
        StringBuilder text = new();
        text.Append(string.Join(delimiter, "run", "direction", "configuration", "time_s", "speed_kmh")).Append('\n');
        foreach (CoastDownRun run in runs)
        {
            foreach (RunSample sample in run.Samples)
            {
                string time = sample.Time.Seconds.ToString("0.0", CultureInfo.InvariantCulture);
                string speed = sample.Speed.KilometresPerHour.ToString("0.0###", CultureInfo.InvariantCulture);
                string line = string.Join(delimiter, run.Name, run.Direction, run.Configuration, decimalComma ? time.Replace('.', ',') : time, decimalComma ? speed.Replace('.', ',') : speed);
                text.Append(line).Append('\n');
            }
        }

        return text.ToString();
    }

    /// <summary>One long log at 1 Hz: up to speed, hold, roll, brake, stand, turn; with places along a road that points north-east.</summary>
    public static List<(double Time, double Speed, double Latitude, double Longitude, double Course)> Whole(IReadOnlyList<CoastDownRun> runs)
    {
        List<(double, double, double, double, double)> log = [];
        double clock = 0;
        double place = 0;
        foreach (CoastDownRun run in runs)
        {
            int way = run.Direction == "out" ? 1 : -1;
            double top = run.Samples[0].Speed.MetresPerSecond;
            for (double speed = 0; speed < top; speed += 1.2)
            {
                Add(speed, 1);
            }

            for (int i = 0; i < 6; i++)
            {
                Add(top + (0.05 * (i % 2)), 1);
            }

            for (int i = 1; i < run.Samples.Count; i++)
            {
                Add(run.Samples[i].Speed.MetresPerSecond, run.Samples[i].Time.Seconds - run.Samples[i - 1].Time.Seconds);
            }

            for (double speed = run.Samples[^1].Speed.MetresPerSecond - 2.5; speed > 0; speed -= 2.5)
            {
                Add(speed, 1);
            }

            for (int i = 0; i < 20; i++)
            {
                Add(0, 1);
            }

            void Add(double speed, double step)
            {
                clock += step;
                place += way * speed * step;
                double along = place / MetresPerDegree * Math.Sqrt(0.5);
                log.Add((clock, speed, 50 + along, 8 + (along / Math.Cos(50 * Math.PI / 180)), way > 0 ? 45 : 225));
            }
        }

        return log;
    }

    public static string Gpx(IReadOnlyList<CoastDownRun> runs, double speedFactor = 1, bool withSpeed = true)
    {
        StringBuilder text = new("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n<gpx version=\"1.1\" creator=\"test\" xmlns=\"http://www.topografix.com/GPX/1/1\" xmlns:x=\"urn:x\">\n<trk><trkseg>\n");
        DateTime start = new(2025, 5, 3, 5, 0, 0, DateTimeKind.Utc);
        foreach ((double time, double speed, double latitude, double longitude, _) in Whole(runs))
        {
            text.Append(CultureInfo.InvariantCulture, $"<trkpt lat=\"{latitude:0.0000000}\" lon=\"{longitude:0.0000000}\"><time>{start.AddSeconds(time):yyyy-MM-ddTHH:mm:ss.fffZ}</time>");
            if (withSpeed)
            {
                text.Append(CultureInfo.InvariantCulture, $"<extensions><x:track><x:speed>{speed * speedFactor:0.00}</x:speed></x:track></extensions>");
            }

            text.Append("</trkpt>\n");
        }

        return text.Append("</trkseg></trk></gpx>\n").ToString();
    }

    public static string Nmea(IReadOnlyList<CoastDownRun> runs)
    {
        StringBuilder text = new();
        DateTime start = new(2025, 5, 3, 23, 50, 0, DateTimeKind.Utc);
        foreach ((double time, double speed, double latitude, double longitude, double course) in Whole(runs))
        {
            DateTime now = start.AddSeconds(time);
            double knots = speed * 3600 / 1852;
            string body = string.Create(CultureInfo.InvariantCulture, $"GPRMC,{now:HHmmss.ff},A,{Degrees(latitude, 2)},N,{Degrees(longitude, 3)},E,{knots:0.000},{course:0.0},{now:ddMMyy},,");
            text.Append('$').Append(body).Append('*').Append(FixPlanner.Files.Runs.NmeaRunReader.Checksum(body)).Append("\r\n");
        }

        return text.ToString();
    }

    private static string Degrees(double value, int digits)
    {
        double whole = Math.Floor(value);
        return whole.ToString(new string('0', digits), CultureInfo.InvariantCulture) + ((value - whole) * 60).ToString("00.000000", CultureInfo.InvariantCulture);
    }
}
