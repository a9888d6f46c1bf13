using FixPlanner.Core.Interview;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard.Screens;

/// <summary>Safety first: every gate with its state; each opens into why, what to do and who signs.</summary>
internal static class GatesView
{
    public static ListModel Of(Assessment a) => new()
    {
        Id = "gates",
        Title = "Safety: no wish, budget or belief moves a gate. Enter opens one",
        Intro = ["Advice, no certificate: local law and the licensed inspector decide."],
        Columns = [new("Gate", 0), new("Level", 10), new("State", 14)],
        Rows = [.. a.Plan.Gates.Select(g => new RowModel($"{new Subject(SubjectKind.Gate, g.Gate.Id)}", [Prose.Plain(g.Gate.Title), GateWords.Level(g.Gate), ChangeSummary.Name(g.State)], () => Detail(a, g), g.State == GateState.InForce ? Emphasis.Bold : Emphasis.None))],
        WhenEmpty = "The pack has no gates.",
        RowKeys = Lines.Keys(SubjectKind.Gate),
    };

    /// <summary>The strip that is always visible.</summary>
    public static TextLine Strip(Assessment a)
    {
        GateStatus[] force = [.. a.Plan.Gates.Where(g => g.State == GateState.InForce)];
        int open = a.Plan.Gates.Count(g => g.State == GateState.NotChecked);
        return force.Length == 0
            ? $"Safety: nothing in force on what is known; {open} not checked."
            : TextLine.Of($"SAFETY: {force.Length} in force: {GateWords.Level(force[0].Gate)}: {Prose.Plain(force[0].Gate.Title)}{(force.Length > 1 ? " ..." : "")}; {open} not checked.", Emphasis.Bold);
    }

    private static List<TextLine> Detail(Assessment a, GateStatus g) =>
    [
        TextLine.Of($"{GateWords.Level(g.Gate)}: {Prose.Plain(g.Gate.Title)}: {ChangeSummary.Name(g.State)}", Emphasis.Bold),
        .. GateWords.Detail(a, g).Select(line => Lines.Named(line.Name, line.Text)),
    ];
}
