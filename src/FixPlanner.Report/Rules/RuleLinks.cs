using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Report.Rules;

/// <summary>How one rule is named on the page of another: its title, as a link where there is a page to go to.</summary>
/// <param name="pack">The pack.</param>
/// <param name="ending">Ending of the pages' file names; empty when all stands in one document.</param>
internal sealed class RuleLinks(KnowledgePack pack, string ending)
{
    public string Cause(string id) => pack.Mechanism(id) is { } cause ? Link(cause.Title, ZonePageName(cause.Zones[0])) : id;

    public string Fix(string id) => pack.Fix(id) is { } fix ? Link(fix.Title, ZonePageName(fix.Zone)) : id;

    public string Gate(string id) => pack.Gate(id) is { } gate ? Link(gate.Title, "gates") : id;

    public string Zone(Zone zone) => Link(zone.Title, RulePages.Name(zone));

    public string Question(string id) => pack.Observation(id) is { } question ? Prose.Plain(question.Question) : id;

    public string Answer(string question, string id) =>
        Prose.Plain(pack.Observation(question)?.Answers.FirstOrDefault(answer => answer.Id == id)?.Text ?? id);

    /// <summary>Titles of kinds of run.</summary>
    public string Runs(IEnumerable<string> ids) =>
        string.Join("; ", ids.Select(id => Prose.Plain(pack.Scales.RunKinds.FirstOrDefault(run => run.Id == id)?.Title ?? id)));

    public string Link(string title, string page) => ending.Length > 0 ? $"[{Prose.Plain(title)}]({page}{ending})" : Prose.Plain(title);

    private static string ZonePageName(string zone) => "zone-" + zone;
}
