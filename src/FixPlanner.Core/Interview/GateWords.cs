using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.Interview;

/// <summary>A gate in words, as both faces show it.</summary>
public static class GateWords
{
    /// <summary>How hard it holds.</summary>
    /// <param name="gate">The gate.</param>
    /// <returns>STOP, FIX FIRST or CAUTION.</returns>
    public static string Level(Gate gate)
    {
        ArgumentNullException.ThrowIfNull(gate);
        return gate.Level switch
        {
            GateLevel.Stop => "STOP",
            GateLevel.FixFirst => "FIX FIRST",
            _ => "CAUTION",
        };
    }

    /// <summary>Why it stands as it stands, what to do, who signs, and what was signed or read.</summary>
    /// <param name="a">What follows from the logbook.</param>
    /// <param name="g">The gate.</param>
    /// <returns>Names and texts, in the order of reading.</returns>
    public static IReadOnlyList<(string Name, string Text)> Detail(Assessment a, GateStatus g)
    {
        ArgumentNullException.ThrowIfNull(a);
        ArgumentNullException.ThrowIfNull(g);
        KnowledgePack pack = a.Situation.Pack;
        return
        [
            .. g.Triggers.Select(t => ("Because", t.InWords)),
            .. g.Figures.Select(f => ("Computed for this car", f.Text)),
            .. g.Open.Select(m => ("Not known", m.IsFact ? pack.Fact(m.Ask)?.Title ?? m.Ask : pack.Observation(m.Ask)?.Question ?? m.Ask)),
            ("What triggers it", g.Gate.TriggerInWords),
            ("Why", g.Gate.Why),
            ("Do", g.Gate.RequiredAction),
            .. g.SignOffs.Select(s => ($"Sign-off '{s.Rule.Kind}', {Signed(s)}", $"{s.Rule.By}; {s.Rule.Evidence}; lapses: {s.Rule.LapsesInWords}")),
            .. a.Situation.Logbook.SignOffs.Where(s => pack.Gate(s.Gate) == g.Gate).Select(s => ("In the logbook", $"'{s.Kind}' by {s.By}{(s.Role.Length > 0 ? $", {s.Role}" : "")}, {s.Date:yyyy-MM-dd}: {s.Evidence}")),
            ("Read", g.ReadOn is { } day ? $"on {day:yyyy-MM-dd}; reading clears nothing" : "not yet; reading clears nothing, only a sign-off does"),
            ("From", g.Gate.Basis.Text),
        ];
    }

    private static string Signed(SignOffStatus s) => s.Counts ? $"signed on {s.Date:yyyy-MM-dd}" : s.WhyNot.Length > 0 ? $"signed, does not count: {s.WhyNot}" : "not signed";
}
