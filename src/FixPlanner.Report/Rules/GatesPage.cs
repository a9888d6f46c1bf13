using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Plans;

namespace FixPlanner.Report.Rules;

/// <summary>The safety gates in their order.</summary>
internal static class GatesPage
{
    public static Document Of(KnowledgePack pack, RuleLinks links) => new("Safety gates",
    [
        new Paragraph("A gate in force holds what it names until somebody who may do so signs that it is put right. No wish, budget or belief moves a gate."),
        .. pack.Gates.SelectMany(gate => Gate(gate, pack, links)),
    ]);

    private static IEnumerable<Block> Gate(Gate gate, KnowledgePack pack, RuleLinks links)
    {
        yield return new Heading(2, Prose.Plain(gate.Title));
        yield return new Warning(PlanWords.Level(gate.Level).ToUpperInvariant(), Prose.Plain(gate.RequiredAction));
        yield return new Bullets([.. ZonePage.Named(
            ("What triggers it", gate.TriggerInWords),
            ("Why", gate.Why),
            ("Must be known", string.Join("; ", gate.MustKnow.Select(entry => string.Join(" or ", entry.Ways.Select(way => Way(way, pack, links)))))),
            ("Answers that trigger", string.Join("; ", gate.TriggeredByAnswers.Select(answer => $"{links.Question(answer.Observation)} {links.Answer(answer.Observation, answer.Answer)}"))),
            ("Facts that trigger", string.Join("; ", gate.TriggeredByFacts.Select(condition => ConditionWords.Of(condition, pack)))),
            ("Holds runs", string.Join("; ", [links.Runs(gate.BlocksRuns), .. gate.BlocksRunsIf.Select(one => $"{links.Runs([one.Run])} ({one.When})")]).Trim(';', ' ')),
            ("Holds fixes", gate.BlocksAllFixes ? "all" : string.Join("; ", gate.BlocksFixes.Select(links.Fix))),
            ("What helps", string.Join("; ", gate.HelpedByFixes.Select(links.Fix))),
            ("From", gate.Basis.Text))]);
        yield return new Table(
            ["Sign-off", "By", "On what", "Lapses", "Lifts"],
            [.. gate.SignOffs.Select(rule => (IReadOnlyList<string>)[rule.Kind, Prose.Plain(rule.By), Prose.Plain(rule.Evidence), Prose.Plain(rule.LapsesInWords), links.Runs(rule.Lifts)])]) { Stacked = true };
    }

    private static string Way(MustKnowWay way, KnowledgePack pack, RuleLinks links)
    {
        string what = way.Fact is { } fact ? Prose.Plain(pack.Fact(fact)?.Ask ?? fact) : links.Question(way.Observation!);
        return way.OnlyIs is { } only ? $"{what} (only: {(way.Observation is { } question ? links.Answer(question, only) : only)})" : what;
    }
}
