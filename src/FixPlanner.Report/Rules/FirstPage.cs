using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Rules;

/// <summary>The page that leads to the others.</summary>
internal static class FirstPage
{
    public static Document Of(KnowledgePack pack, RuleLinks links) => new(Prose.Plain(pack.Title),
    [
        new Paragraph(Prose.Plain(pack.What)),
        new Warning("CAUTION", "Cars are moving machines, and parts come off. These pages are advice, no certificate: local law and the licensed inspector decide. Test on closed or private ground, two people, and look at the gates first."),
        new Paragraph($"Figures name a source by its id, or say common practice (widely done, no single source), from memory (not looked up: check before relying on it), computed or judgement. Sizes in the words of fixes and trials: {Prose.Plain(pack.Scales.Sizes?.Text ?? "")}. Each cause and each fix says how far it has been tried: {Words(pack, "maturity")}."),
        new Heading(2, "Places on the car, in walking order"),
        new Table(
            ["Place", "Questions", "Causes", "Fixes"],
            [.. pack.Zones.Select(zone => (IReadOnlyList<string>)[
                links.Zone(zone),
                $"{pack.Observations.Count(question => question.Zone == zone.Id)}",
                $"{pack.Mechanisms.Count(cause => cause.Zones[0] == zone.Id)}",
                $"{pack.Fixes.Count(fix => fix.Zone == zone.Id)}"])]),
        new Heading(2, "What holds for the whole car"),
        new Bullets([
            links.Link($"Safety gates ({pack.Gates.Count})", "gates"),
            links.Link($"What usually disappoints ({pack.Disappointments.Count})", "disappointments"),
            links.Link("Words and what they mean", "words"),
            links.Link($"Sources ({pack.Sources.Count})", "sources"),
        ]),
    ])
    {
        Footer = $"Made from the rules {pack.Id}, version {pack.Version}, by `fixplanner rules docs`: change the rules, not these pages.",
    };

    private static string Words(KnowledgePack pack, string list) =>
        string.Join("; ", pack.Terms.Where(one => one.Id == list).SelectMany(one => one.Words).Select(word => $"{word.Word} = {word.Meaning}"));
}
