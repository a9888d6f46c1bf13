using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Proofs;
using FixPlanner.Core.Measurement.Tufts;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Core.Interview;

/// <summary>The part of the interview that proves: which fix, measured how, the values one by one, tufts row by row.</summary>
internal sealed class ProofTalk(KnowledgePack pack, DateOnly today)
{
    private const string Tufts = "tufts";
    private const string Gauge = "gauge";
    private const string UsualOrder = "ABBABAAB";

    /// <summary>The first question of the part.</summary>
    public static QuestionKey First { get; } = new(QuestionKind.ProofOf, "");

    public static bool IsMine(QuestionKind kind) => kind is QuestionKind.ProofOf or QuestionKind.ProofHow or QuestionKind.ProofValue or QuestionKind.ProofRuns or QuestionKind.TuftZone or QuestionKind.TuftStart or QuestionKind.TuftRow;

    /// <summary>False when what the question is about was taken back meanwhile.</summary>
    public static bool Exists(QuestionKey key, Logbook logbook) =>
        key.Kind is not (QuestionKind.ProofValue or QuestionKind.TuftRow) || logbook.Readings.Any(r => r.Id == key.Id);

    /// <summary>The question.</summary>
    public Question Build(QuestionKey key, Situation s) => key.Kind switch
    {
        QuestionKind.ProofOf => Which(key, s),
        QuestionKind.ProofHow => How(key),
        QuestionKind.ProofRuns => Runs(key),
        QuestionKind.ProofValue => Value(key, Reading(s.Logbook, key.Id), s),
        QuestionKind.TuftZone => Zone(key),
        QuestionKind.TuftStart => Start(key),
        _ => Row(key, Reading(s.Logbook, key.Id), s.Logbook),
    };

    /// <summary>Takes an answer: what the logbook keeps, and which question follows; null is the overview.</summary>
    public (IReadOnlyList<LogbookEdit> Edits, Refusal? Refusal, QuestionKey? Next) Take(QuestionKey key, Logbook logbook, Given given) => (key.Kind, given) switch
    {
        (_, GivenNot) => ([], new("this is measured, or passed by", "type a value, or nothing to go on"), key),
        (QuestionKind.ProofOf, GivenChoice { Id: Tufts }) => ([], null, new(QuestionKind.TuftZone, "")),
        (QuestionKind.ProofOf, GivenChoice { Id: Gauge }) => ([], null, new(QuestionKind.ProofHow, "")),
        (QuestionKind.ProofOf, GivenChoice choice) => Chosen(logbook, choice.Id),
        (QuestionKind.ProofHow, GivenChoice choice) => Begin(logbook, key.Id, choice.Id),
        (QuestionKind.ProofRuns, GivenReading read) => (Proving.Keep(pack, logbook, read.Reading, today), null, First),
        (QuestionKind.ProofValue, GivenText text) => AddValue(logbook, Reading(logbook, key.Id), text.Text),
        (QuestionKind.ProofValue, GivenNothing) => (Proving.WorkEdits(pack, logbook, Reading(logbook, key.Id).Fix, today), null, First),
        (QuestionKind.TuftZone, GivenChoice choice) => ([], null, new(QuestionKind.TuftStart, choice.Id)),
        (QuestionKind.TuftStart, GivenText text) => StartGrid(logbook, key.Id, text.Text, null),
        (QuestionKind.TuftStart, GivenCounts counts) => StartGrid(logbook, key.Id, counts.Text, counts),
        (QuestionKind.TuftRow, GivenText text) => SetRow(Reading(logbook, key.Id), text.Text),
        (QuestionKind.TuftRow, GivenNothing) => (TuftFindings.Edits(pack, logbook, Reading(logbook, key.Id), today), null, First),
        (_, GivenNothing) => ([], null, null),
        _ => ([], new("that is not one of the answers", "choose one of the answers"), key),
    };

    private static Reading Reading(Logbook logbook, string id) => logbook.Readings.First(r => r.Id == id);

