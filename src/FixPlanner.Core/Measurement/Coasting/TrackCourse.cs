namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>Directions from courses over ground, so that nobody has to remember which way a run went.</summary>
public static class TrackCourse
{
    private const double SameWay = 60;

    /// <summary>Mean course of a run and how far it turns within it.</summary>
    /// <param name="degrees">Courses in degrees from north, clockwise; values that are no number are passed over.</param>
    /// <returns>Mean course, 0 to 360, and the largest turn away from it to both sides together; null without a course.</returns>
    public static (double Mean, double Turn)? Of(IEnumerable<double> degrees)
    {
        double[] courses = [.. degrees.Where(double.IsFinite)];
        if (courses.Length == 0)
        {
            return null;
        }

        double east = courses.Sum(course => Math.Sin(course * Math.PI / 180));
        double north = courses.Sum(course => Math.Cos(course * Math.PI / 180));
        double mean = ((Math.Atan2(east, north) * 180 / Math.PI) + 360) % 360;
        double[] away = [.. courses.Select(course => Between(course, mean)).Order()];

        // One wild course of a receiver is not a bend: the outer twentieth on each side is passed over.
        int trim = away.Length / 20;
        return (mean, away[^(1 + trim)] - away[trim]);
    }

    /// <summary>Words for the ways: 'out' for the first run's way, 'back' for the opposite one, empty for neither or not known.</summary>
    /// <param name="means">Mean course of each run, null when not known.</param>
    /// <returns>One word for each run.</returns>
    public static IReadOnlyList<string> Ways(IReadOnlyList<double?> means)
    {
        double? first = means.FirstOrDefault(mean => mean is not null);
        return [.. means.Select(mean => first is { } out1 && mean is { } here ? Way(Math.Abs(Between(here, out1))) : "")];
    }

    private static string Way(double away) => away <= SameWay ? "out" : away >= 180 - SameWay ? "back" : "across";

    private static double Between(double a, double b) => ((((a - b) % 360) + 540) % 360) - 180;
}
