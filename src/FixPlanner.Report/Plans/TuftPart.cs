using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Tufts;
using FixPlanner.Core.Pictures;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Drawings;

namespace FixPlanner.Report.Plans;

/// <summary>Tuft grids as they were read, drawn on the car, with what they show.</summary>
internal static class TuftPart
{
    public static IEnumerable<Block> Of(Assessment a)
    {
        Reading[] read = [.. a.Situation.Logbook.Readings.Where(r => TuftWords.GridOf(r)?.SeparatedShare is not null)];
        if (read.Length == 0)
        {
            yield break;
        }

        yield return new Heading(2, "Tufts");
        yield return new Paragraph("The air comes from above. A line is a steady tuft, a wave a waving one, a ring a lifted one, an arrow one that points back, a dash one that could not be read. Dashed across: the flow leaves; dotted across: it lies down again.");
        foreach (Reading reading in read)
        {
            TuftGrid grid = TuftWords.GridOf(reading)!;
            string fitted = string.Join(", ", reading.Fitted.Select(f => PlanTitles.Fix(a.Situation.Pack, f)));
            yield return new Heading(3, $"{Prose.Plain(a.Situation.Pack.Zone(reading.Place ?? "")?.Title ?? "")}, {reading.Speed}{(fitted.Length > 0 ? $", with {fitted}" : "")}");
            yield return new Picture(TuftDrawing.Of(grid), string.Join(" ", ReadingWords.Of(reading, a.Situation))) { Characters = Characters(reading, grid, a.Situation) };
        }
    }

    private static IReadOnlyList<string> Characters(Reading reading, TuftGrid grid, Situation s) =>
        CarPictures.Find(s.Fact("body_style")?.Word) is { } car ? TuftMarks.On(car.Large, reading.Place ?? "", grid).Rows : grid.Letters();
}
