using FixPlanner.Core.Measurement.Coasting;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Files.Runs;

/// <summary>Makes runs of points: by the run numbers of the file, or by looking for the rolls in one long log.</summary>
internal static class RunAssembler
{
    private const double Jump = 30;

    public static List<CoastDownRun> Assemble(List<LoggedPoint> points, bool hasRuns, LimitedProblems problems)
    {
        points = WithSpeeds(points, problems);
        if (points.Count == 0)
        {
            return [];
        }

        FileName name = FileName.Of(problems.File);
        List<List<LoggedPoint>> stretches = hasRuns ? ByNumber(points, problems) : ByFinding(points, problems);
        double?[] courses = [.. stretches.Select(stretch => CourseOf(stretch)?.Mean)];
        IReadOnlyList<string> ways = TrackCourse.Ways(courses);
        List<CoastDownRun> runs = [];
        for (int i = 0; i < stretches.Count; i++)
        {
            List<LoggedPoint> stretch = stretches[i];
            LoggedPoint first = stretch[0];
            string direction = first.Direction.Length > 0 ? first.Direction : ways[i].Length > 0 ? ways[i] : name.Direction;
            runs.Add(new(
                first.Run.Length > 0 ? first.Run : $"{i + 1}",
                direction,
                first.Configuration.Length > 0 ? first.Configuration : name.Configuration,
                [.. stretch.Select(point => new RunSample(Duration.FromSeconds(point.Seconds), RoadSpeed.FromMetresPerSecond(point.MetresPerSecond)))],
                Noted(stretch),
                problems.File,
                CourseOf(stretch)?.Turn));
        }

        if (runs.Count == 0)
        {
            problems.Add(RunMessages.NoRuns(problems.File));
        }

        return runs;
    }

    private static List<LoggedPoint> WithSpeeds(List<LoggedPoint> points, LimitedProblems problems)
    {
        if (points.Count == 0 || points.Any(point => double.IsFinite(point.MetresPerSecond)))
        {
            return [.. points.Where(point => double.IsFinite(point.MetresPerSecond))];
        }

        points = [.. points.Where(point => double.IsFinite(point.Latitude) && double.IsFinite(point.Longitude))];
        if (TrackSpeed.IsTooCoarse(points))
        {
            problems.Add(RunMessages.PositionsTooCoarse(problems.File));
            return [];
        }

        problems.Add(RunMessages.SpeedFromPositions(problems.File));
        points = Ordered(points, problems);
        double[] speeds = TrackSpeed.Speeds(points);
        return [.. points.Select((point, i) => point with { MetresPerSecond = speeds[i] }).Where(point => double.IsFinite(point.MetresPerSecond))];
    }

    private static List<List<LoggedPoint>> ByNumber(List<LoggedPoint> points, LimitedProblems problems) =>
        [.. points.GroupBy(point => (point.Run, point.Direction, point.Configuration)).Select(run => Ordered([.. run], problems)).Where(run => run.Count > 0)];

    private static List<List<LoggedPoint>> ByFinding(List<LoggedPoint> points, LimitedProblems problems)
    {
        List<List<LoggedPoint>> stretches = [];
        int from = 0;
        while (from < points.Count)
        {
            int to = from;
            while (to < points.Count && points[to].Direction == points[from].Direction && points[to].Configuration == points[from].Configuration)
            {
                to++;
            }

            List<LoggedPoint> part = Ordered(points[from..to], problems, jumps: false);
            RunSample[] samples = [.. part.Select(point => new RunSample(Duration.FromSeconds(point.Seconds), RoadSpeed.FromMetresPerSecond(point.MetresPerSecond)))];
            stretches.AddRange(RunFinder.Find(samples).Select(found => part[found.First..(found.Last + 1)]));
            from = to;
        }

        return stretches;
    }

    private static List<LoggedPoint> Ordered(List<LoggedPoint> points, LimitedProblems problems, bool jumps = true)
    {
        List<LoggedPoint> kept = new(points.Count);
        foreach (LoggedPoint point in points)
        {
            double step = kept.Count == 0 ? 1 : point.Seconds - kept[^1].Seconds;
            if (step == 0)
            {
                problems.Add(RunMessages.TimeRepeated(problems.File, point.Line, point.Seconds));
            }
            else if (step < 0)
            {
                problems.Add(RunMessages.TimeBackward(problems.File, point.Line, kept[^1].Seconds, point.Seconds));
            }
            else
            {
                if (jumps && step > Jump)
                {
                    problems.Add(RunMessages.ClockJump(problems.File, point.Line, step));
                }

                kept.Add(point);
            }
        }

        return kept;
    }

    private static (double Mean, double Turn)? CourseOf(List<LoggedPoint> stretch)
    {
        if (stretch.Any(point => double.IsFinite(point.Course)))
        {
            // Receivers invent a course when they hardly move.
            return TrackCourse.Of(stretch.Where(point => point.MetresPerSecond > 5).Select(point => point.Course));
        }

        return stretch.All(point => double.IsFinite(point.Latitude) && double.IsFinite(point.Longitude)) ? TrackCourse.Of(TrackSpeed.Courses(stretch)) : null;
    }

    private static RunConditions Noted(List<LoggedPoint> stretch)
    {
        double[] winds = [.. stretch.Where(point => point.Conditions.Wind is not null).Select(point => point.Conditions.Wind!.Value.MetresPerSecond)];
        return stretch[0].Conditions with { Wind = winds.Length == 0 ? null : AirSpeed.FromMetresPerSecond(winds.Average()) };
    }
}
