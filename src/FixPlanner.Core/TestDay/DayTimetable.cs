using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.TestDay;

/// <summary>The parts of the day by the clock.</summary>
internal static class DayTimetable
{
    private const double TrialMinutes = 30;

    public static IReadOnlyList<DayPart> Of(IReadOnlyList<DayLook> looks, IReadOnlyList<DayZone> zones, TestDayNotes notes, double minutes)
    {
        List<DayPart> parts = [];
        double start = 0;
        void Add(string phase, double length, string what)
        {
            if (length > 0)
            {
                parts.Add(new(start, length, phase, what));
                start += length;
            }
        }

        double Of(LookWhen when) => looks.Where(l => l.When == when).Sum(l => l.Minutes);
        string Numbers(LookWhen when) => looks.Any(l => l.When == when) ? $"looks {looks.First(l => l.When == when).Number} to {looks.Last(l => l.When == when).Number}" : "";
        bool drives = looks.Any(l => l.When is LookWhen.Drive or LookWhen.Film);
        Add("before you drive", DayChoice.Phase(notes, "before you drive"), "the screen questions, glass push and marks, tyres, latches; stop here if a stop or a fix-first gate is in force");
        Add("parked", Of(LookWhen.Parked), Numbers(LookWhen.Parked));
        Add("warm-up and drive", drives ? DayChoice.Phase(notes, "warm-up") + Of(LookWhen.Drive) : 0, Numbers(LookWhen.Drive));
        int rounds = zones.Select(z => z.FilmRound).DefaultIfEmpty(0).Max();
        for (int round = 1; round <= rounds; round++)
        {
            DayZone[] here = [.. zones.Where(z => z.FilmRound == round)];
            Add($"tufts, round {round}", here.Sum(z => z.TuftMinutes), $"zones {string.Join(", ", here.Where(z => z.Tufts > 0).Select(z => z.Number))}: {here.Sum(z => z.Tufts)} tufts");
            Add($"film, round {round}", DayChoice.Phase(notes, "film round"), "both directions, each speed; speak run, speed and wind into the film");
        }

        Add("read the film", Of(LookWhen.Film), Numbers(LookWhen.Film));
        Add("after the drive", Of(LookWhen.AfterWetDrive), Numbers(LookWhen.AfterWetDrive));
        Add("type in, look at the plan", drives ? DayChoice.Phase(notes, "read") : 0, "answers into the logbook, choose at most two trials");
        double clean = DayChoice.Phase(notes, "clean");
        if (drives && start + TrialMinutes + clean <= minutes)
        {
            Add("trials in card and tape", TrialMinutes, "two fixings, pull test, same film and same listening again");
        }

        Add("clean, re-check, log", clean, "all tape off, count tufts, nuts, glass marks, alarm log");
        return parts;
    }
}
