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
        Rows = [.. a.Plan.Gates.Select(g => new RowModel(g.Gate.Id, [Prose.Plain(g.Gate.Title), Level(g), ChangeSummary.Name(g.State)], () => Detail(a, g), g.State == GateState.InForce ? Emphasis.Bold : Emphasis.None))],
        WhenEmpty = "The pack has no gates.",
    };

    /// <summary>The strip that is always visible.</summary>
    public static TextLine Strip(Assessment a)
    {
        GateStatus[] force = [.. a.Plan.Gates.Where(g => g.State == GateState.InForce)];
        int open = a.Plan.Gates.Count(g => g.State == GateState.NotChecked);
        return force.Length == 0
            ? $"Safety: nothing in force on what is known; {open} not checked."
            : TextLine.Of($"SAFETY: {force.Length} in force: {Level(force[0])}: {Prose.Plain(force[0].Gate.Title)}{(force.Length > 1 ? " ..." : "")}; {open} not checked.", Emphasis.Bold);
    }

    private static string Level(GateStatus g) => g.Gate.Level switch
    {
        Core.Knowledge.GateLevel.Stop => "STOP",
        Core.Knowledge.GateLevel.FixFirst => "FIX FIRST",
        _ => "CAUTION",
    };

    private static List<TextLine> Detail(Assessment a, GateStatus g)
    {
        List<TextLine> lines = [TextLine.Of($"{Level(g)}: {Prose.Plain(g.Gate.Title)}: {ChangeSummary.Name(g.State)}", Emphasis.Bold)];
        lines.AddRange(g.Triggers.Select(t => Lines.Named("Because", t.InWords)));
        lines.AddRange(g.Open.Select(m => Lines.Named("Not known", m.IsFact ? a.Situation.Pack.Fact(m.Ask)?.Title ?? m.Ask : a.Situation.Pack.Observation(m.Ask)?.Question ?? m.Ask)));
        lines.Add(Lines.Named("What triggers it", g.Gate.TriggerInWords));
        lines.Add(Lines.Named("Why", g.Gate.Why));
        lines.Add(Lines.Named("Do", g.Gate.RequiredAction));
        foreach (SignOffStatus s in g.SignOffs)
        {
            string state = s.Counts ? $"signed on {s.Date:yyyy-MM-dd}" : s.WhyNot.Length > 0 ? $"signed, does not count: {s.WhyNot}" : "not signed";
            lines.Add(Lines.Named($"Sign-off '{s.Rule.Kind}', {state}", $"{s.Rule.By}; {s.Rule.Evidence}; lapses: {s.Rule.LapsesInWords}"));
        }

        lines.Add("A sign-off is written into the logbook under sign_offs: {gate, kind, by, role, date, evidence}.");
        lines.Add(Lines.Named("From", g.Gate.Basis.Text));
        return lines;
    }
}
