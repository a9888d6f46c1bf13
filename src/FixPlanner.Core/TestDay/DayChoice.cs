using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.TestDay;

/// <summary>
/// Cuts the looks to the time: what a gate hangs on or what was put off first, then the most gain for the minute, counting what a look brings with it:
/// the tufts of its zone, the drive, the filmed round.
/// </summary>
internal sealed class DayChoice
{
    /// <summary>More would not fit on two sheets of paper.</summary>
    public const int MostLooks = 28;

    /// <summary>Tufts in one filmed round: fifty take a quarter of an hour, and more would flutter out of the picture's reach.</summary>
    public const int TuftsInARound = 60;

    private readonly TestDayNotes notes;
    private readonly List<DayLook> chosen = [];

    public DayChoice(IReadOnlyList<DayLook> looks, TestDayNotes notes, double minutes)
    {
        this.notes = notes;
        List<DayLook> open = [.. looks];
        foreach (DayLook look in looks.Where(l => l.ComesFirst))
        {
            TryAdd(look, minutes, open);
        }

        while (chosen.Count < MostLooks && open.Where(l => Fits(l, minutes)).OrderByDescending(l => l.GainPoints / Brings(l)).ThenBy(l => l.Key.Id, StringComparer.Ordinal).FirstOrDefault() is { } best)
        {
            TryAdd(best, minutes, open);
        }

        HashSet<DayLook> taken = [.. chosen];
        Chosen = [.. looks.Where(taken.Contains).Select((l, i) => l with { Number = i + 1 })];
        Left = [.. looks.Where(l => !taken.Contains(l))];
    }

    /// <summary>The looks of the day, numbered in the order of the sheet.</summary>
    public IReadOnlyList<DayLook> Chosen { get; }

    /// <summary>Those that do not fit.</summary>
    public IReadOnlyList<DayLook> Left { get; }

    /// <summary>Minutes of a phase of the pack's ordinary day, by a word of its name.</summary>
    public static double Phase(TestDayNotes notes, string word) => notes.Steps.FirstOrDefault(p => p.Phase.Contains(word, StringComparison.OrdinalIgnoreCase))?.Minutes ?? 0;

    /// <summary>The filmed round of a zone, after so many tufts of the zones before it.</summary>
    public static int Round(int tuftsBefore) => (tuftsBefore / TuftsInARound) + 1;

    /// <summary>Minutes of a whole day with these looks.</summary>
    public static double Minutes(IReadOnlyCollection<DayLook> looks, TestDayNotes notes)
    {
        double minutes = Phase(notes, "before you drive") + Phase(notes, "clean") + looks.Sum(l => l.Minutes);
        if (looks.Any(l => l.When == LookWhen.Drive || l.When == LookWhen.Film))
        {
            minutes += Phase(notes, "warm-up") + Phase(notes, "read");
        }

        DayLook[] film = [.. looks.Where(l => l.When == LookWhen.Film)];
        if (film.Length > 0)
        {
            Zone[] zones = [.. Tufted(film)];
            int rounds = zones.Length == 0 ? 1 : Round(zones[..^1].Sum(z => z.TuftPattern!.Count));
            minutes += zones.Sum(z => z.TuftPattern!.Minutes) + (rounds * Phase(notes, "film round"));
        }

        return minutes;
    }

    /// <summary>Zones that get tufts: those with something to be seen on film.</summary>
    public static IEnumerable<Zone> Tufted(IEnumerable<DayLook> film) => film.Select(l => l.Zone).OfType<Zone>().Where(z => z.TuftPattern is not null).DistinctBy(z => z.Id).OrderBy(z => z.Order);

    private bool Fits(DayLook look, double minutes) => Minutes([.. chosen, look], notes) <= minutes;

    private double Brings(DayLook look) => Math.Max(1, Minutes([.. chosen, look], notes) - Minutes(chosen, notes));

    private void TryAdd(DayLook look, double minutes, List<DayLook> open)
    {
        if (chosen.Count < MostLooks && Fits(look, minutes))
        {
            chosen.Add(look);
        }

        open.Remove(look);
    }
}
