using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Rules;

/// <summary>The knowledge of a pack as pages for people: a page for each zone with its causes and fixes, the gates, the sources, the words.</summary>
public static class RulePages
{
    /// <summary>Name of the page that leads to the others.</summary>
    public const string First = "README";

    /// <summary>The pages, to be written as files of one folder.</summary>
    /// <param name="pack">The pack.</param>
    /// <returns>Names without an ending, each with its page. Pictures name their files, see <see cref="Drawings"/>.</returns>
    public static IReadOnlyList<(string Name, Document Page)> Pages(KnowledgePack pack)
    {
        RuleLinks links = new(pack, ".md");
        return [(First, FirstPage.Of(pack, links)), .. Parts(pack, links)];
    }

    /// <summary>The drawings that the pages show.</summary>
    /// <param name="pack">The pack.</param>
    /// <returns>Names of files from the folder of the pages on, each with its SVG.</returns>
    public static IReadOnlyList<(string File, string Svg)> Drawings(KnowledgePack pack) =>
        [.. pack.Zones.Select(TuftDrawing.Of).OfType<Picture>().Select(picture => (picture.File, picture.Svg))];

    /// <summary>All of it as one document.</summary>
    /// <param name="pack">The pack.</param>
    /// <returns>The document; its pictures stand in it.</returns>
    public static Document Whole(KnowledgePack pack)
    {
        RuleLinks links = new(pack, "");
        IEnumerable<Block> parts = Parts(pack, links).SelectMany(part => part.Page.Blocks.Select(Lower).Prepend(new Heading(2, part.Page.Title)));
        return FirstPage.Of(pack, links) is var first ? first with { Blocks = [.. first.Blocks, .. parts] } : first;
    }

    internal static string Name(Zone zone) => "zone-" + zone.Id;

    private static IEnumerable<(string Name, Document Page)> Parts(KnowledgePack pack, RuleLinks links) =>
    [
        .. pack.Zones.Select(zone => (Name(zone), ZonePage.Of(pack, zone, links))),
        ("gates", GatesPage.Of(pack, links)),
        ("disappointments", ListPages.Disappointments(pack)),
        ("words", ListPages.Words(pack)),
        ("sources", SourcesPage.Of(pack)),
    ];

    private static Block Lower(Block block) => block is Heading heading ? heading with { Level = heading.Level + 1 } : block;

    /// <summary>How far a rule has been tried, and where it comes from.</summary>
    internal static string Standing(Maturity maturity, Basis basis) => $"Maturity: {Core.Interview.Words.Of(maturity)}. From: {Prose.Plain(basis.Text)}.";
}
