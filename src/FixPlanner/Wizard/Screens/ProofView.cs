using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Proofs;
using FixPlanner.Core.Measurement.Tufts;
using FixPlanner.Core.Pictures;
using FixPlanner.Core.Planning.Learning;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Plans;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard.Screens;

/// <summary>What was measured, what it taught, and the way to measure more.</summary>
internal static class ProofView
{
    public static ListModel Of(Assessment a) => new()
    {
        Id = "proof",
        Title = "Proof: did it work? What is measured moves belief and plan",
        Intro = ["Closed road or private ground, two people, abort word agreed; local law decides."],
        Columns = [new("What", 0), new("Says", 30)],
        Rows =
        [
            new(new QuestionKey(QuestionKind.ProofOf, "").ToString(), ["Measure: a fix in work, tufts or pressures", ""], Opens: true),
            .. a.Learned.Count > 0 ? [RowModel.Heading("What it taught: believed before, measured, believed now"), .. a.Learned.Select(Learned)] : Array.Empty<RowModel>(),
            .. a.Situation.Logbook.Readings.Count > 0 ? [RowModel.Heading("What was measured"), .. a.Situation.Logbook.Readings.Select((r, i) => Reading(r, i, a))] : Array.Empty<RowModel>(),
        ],
        WhenEmpty = "Nothing was measured yet.",
    };

    /// <summary>A grid to read, with its letters drawn on the car.</summary>
    public static GridModel Grid(Question question, Reading reading, PictureBook pictures, Situation s, Refusal? trouble) => new()
    {
        Id = question.Key.ToString(),
        Title = Lines.Of($"{question.Heading}: {question.Zone?.Title}, {reading.Speed}{(reading.Photo is { } photo ? $", {photo}" : "")}"),
        Text = [Lines.Of(question.Ask), Lines.Named("Why", question.Why), "s steady, w waving, l lifted, r reversed, . not readable. f: film. Enter: done."],
        Trouble = trouble is { } t ? (TextLine)$"{t.What}: {t.Mend}" : null,
        Rows = reading.Grid,
        Picture = question.Zone is { } zone && TuftWords.GridOf(reading) is { } grid ? pictures.Of(zone, s, drawing => TuftMarks.On(drawing, zone.Id, grid)) : null,
    };

    /// <summary>Values are typed one after another under one question: each is a screen of its own, so that its line is empty.</summary>
    public static QuestionModel Numbered(QuestionModel model, Question question, Logbook logbook) =>
        question.Key.Kind == QuestionKind.ProofValue ? model with { Id = $"{model.Id}#{logbook.Readings.First(r => r.Id == question.Key.Id).Values.Count}" } : model;

    private static RowModel Learned(LearnedEffect x) => new(
        $"learned:{x.Measured.Fix.Id}:{x.Key}",
        [$"{Prose.Plain(x.Measured.Fix.Title)}, {LearnedPart.Quantity(x)}", x.WorkState?.ToString().ToLowerInvariant() ?? x.Measured.Verdict.Key()],
        () => [.. LearnedPart.SideBySide(x).Select(side => Lines.Named(side.Name, side.Range)), .. LearnedPart.Sentences(x).Select(Lines.Of)]);

    private static RowModel Reading(Reading r, int number, Assessment a)
    {
        string fix = r.Fix is { } id ? Prose.Plain(a.Situation.Pack.Fix(id)?.Title ?? id) : "";
        string name = r.Kind == ReadingKinds.TuftGrid ? $"tufts: {Prose.Plain(a.Situation.Pack.Zone(r.Place ?? "")?.Title ?? "")}, {r.Speed}" : $"{ProofKind.Find(r.Kind)?.Title ?? "coast-down runs"}{(fix.Length > 0 ? $": {fix}" : "")}";
        QuestionKey? again = r.Id.Length == 0 ? null : r.Kind == ReadingKinds.TuftGrid ? new(QuestionKind.TuftRow, r.Id) : ProofKind.Find(r.Kind) is not null ? new(QuestionKind.ProofValue, r.Id) : null;
        return new(again?.ToString() ?? $"reading:{number}", [name, ReadingWords.Short(r, a.Situation)], () => [.. ReadingWords.Of(r, a.Situation).Select(Lines.Of), .. ReadingWords.Sources(r) is { Length: > 0 } from ? [Lines.Named("In", from)] : Array.Empty<TextLine>()], Opens: again is not null);
    }
}
