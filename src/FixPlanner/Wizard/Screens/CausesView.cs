using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Plans;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard.Screens;

/// <summary>What the air is doing and how sure we are; each row opens into its reasons.</summary>
internal static class CausesView
{
    private const double WorthListing = 0.05;

    public static ListModel Of(Assessment a) => new()
    {
        Id = "causes",
        Title = "Causes: Enter opens the reasons",
        Columns = [new("Cause", 0), new("How sure", 9, ToTheRight: true)],
        Rows = [.. a.Situation.Pack.Mechanisms
            .Select(m => (Cause: m, P: a.Beliefs.Probability(m.Id)))
            .Where(x => x.P >= WorthListing)
            .OrderByDescending(x => x.P).ThenBy(x => x.Cause.Id, StringComparer.Ordinal)
            .Select(x => new RowModel(x.Cause.Id, [Prose.Plain(x.Cause.Title), $"{100 * x.P:0} %"], () => Detail(a, x.Cause, x.P))),
            .. a.Plan.Vents.Count > 0 ? [new RowModel("vents", ["Which way each vent blows, where it turns, and why", ""], () => Lines.Of(PlanDocument.VentsOf(a)))] : Array.Empty<RowModel>()],
        WhenEmpty = "Nothing is likely on what is known.",
    };

    private static List<TextLine> Detail(Assessment a, Mechanism m, double p)
    {
        KnowledgePack pack = a.Situation.Pack;
        List<TextLine> lines =
        [
            TextLine.Of($"{Prose.Plain(m.Title)}: {100 * p:0} %", Emphasis.Bold),
            Lines.Of(m.What),
            Lines.Of(m.Why),
            $"Before anything was looked at: {100 * a.Beliefs.PriorProbabilities[pack.Mechanisms.Index().First(x => x.Item == m).Index]:0} %.",
        ];
        IReadOnlyList<Reason> reasons = a.Beliefs.Reasons(m.Id);
        lines.AddRange(reasons.Where(r => Math.Abs(r.LogOdds) >= 0.005).Select(r => (TextLine)$"{(r.LogOdds > 0 ? "+ for    " : "- against")} {r.LogOdds:+0.00;-0.00}  {Prose.Plain(pack.Observation(r.Observation)!.Question)} {Prose.Plain(pack.Observation(r.Observation)!.Answers.First(x => x.Id == r.Answer).Text)}"));
        lines.AddRange(a.Beliefs.MeasuredReasons(m.Id).Select(r => (TextLine)$"{(r.LogOdds > 0 ? "+" : "-")} {LearnedPart.Reason(r.Effect, r.LogOdds)}"));
        if (reasons.Count == 0)
        {
            lines.Add("Nothing that was looked at speaks for or against it yet.");
        }

        lines.AddRange(m.MistakenFor.Select(rival => Lines.Named($"Mistaken for '{Prose.Plain(pack.Mechanism(rival.Mechanism)?.Title ?? rival.Mechanism)}'", rival.TellApart)));
        if (m.NotAir.Length > 0)
        {
            lines.Add(Lines.Named("Or not air at all", m.NotAir));
        }

        if (m.BestNextLook is { } look)
        {
            lines.Add(Lines.Named("The look that settles it", $"{pack.Observation(look.Observation)?.Question} ({look.Why})"));
        }

        lines.Add(Lines.Named("From", m.Basis.Text));
        return lines;
    }
}
