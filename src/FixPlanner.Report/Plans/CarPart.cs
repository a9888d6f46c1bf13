using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Pictures;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Drawings;

namespace FixPlanner.Report.Plans;

/// <summary>The car drawn, with the places where something was found, is believed or will be done.</summary>
internal static class CarPart
{
    private const double Believed = 0.5;
    private const string FixPattern = "lines";
    private const string CausePattern = "dots";

    /// <summary>The drawing and the list of its numbers; nothing when no place is marked.</summary>
    public static IEnumerable<Block> Of(Assessment a)
    {
        Place[] places = [.. Places(a)];
        if (places.Length == 0)
        {
            yield break;
        }

        yield return new Heading(2, "The car");
        if (CarPictures.Find(a.Situation.Fact("body_style")?.Word) is { } picture)
        {
            ZoneMark[] marks = [.. places.Select((p, i) => new ZoneMark(i + 1, p.Zone.Id, p.Lines.Count > 0 ? FixPattern : p.Causes.Count > 0 ? CausePattern : "", p.Lines.Count > 0 && p.Causes.Count > 0 ? CausePattern : ""))];
            string words = $"A sketch of such a car, not a measure. Numbered places, in walking order: {string.Join("; ", places.Select((p, i) => $"{i + 1} {Prose.Plain(p.Zone.Title)}"))}.";
            string svg = CarDrawing.Of("car", "The car with the places of this plan", words, picture, marks, [(FixPattern, "something to do here"), (CausePattern, "a cause believed at 50 % or more")]);
            yield return new Picture(svg, words) { Characters = CarCharacters.Of(picture, marks) };
        }
        else
        {
            yield return new Paragraph("No drawing: the shape of the body is not known.");
        }

        yield return new Table(["Place", "Found", "Believed", "To do, by line of the plan"], [.. places.Select((p, i) => (IReadOnlyList<string>)[$"{i + 1} {Prose.Plain(p.Zone.Title)}", p.Seen == 0 ? "" : p.Seen == 1 ? "1 answer speaks for a cause" : $"{p.Seen} answers speak for a cause", string.Join("; ", p.Causes), string.Join("; ", p.Lines)])]) { Stacked = true };
    }

    private static IEnumerable<Place> Places(Assessment a)
    {
        KnowledgePack pack = a.Situation.Pack;
        Mechanism[] believed = [.. pack.Mechanisms.Where(m => a.Beliefs.Probability(m.Id) >= Believed).OrderByDescending(m => a.Beliefs.Probability(m.Id)).ThenBy(m => m.Id, StringComparer.Ordinal)];
        HashSet<string> speaking = [.. believed.SelectMany(m => a.Beliefs.Reasons(m.Id)).Where(r => r.LogOdds > 0).Select(r => r.Observation)];
        foreach (Zone zone in pack.Zones.OrderBy(z => z.Order))
        {
            Place place = new(
                zone,
                speaking.Count(o => pack.Observation(o)?.Zone == zone.Id),
                [.. believed.Where(m => m.Zones is [var home, ..] && home == zone.Id).Select(m => $"{Prose.Plain(m.Title)} ({Shown.Percent(a.Beliefs.Probability(m.Id))})")],
                [.. a.Plan.Items.Where(i => i.Fix.Zone == zone.Id).Select(i => $"{i.Rank} {Prose.Plain(i.Fix.Title)}")]);
            if (place.Causes.Count + place.Lines.Count > 0)
            {
                yield return place;
            }
        }
    }

    private sealed record Place(Zone Zone, int Seen, IReadOnlyList<string> Causes, IReadOnlyList<string> Lines);
}
