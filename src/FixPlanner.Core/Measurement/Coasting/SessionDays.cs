namespace FixPlanner.Core.Measurement.Coasting;

/// <summary>Tells the days of a session apart and puts the runs on one clock.</summary>
internal static class SessionDays
{
    /// <summary>
    /// Names the day of each run. Without a date, one file is one day; several files are one day each unless the person
    /// says that they were one: a wrongly shared day makes false alarms, a wrongly split one only costs precision.
    /// </summary>
    public static void Name(PreparedRun[] runs, bool sameDay, List<string> warnings)
    {
        foreach (PreparedRun run in runs)
        {
            run.Day = run.Run.Conditions.Day ?? (sameDay ? "" : run.Run.Source);
        }

        if (runs.All(run => run.Run.Conditions.Day is not null) || sameDay)
        {
            return;
        }

        bool several = runs.Select(run => run.Day).Distinct().Count() > 1;
        bool apart = runs.GroupBy(run => run.Day).All(day => day.Select(run => run.Run.Configuration).Distinct().Count() == 1);
        if (several && apart && runs.Select(run => run.Run.Configuration).Distinct().Count() > 1)
        {
            warnings.Add(SessionWarnings.DaysNotKnown);
        }
    }

    /// <summary>Seconds where the files share a running clock, otherwise the place in the order.</summary>
    public static void Clock(PreparedRun[] runs)
    {
        double newest = double.NegativeInfinity;
        bool running = runs.Select(run => run.Run.Source).Distinct().Count() <= 1;
        foreach (PreparedRun run in runs)
        {
            double start = run.Run.Samples.Count == 0 ? double.NaN : run.Run.Samples[0].Time.Seconds;
            running &= start > newest || double.IsNaN(start);
            newest = double.IsNaN(start) ? newest : start;
        }

        foreach (PreparedRun run in runs)
        {
            run.Clock = running && run.Run.Samples.Count > 0 ? run.Run.Samples[0].Time.Seconds : run.Order;
        }
    }
}
