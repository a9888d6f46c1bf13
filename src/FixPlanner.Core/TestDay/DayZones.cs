using FixPlanner.Core.Knowledge;

namespace FixPlanner.Core.TestDay;

/// <summary>The zones of the day with their tufts, filmed rounds and cameras.</summary>
internal static class DayZones
{
    public static IReadOnlyList<DayZone> Of(IReadOnlyList<DayLook> looks, TestDayNotes notes)
    {
        HashSet<string> tufted = [.. DayChoice.Tufted(looks.Where(l => l.When == LookWhen.Film)).Select(z => z.Id)];
        List<DayZone> zones = [];
        int tufts = 0;
        int round = 1;
        foreach (Zone zone in looks.Select(l => l.Zone).OfType<Zone>().DistinctBy(z => z.Id).OrderBy(z => z.Order))
        {
            DayLook[] here = [.. looks.Where(l => l.Zone?.Id == zone.Id)];
            int count = tufted.Contains(zone.Id) ? zone.TuftPattern!.Count : 0;
            round = count > 0 ? DayChoice.Round(tufts) : round;
            bool films = here.Any(l => l.When == LookWhen.Film);
            zones.Add(new(
                zones.Count + 1, zone, [.. here.Select(l => l.Number)], here.Sum(l => l.GainPoints), count, count > 0 ? Kinds(zone, notes) : [], count > 0 ? zone.TuftPattern!.Minutes : 0,
                films ? round : 0, films ? [.. notes.Cameras.Where(c => c.Zones.Contains(zone.Id)).Take(2)] : []));
            tufts += count;
        }

        return zones;
    }

    /// <summary>Tufts by kind, shared evenly among the kinds of each zone.</summary>
    public static IEnumerable<(TuftKind Kind, int Count)> ByKind(IReadOnlyList<DayZone> zones) =>
        zones.SelectMany(z => z.Kinds.Select(k => (Kind: k, Count: (int)Math.Ceiling(z.Tufts / (double)z.Kinds.Count)))).GroupBy(x => x.Kind).Select(g => (g.Key, g.Sum(x => x.Count)));

    // The kinds that the zone's own words name; an edge tuft where they name none.
    private static TuftKind[] Kinds(Zone zone, TestDayNotes notes)
    {
        string words = $"{zone.TuftPattern!.What} {zone.TuftPlacing}";
        TuftKind[] named = [.. notes.Tufts.Where(t => words.Contains(t.Name, StringComparison.OrdinalIgnoreCase))];
        return named.Length > 0 ? named : [.. notes.Tufts.Take(1)];
    }
}
