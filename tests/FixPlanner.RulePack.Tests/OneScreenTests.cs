using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;

namespace FixPlanner.RulePack.Tests;

/// <summary>
/// One screen long: what a person reads of one rule fits a terminal of 80 columns and 24 lines, less four lines of the window and two
/// columns at each side. The words wrap at 76 columns; 20 lines are the limit for a question with its answers, for a cause without its
/// reasons, for a fix without its effects and for a place.
/// </summary>
public class OneScreenTests
{
    private const int Columns = 76;
    private const int Lines = 20;
    private static readonly KnowledgePack Pack = ShippedPack.Pack;

    [Fact]
    public void Question_WithItsHelpAndAnswers_FitsOneScreen() => Fits(Pack.Observations, question => question.Id, question =>
    [
        Title(question.Zone),
        question.Question,
        "Why: " + question.Why,
        "How: " + question.How,
        question.Trap is { } trap ? "What misleads: " + trap : "",
        .. question.Answers.Select(answer => " 1 ( ) " + answer.Text),
        "not looked, not sure, not today",
        "not quite sure",
    ]);

    [Fact]
    public void Fact_WithItsHelpAndAnswers_FitsOneScreen() => Fits(Pack.Facts, fact => fact.Id, fact =>
    [
        "The car",
        fact.Ask,
        "Why: " + fact.Why,
        "How: " + fact.How,
        .. fact.Choices.Select(choice => " 1 ( ) " + choice),
        "not looked, not sure, not today",
        "not quite sure",
    ]);

    [Fact]
    public void Cause_WithoutItsReasons_FitsOneScreen() => Fits(Pack.Mechanisms, cause => cause.Id, cause =>
    [
        cause.Title + ": 100 %",
        cause.What,
        cause.Why,
        "Before anything was looked at: 100 %.",
        .. cause.MistakenFor.Select(rival => $"Mistaken for '{Pack.Mechanism(rival.Mechanism)!.Title}': {rival.TellApart}"),
        cause.NotAir.Length > 0 ? "Or not air at all: " + cause.NotAir : "",
        cause.BestNextLook is var (observation, why) ? $"The look that settles it: {Pack.Observation(observation)!.Question} ({why})" : "",
        "From: " + cause.Basis.Text,
    ]);

    [Fact]
    public void Fix_WithoutItsEffects_FitsOneScreen() => Fits(Pack.Fixes, fix => fix.Id, fix =>
    [
        fix.Title,
        fix.What,
        "CAUTION: " + fix.SafetyNote,
        "Must be so first: " + fix.Prerequisites,
        fix.Trial is { } trial ? "Try first: " + trial.Do : "No trial: " + fix.NoTrialWhy,
        "Cost: 100 (10 to 1000) EUR; own time 10 (1 to 20) h; work for: professional",
        "Materials: " + fix.Materials,
        "Tools: " + fix.Tools,
        "Side effects: " + fix.SideEffects,
        "Signed by: " + fix.SignOff,
        "Law: " + (fix.LegalNote.Length > 0 ? fix.LegalNote : Pack.Scales.DefaultLegalNote),
    ]);

    [Fact]
    public void Place_WithItsTuftsAndTraps_FitsOneScreen() => Fits(Pack.Zones, zone => zone.Id, zone =>
    [
        zone.Title,
        "Good flow: " + zone.GoodFlow,
        "Tufts when it is bad: " + zone.TuftsWhenBad,
        "Paint when it is bad: " + zone.PaintWhenBad,
        "Look at, parked: " + string.Join("; ", zone.LookAt),
        "Where tufts go: " + zone.TuftPlacing,
        .. zone.Traps.Select(trap => "- " + trap),
    ]);

    [Theory]
    [InlineData("", 0)]
    [InlineData("one line", 1)]
    [InlineData("seventy-six columns are filled by this line of text and not one more than it", 1)]
    [InlineData("seventy-six columns are filled by this line of text, and one more makes two!!", 2)]
    public void Rows_OfAText_AreCountedAsAnEditorWraps(string text, int rows) => Assert.Equal(rows, Rows(text));

    private static void Fits<T>(IEnumerable<T> rules, Func<T, string> id, Func<T, IEnumerable<string>> page)
    {
        var tooLong = rules.Select(rule => (Id: id(rule), Rows: page(rule).Sum(Rows))).Where(rule => rule.Rows > Lines);

        Assert.Equal([], tooLong.Select(rule => $"{rule.Id}: {rule.Rows} lines, {Lines} are one screen"));
    }

    private static string Title(string zone) => Pack.Zone(zone)!.Title;

    private static int Rows(string prose)
    {
        string[] words = Prose.Plain(prose).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        int rows = words.Length > 0 ? 1 : 0;
        int used = 0;
        foreach (string word in words)
        {
            bool first = used == 0;
            bool breaks = !first && used + 1 + word.Length > Columns;
            rows += breaks ? 1 : 0;
            used = first || breaks ? word.Length : used + 1 + word.Length;
        }

        return rows;
    }
}