    private Question Which(QuestionKey key, Situation s) => new(
        key, Heading, "Which change was measured?", "A change that is measured moves what is believed of it and of its cause, and the plan is ranked anew.",
        "One change at a time, without and with it in turn. A fix that is not listed is not in work: record work on it first, in the plan.",
        [.. Proving.Fixes(s.Logbook).Select(f => new Choice(f, pack.Fix(f)?.Title ?? f)), new(Tufts, "none: tufts were read"), new(Gauge, "none: pressures were read")]);

    private static string Heading => Words.Of(Section.Proof);

    private Question How(QuestionKey key)
    {
        Choice[] gauges = [.. Ways(ProofKind.PressureCoefficient)];
        IEnumerable<Choice> others = ProofKind.All.Where(k => k != ProofKind.PressureCoefficient).SelectMany(Ways);
        return new(
            key, Heading, key.Id.Length == 0 ? "Where were pressures read?" : $"How was it measured: {pack.Fix(key.Id)?.Title}?", "Each way sees other changes, and misses others.",
            string.Join(" ", ProofKind.All.Select(k => $"{k.Title}: does not see {Lower(k.DoesNotSee)}")),
            key.Id.Length == 0 ? gauges : [new(ReadingKinds.Runs, "coast-down runs, from a file"), .. gauges, .. others]);
    }

    private static IEnumerable<Choice> Ways(ProofKind kind) =>
        kind.Places.Count == 0 ? [new(kind.Id, kind.Title)] : kind.Places.Select(place => new Choice($"{kind.Id}:{place}", $"{kind.Title}: {place}"));

    private Question Runs(QuestionKey key) => new(
        key, Heading, $"Which run files hold the runs without and with it: {pack.Fix(key.Id)?.Title}?", "They are read, compared, and the result is kept; the files stay where they are.",
        "CSV, GPX or NMEA; several names with a blank between them. Names are seen from the folder of the logbook.", [])
    {
        Example = "runs/roof-lip.csv",
        Cautions = [ProofKind.Sound.Caution],
    };

    private static Question Value(QuestionKey key, Reading reading, Situation s)
    {
        ProofKind kind = ProofKind.Find(reading.Kind)!;
        int next = reading.Values.Count;
        string side = UsualOrder[next % UsualOrder.Length] == 'A' ? "before" : "after";
        string verdict = ProofResult.Of(reading) is { } result ? $" So far: {result.Verdict.Key()}. {result.Sentence} {result.MoreNeeded} {string.Join(" ", result.Warnings)}".TrimEnd() : "";
        string so = verdict + string.Concat(GaugeWords.Of(reading, s).Select(line => " " + line));
        string place = reading.Place is { } where ? $", {where}" : "";
        return new(key, Heading, $"{kind.Title}{place}, value {next + 1}: without ('before') or with the change ('after')?{so}", $"Changes from {VerdictWords.Number(kind.Worthwhile)} {kind.Unit} up are sought, of which {VerdictWords.Number(kind.InstrumentError)} may be the instrument; {kind.Basis}.", $"{kind.How} It does not see: {Lower(kind.DoesNotSee)}", [])
        {
            Example = $"{side} {kind.Input.Example}",
            Cautions = reading.Values.Count == 0 ? [kind.Caution] : [kind.Caution, $"Read so far: {string.Join("; ", reading.Values)}"],
        };
    }

    private Question Zone(QuestionKey key) => new(
        key, Heading, "In which zone were the tufts read?", "A grid of tufts shows where the flow leaves the skin, and whether it lands again.",
        "From the film, or by a passenger; never by the driver. Frame counts come from a CSV with the columns tuft (row.column), steady, waving, lifted, reversed, seconds: its name stands last, after a comma.", [.. pack.Zones.Where(z => z.TuftPattern is not null).OrderBy(z => z.Order).Select(z => new Choice(z.Id, z.Title))]);

    private Question Start(QuestionKey key)
    {
        Zone zone = pack.Zone(key.Id)!;
        return new(key, Heading, $"{zone.Title}: how many rows and columns of tufts, at which speed, on which film?", "Rows are counted as the air passes them, columns from left to right.", zone.TuftPlacing, [])
        {
            Example = "3 x 8 at 80 km/h, roof.mp4 at 1:10",
            Zone = zone,
            Cautions = ["Tufts short and taped well, clear of wipers, intakes and exhaust; count them on and off again.", ProofKind.Sound.Caution],
        };
    }

