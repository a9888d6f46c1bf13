namespace FixPlanner.Files.Runs;

/// <summary>Speeds and courses from positions: a straight line through the distances of ten seconds, because one step of the rounding is as large as what is sought.</summary>
internal static class TrackSpeed
{
    private const double EarthRadius = 6371008.8;
    private const double HalfWindow = 5;

    // Positions with four decimals step by 11 m: no speed worth the name comes out of them.
    private const double CoarsestStepDegrees = 5e-5;
    private const double CourseBase = 20;

    /// <summary>Great-circle distance in m.</summary>
    public static double Distance(double latitude1, double longitude1, double latitude2, double longitude2)
    {
        double north = Radians(latitude2 - latitude1);
        double east = Radians(longitude2 - longitude1);
        double half = Square(Math.Sin(north / 2)) + (Math.Cos(Radians(latitude1)) * Math.Cos(Radians(latitude2)) * Square(Math.Sin(east / 2)));
        return 2 * EarthRadius * Math.Asin(Math.Min(1, Math.Sqrt(half)));
    }

    /// <summary>Course in degrees from north.</summary>
    public static double Course(double latitude1, double longitude1, double latitude2, double longitude2)
    {
        double east = Radians(longitude2 - longitude1);
        double y = Math.Sin(east) * Math.Cos(Radians(latitude2));
        double x = (Math.Cos(Radians(latitude1)) * Math.Sin(Radians(latitude2))) - (Math.Sin(Radians(latitude1)) * Math.Cos(Radians(latitude2)) * Math.Cos(east));
        return ((Math.Atan2(y, x) * 180 / Math.PI) + 360) % 360;
    }

    public static bool IsTooCoarse(IReadOnlyList<LoggedPoint> points)
    {
        double[] values = [.. points.Select(point => point.Latitude).Concat(points.Select(point => point.Longitude)).Where(double.IsFinite).Take(2000)];
        return values.Length == 0 || values.All(value => Math.Abs(value - (Math.Round(value / CoarsestStepDegrees / 2) * CoarsestStepDegrees * 2)) < 1e-9);
    }

    public static double[] Speeds(IReadOnlyList<LoggedPoint> points)
    {
        double[] along = new double[points.Count];
        for (int i = 1; i < along.Length; i++)
        {
            double step = Distance(points[i - 1].Latitude, points[i - 1].Longitude, points[i].Latitude, points[i].Longitude);
            along[i] = along[i - 1] + (double.IsFinite(step) ? step : 0);
        }

        double[] speeds = new double[points.Count];
        int low = 0;
        int high = 0;
        for (int i = 0; i < speeds.Length; i++)
        {
            double time = points[i].Seconds;
            while (low < i && points[low].Seconds < time - HalfWindow)
            {
                low++;
            }

            while (high + 1 < speeds.Length && points[high + 1].Seconds <= time + HalfWindow && points[high + 1].Seconds > points[high].Seconds)
            {
                high++;
            }

            high = Math.Max(high, i);
            speeds[i] = Slope(points, along, low, high);
        }

        return speeds;
    }

    /// <summary>Courses along a stretch, each over at least twenty metres.</summary>
    public static IEnumerable<double> Courses(IReadOnlyList<LoggedPoint> points)
    {
        int from = 0;
        for (int i = 1; i < points.Count; i++)
        {
            if (Distance(points[from].Latitude, points[from].Longitude, points[i].Latitude, points[i].Longitude) >= CourseBase)
            {
                yield return Course(points[from].Latitude, points[from].Longitude, points[i].Latitude, points[i].Longitude);
                from = i;
            }
        }
    }

    private static double Slope(IReadOnlyList<LoggedPoint> points, double[] along, int low, int high)
    {
        if (high <= low)
        {
            return double.NaN;
        }

        double time = 0;
        double place = 0;
        for (int i = low; i <= high; i++)
        {
            time += points[i].Seconds;
            place += along[i];
        }

        time /= high - low + 1;
        place /= high - low + 1;
        double products = 0;
        double squares = 0;
        for (int i = low; i <= high; i++)
        {
            products += (points[i].Seconds - time) * (along[i] - place);
            squares += Square(points[i].Seconds - time);
        }

        return squares > 0 ? products / squares : double.NaN;
    }

    private static double Radians(double degrees) => degrees * Math.PI / 180;

    private static double Square(double value) => value * value;
}
