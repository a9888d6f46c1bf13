using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.TestDay;
using FixPlanner.Report.TestDays;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard.Screens;

/// <summary>The sheet of the test day as a list: the sheet itself, then what is typed in from it, in the order of the paper.</summary>
internal static class TestDayView
{
    public static ListModel Of(TestDaySheet day, Func<QuestionKey, string?> answer, KeyRow write, string sheet) => new()
    {
        Id = "test-day",
        Title = $"Test day: {day.People} people, {day.Minutes / 60:0.#} of {day.Hours:0.#} h, {day.Looks.Count} looks",
        Intro = [TextLine.Of(new Shell.Words($"{(day.Method.Kind == FlowMethodKind.Tufts ? "Tufts" : "Paint or tufts")}: ", Emphasis.Bold), new Shell.Words(day.Method.Because + "."))],
        Keys = [write],
        Columns = [new("Look", 0), new("Answer", 26)],
        Rows =
        [
            new(sheet, ["The whole sheet: cautions, times, where, tufts, cameras, what to bring, the proof", ""], () => Lines.Of(TestDayDocument.Of(day))),
            .. day.Looks.GroupBy(l => l.When).SelectMany(g => (RowModel[])[RowModel.Heading(Moment(g.Key)), .. g.Select(l => Row(l, answer(KeyOf(l))))]),
        ],
        WhenEmpty = "Nothing more is worth looking at.",
        Totals = [day.Held.Count > 0 ? $"Held back: {string.Join(", ", day.Held.Select(h => h.Run))} ({Prose.Plain(day.Held[0].Gates[0].Gate.Title)})" : "On paper it has two pages; type it in from the top."],
    };

    public static QuestionKey KeyOf(DayLook look) => new(look.Key.IsFact ? QuestionKind.Fact : QuestionKind.Observation, look.Key.Id);

    private static RowModel Row(DayLook look, string? answer) =>
        new(KeyOf(look).ToString(), [$"{look.Number} {Prose.Plain(look.Ask)}", Prose.Plain(answer ?? (look.PutOff is { } day ? $"put off on {day:yyyy-MM-dd}" : ""))], Opens: true);

    private static string Moment(LookWhen when) => Core.Interview.Words.Of(when) is var words ? char.ToUpperInvariant(words[0]) + words[1..] : "";
}