    private Question Row(QuestionKey key, Reading reading, Logbook logbook)
    {
        int row = NextRow(reading);
        TuftGrid grid = TuftWords.GridOf(reading)!;
        string against = string.Concat(TuftWords.Beside(logbook, reading).Select(line => " " + line));
        return new(key, Heading, $"{pack.Zone(reading.Place ?? "")?.Title}, {reading.Speed}: row {row + 1} of {reading.Grid.Count}, {reading.Grid[0].Length} tufts from left to right? {string.Join(" ", TuftWords.Of(grid))}{against}", "Where the flow leaves and lands decides what is worth trying there.", $"One letter a tuft: {Letters}. A number in front changes that row. Frames counted from a film: row.column: steady waving lifted reversed, as in 2.5: 10 30 0 60.", [])
        {
            Example = $"{row + 1} {new string('s', reading.Grid[0].Length)}",
            Zone = pack.Zone(reading.Place ?? ""),
            Cautions = [$"Read so far: {string.Join(" / ", reading.Grid)}"],
        };
    }

    private const string Letters = "s steady, w waving, l lifted, r reversed, a point for not readable";

    private static (IReadOnlyList<LogbookEdit>, Refusal?, QuestionKey?) Chosen(Logbook logbook, string fix) =>
        Proving.Fixes(logbook).Contains(fix) ? ([], null, new(QuestionKind.ProofHow, fix)) : ([], new("that is not one of the answers", "choose one of the answers"), First);

    private (IReadOnlyList<LogbookEdit>, Refusal?, QuestionKey?) Begin(Logbook logbook, string fix, string kind)
    {
        if (kind == ReadingKinds.Runs)
        {
            return ([], null, new(QuestionKind.ProofRuns, fix));
        }

        if (ProofKind.Find(kind.Split(':')[0]) is not { } proof)
        {
            return ([], new("that is not one of the answers", "choose one of the answers"), new(QuestionKind.ProofHow, fix));
        }

        string id = Proving.NextId(logbook, proof.Id);
        string? place = kind.Contains(':') ? kind[(kind.IndexOf(':') + 1)..] : null;
        AddReading add = new(new(proof.Id, today, [], fix.Length > 0 ? fix : null, null) { Id = id, Place = place }) { InWords = $"{proof.Title}: {pack.Fix(fix)?.Title}" };
        return ([add], null, new(QuestionKind.ProofValue, id));
    }

    private static (IReadOnlyList<LogbookEdit>, Refusal?, QuestionKey?) AddValue(Logbook logbook, Reading reading, string text)
    {
        QuestionKey here = new(QuestionKind.ProofValue, reading.Id);
        ProofKind kind = ProofKind.Find(reading.Kind)!;
        string written = text.Trim();
        if (!kind.Input.Read(written).TryGet(out ProofValue value, out TextTrouble? trouble))
        {
            return ([], new(trouble.What, trouble.Mend), here);
        }

        return value.After is null && kind != ProofKind.PressureCoefficient
            ? ([], new("it is not said whether that is without or with the change", $"write before or after in front: after {written}"), here)
            : kind.SpeedNeeded && value.Speed is null
            ? ([], new("it is not said at which speed", $"write it last: {written} at 110 km/h"), here)
            : ([new AddReadingValue(reading.Id, written) { InWords = $"{kind.Title}: {written}" }], null, here);
    }

