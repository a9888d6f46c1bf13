using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Pictures;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.TestDay;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Drawings;

namespace FixPlanner.Report.TestDays;

/// <summary>The sheet of the day on two pages: the first says what is done, the second is filled in by hand in the order in which the screen takes it.</summary>
public static class TestDayDocument
{
    /// <summary>Writes the sheet.</summary>
    /// <param name="sheet">The day.</param>
    /// <returns>The document.</returns>
    public static Document Of(TestDaySheet sheet)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        return new(
            sheet.Car.Length > 0 ? $"Test day for {sheet.Car}" : "Test day",
            [
                .. Head(sheet), .. Plan(sheet), .. Zones(sheet), .. Proof(sheet),
                new PageBreak(), .. Form(sheet), .. Bring(sheet), .. Later(sheet),
            ])
        {
            IsForm = true,
            Footer = $"Sheet of {sheet.Date:yyyy-MM-dd}. Type it in from the top: the screen asks in this order. Advice, not a certificate.",
        };
    }

    private static IEnumerable<Block> Head(TestDaySheet d)
    {
        string[] blanks = ["date", "place", "driver", "second person", "wind m/s", "from", "air C", "road"];
        yield return new Table(blanks, [[.. blanks.Select(_ => "")]]);
        foreach ((string run, var gates) in d.Held)
        {
            yield return new Warning("HELD BACK", $"no {Run(run)} before this is settled: {string.Join("; ", gates.Select(g => Prose.Plain(g.Gate.Title)))}.");
        }

        yield return new Bullets(TestDayWords.Cautions);
    }

    private static string Run(string run) => run switch
    {
        "drive" => "drive",
        "film" => "filmed run",
        "tufts" => "tuft run",
        _ => "coast-down",
    };

    private static IEnumerable<Block> Plan(TestDaySheet d)
    {
        yield return new Heading(2, $"The day: {d.People} people, {TestDayWords.Clock(d.Minutes)} of {TestDayWords.Clock(d.Hours * 60)} h");
        List<string> lines =
        [
            $"**{TestDayWords.Kind(d.Method.Kind)}:** {d.Method.Because}.",
            $"Weather planned for: {TestDayWords.Weather(d.Weather)}. {string.Join(" ", d.Windows.Select(Window))}",
        ];
        if (d.Fastest is { } fastest)
        {
            lines.Add($"No faster than {fastest.Speed.KilometresPerHour:0} km/h ({fastest.Why}), and never above the law.");
        }

        if (d.Speeds.Count > 0)
        {
            lines.Add($"Film at {string.Join(", ", d.Speeds.Select(v => $"{v.KilometresPerHour:0}"))} km/h, both directions, {Math.Max(10, Math.Ceiling(d.FilmAtLeast.Seconds)):0} s steady at each; shutter 1/{Math.Round(1 / d.Shutter.Seconds / 100) * 100:0} s or shorter. On an upright panel a hanging cotton tuft means dead air only from {d.HangingMeansDeadAirFrom.KilometresPerHour:0} km/h on.");
        }

        yield return new Bullets(lines);
        yield return new Table(["At", "min", "Part", "What"], [.. d.Timetable.Select(p => (IReadOnlyList<string>)[TestDayWords.Clock(p.Start), $"{p.Minutes:0}", p.Phase, p.What])]);
    }

    private static string Window(DayWindow w) =>
        $"{char.ToUpperInvariant(w.Window.Test[0])}{w.Window.Test[1..]}: wind up to {w.Window.WindMaxMetresPerSecond:0.#} m/s, across {w.Window.CrossMaxMetresPerSecond:0.#} m/s, {(w.Window.Dry ? "dry" : "wet")}, {Prose.Plain(w.Window.Temperature)}{(w.Kept == false ? " - NOT in this weather" : "")}.";

    private static IEnumerable<Block> Zones(TestDaySheet d)
    {
        if (d.Zones.Count == 0)
        {
            yield break;
        }

        yield return new Heading(2, "Where");
        if (CarPictures.Find(d.BodyStyle) is { } picture)
        {
            ZoneMark[] marks = [.. d.Zones.Select(z => new ZoneMark(z.Number, z.Zone.Id, "") { Tufts = z.Tufts })];
            string words = "Numbers as below; strokes are tufts, on one side of the car.";
            yield return new Picture(CarDrawing.Of("day", "The car with the zones of the day and their tufts", words, picture, marks, []), words) { Characters = CarCharacters.Of(picture, marks) };
        }

        DayZone[] filmed = [.. d.Zones.Where(z => z.FilmRound > 0)];
        if (filmed.Length > 0)
        {
            yield return new Table(["Zone", "Looks", "Tufts", "Length, apart", "Where they go", "Camera"], [.. filmed.Select(Row)]) { Stacked = true };
        }

        if (filmed.Length < d.Zones.Count)
        {
            yield return new Paragraph($"Without film: {string.Join("; ", d.Zones.Where(z => z.FilmRound == 0).Select(z => $"{z.Number} {Prose.Plain(z.Zone.Title)} (looks {string.Join(", ", z.Looks)})"))}.");
        }
    }

    private static IReadOnlyList<string> Row(DayZone z) =>
    [
        $"{z.Number} {Prose.Plain(z.Zone.Title)}",
        string.Join(", ", z.Looks),
        z.Tufts > 0 ? $"{z.Tufts}, round {z.FilmRound}" : "none",
        string.Join("; ", z.Kinds.Select(k => $"{k.Name} {k.LengthMillimetres:0}, {k.SpacingMillimetres:0} mm")),
        z.Tufts > 0 ? Prose.Plain(z.Zone.TuftPlacing) : "",
        string.Join(" or ", z.Cameras.Select(c => Prose.Plain(c.Position))),
    ];

    private static IEnumerable<Block> Proof(TestDaySheet d)
    {
        if (d.Comparison is not { } c)
        {
            yield break;
        }

        yield return new Heading(2, $"To prove '{Prose.Plain(c.Fix.Title)}', on a day of its own");
        string how = c.By == ProofBy.CoastDown
            ? $"Coast-down from {c.Upper.KilometresPerHour:0} to {c.Lower!.Value.KilometresPerHour:0} km/h on closed ground, one pair = both ways; straight road of {c.RoadMetres:0} m. A without, B with it. Sought: {TestDayWords.Number(c.Sought)} {c.Unit}."
            : $"Same phone at the ear at {c.Upper.KilometresPerHour:0} km/h, same road and windows. A without, B with it. Sought: {TestDayWords.Number(c.Sought)} {c.Unit}.";
        yield return new Paragraph(how + $" Reckoned with: {c.Basis}.");
        yield return new Table(["Air", "How many"], [.. c.InAir.Select(p => (IReadOnlyList<string>)[TestDayWords.Air(p.Air), TestDayWords.Proof(c, p)])]);
    }

    private static IEnumerable<Block> Bring(TestDaySheet d)
    {
        yield return new Heading(2, "Bring, buy");
        yield return new Checklist([.. d.Items.Select(i => $"{Prose.Plain(i.Item)}: {Prose.Plain(i.Amount)}")]);
    }

    private static IEnumerable<Block> Form(TestDaySheet d)
    {
        yield return new Heading(2, "What was seen");
        if (d.Looks.Count == 0)
        {
            yield return new Paragraph("Nothing more is worth looking at: more answers will not change the plan.");
            yield break;
        }

        foreach (IGrouping<LookWhen, DayLook> moment in d.Looks.GroupBy(l => l.When))
        {
            yield return new Heading(3, Core.Interview.Words.Of(moment.Key) is var words ? char.ToUpperInvariant(words[0]) + words[1..] : "");
            foreach (DayLook look in moment)
            {
                yield return Ask(d, look);
            }
        }
    }

    private static FillIn Ask(TestDaySheet d, DayLook look)
    {
        string[] notes =
        [
            .. d.Zones.FirstOrDefault(z => z.Zone.Id == look.Zone?.Id) is { } zone ? [$"zone {zone.Number}"] : Array.Empty<string>(),
            .. look.Speed.Length > 0 ? [look.Speed] : Array.Empty<string>(),
            .. look.PrivateGround ? ["private or closed ground only"] : Array.Empty<string>(),
            .. look.State is { } state ? [Prose.Plain(state)] : Array.Empty<string>(),
            .. look.ForGate is { } gate ? [$"for the gate '{Prose.Plain(gate.Title)}'"] : Array.Empty<string>(),
            .. look.PutOff is { } day ? [$"put off on {day:yyyy-MM-dd}"] : Array.Empty<string>(),
        ];
        bool film = look.When == LookWhen.Film;
        return new(
            $"{look.Number}", $"{Prose.Plain(look.Ask)}{(notes.Length > 0 ? $" ({string.Join("; ", notes)})" : "")}",
            [.. look.Answers.Select(a => Prose.Plain(a.Text)), "not sure"],
            look.Unit.Length > 0 ? [look.Unit] : film ? ["film, time"] : []);
    }

    private static IEnumerable<Block> Later(TestDaySheet d)
    {
        if (d.Later.Count > 0)
        {
            yield return new Heading(2, "Left for another day");
            yield return new Paragraph(string.Join(". ", d.Later.GroupBy(l => l.Why).Select(g => $"{string.Join("; ", g.Select(l => Prose.Plain(l.What)))}: {Prose.Plain(g.Key)}")) + ".");
        }
    }
}