    // '3 x 8 at 80 km/h, roof.mp4 at 1:10': size, speed, and the film if there is one.
    private (IReadOnlyList<LogbookEdit>, Refusal?, QuestionKey?) StartGrid(Logbook logbook, string zone, string text, GivenCounts? counts)
    {
        QuestionKey here = new(QuestionKind.TuftStart, zone);
        string[] film = text.Split(',', 2, StringSplitOptions.TrimEntries);
        string[] parts = film[0].Split(" at ", 2, StringSplitOptions.TrimEntries);
        string[] size = parts[0].Split('x', StringSplitOptions.TrimEntries);
        if (size.Length != 2 || !int.TryParse(size[0], out int rows) || !int.TryParse(size[1], out int columns) || rows is < 1 or > 40 || columns is < 1 or > 40)
        {
            return ([], new($"'{parts[0]}' is no size of a grid", "write rows x columns, 1 to 40 each: 3 x 8 at 80 km/h"), here);
        }

        if (parts.Length < 2)
        {
            return ([], new("the speed is missing", "write it behind the size: 3 x 8 at 80 km/h"), here);
        }

        if (!QuantityText.Read(parts[1], UnitKind.Speed).TryGet(out _, out TextTrouble? trouble))
        {
            return ([], new(trouble.What, trouble.Mend), here);
        }

        string id = Proving.NextId(logbook, ReadingKinds.TuftGrid);
        Reading reading = new(ReadingKinds.TuftGrid, today, counts is null ? [] : [counts.File], null, null)
        {
            Id = id,
            Place = zone,
            Speed = parts[1],
            Photo = film.Length > 1 && film[1].Length > 0 ? film[1] : null,
            Fitted = [.. logbook.OnTheCar],
            Grid = FrameGrid.Of(rows, columns, counts?.Counts ?? []),
        };
        return ([new AddReading(reading) { InWords = $"tufts: {pack.Zone(zone)?.Title}, {parts[1]}" }], null, new(QuestionKind.TuftRow, id));
    }

    private static (IReadOnlyList<LogbookEdit>, Refusal?, QuestionKey?) SetRow(Reading reading, string text)
    {
        QuestionKey here = new(QuestionKind.TuftRow, reading.Id);
        if (text.Contains(':'))
        {
            return Counted(reading, text);
        }

        string[] parts = text.Trim().Split(' ', 2, StringSplitOptions.TrimEntries);
        bool numbered = parts.Length == 2 && int.TryParse(parts[0], out _);
        int row = numbered ? int.Parse(parts[0]) - 1 : NextRow(reading);
        string letters = (numbered ? parts[1] : text.Trim()).ToLowerInvariant();
        if (row < 0 || row >= reading.Grid.Count)
        {
            return ([], new($"there is no row {row + 1}", $"rows are 1 to {reading.Grid.Count}"), here);
        }

        if (letters.Length != reading.Grid[0].Length || letters.Any(letter => TuftLooks.Of(letter) is null))
        {
            return ([], new($"'{letters}' is not a row of {reading.Grid[0].Length} tufts", $"write {reading.Grid[0].Length} letters: {Letters}"), here);
        }

        return ([new SetGridRow(reading.Id, row, letters) { InWords = $"tufts, row {row + 1}: {letters}" }], null, here);
    }

    // '2.5: 10 30 0 60': frames of the tuft in row 2, column 5 that were steady, waving, lifted, reversed.
    private static (IReadOnlyList<LogbookEdit>, Refusal?, QuestionKey?) Counted(Reading reading, string text)
    {
        QuestionKey here = new(QuestionKind.TuftRow, reading.Id);
        string[] parts = text.Split(':', 2, StringSplitOptions.TrimEntries);
        int[] frames = [.. parts[1].Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(word => int.TryParse(word, out int count) && count >= 0 ? count : -1)];
        if (frames.Length != 4 || frames.Contains(-1) || FrameGrid.PlaceOf(parts[0], reading.Grid.Count, reading.Grid[0].Length) is not { } place)
        {
            return ([], new($"'{text.Trim()}' is no frame count of this grid", "write row.column: frames steady, waving, lifted, reversed, as in 2.5: 10 30 0 60"), here);
        }

        FrameCount count = new(parts[0], frames[0], frames[1], frames[2], frames[3], Duration.FromSeconds(0));
        string letters = reading.Grid[place.Row].Remove(place.Column, 1).Insert(place.Column, count.Look.Letter().ToString());
        return ([new SetGridRow(reading.Id, place.Row, letters) { InWords = $"tufts, {parts[0]}: {count.Look.Letter()}" }], null, here);
    }

    private static int NextRow(Reading reading)
    {
        int open = reading.Grid.ToList().FindIndex(row => row.All(letter => letter == '.'));
        return open < 0 ? 0 : open;
    }

    private static string Lower(string text) => text.Length > 1 && char.IsLower(text[1]) ? char.ToLowerInvariant(text[0]) + text[1..] : text;
}
