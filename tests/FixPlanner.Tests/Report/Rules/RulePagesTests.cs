using System.Text.RegularExpressions;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Rules;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Report.Rules;

/// <summary>The pages of the rules: they are those of the shipped pack, and say of every figure where it comes from.</summary>
public partial class RulePagesTests
{
    private static readonly KnowledgePack Pack = ShippedPack.Pack;

    private static readonly IReadOnlyDictionary<string, string> Pages = RulePages.Pages(Pack).ToDictionary(page => page.Name + ".md", page => MarkdownWriting.Write(page.Page));

    [Fact]
    public void Pages_UnderDocs_AreThoseOfTheShippedRules()
    {
        string folder = Path.Combine(ShippedPack.Root(), "docs", "rules");
        Dictionary<string, string> wanted = Pages.Concat(RulePages.Drawings(Pack).Select(one => KeyValuePair.Create(one.File, one.Svg))).ToDictionary();

        string[] stale = [.. wanted.Where(one => !File.Exists(Path.Combine(folder, one.Key)) || File.ReadAllText(Path.Combine(folder, one.Key)) != one.Value).Select(one => one.Key)];
        string[] leftOver = [.. Directory.GetFiles(folder, "*", SearchOption.AllDirectories).Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/')).Except(wanted.Keys)];

        Assert.True(stale.Length + leftOver.Length == 0, $"write them anew: fixplanner rules docs --out docs/rules ({string.Join(", ", stale.Concat(leftOver).Take(5))})");
    }

    [Fact]
    public void Pages_OfEveryRule_SayWhereItsFiguresComeFromAndHowFarItWasTried()
    {
        foreach (Fix fix in Pack.Fixes)
        {
            string part = Part($"zone-{fix.Zone}.md", $"### {Prose.Plain(fix.Title)} ({fix.Maturity.ToString().ToLowerInvariant()})");
            Assert.All([fix.EffectsBasis, fix.CostBasis!, fix.HoursBasis!], basis => Assert.True(basis.IsStated && part.Contains(Prose.Plain(basis.Text), StringComparison.Ordinal), fix.Id));
            Assert.Contains($"Maturity: {fix.Maturity.ToString().ToLowerInvariant()}.", part, StringComparison.Ordinal);
            Assert.True(fix.SafetyNote.Length == 0 || part.Contains("**CAUTION:** " + Prose.Plain(fix.SafetyNote), StringComparison.Ordinal), fix.Id);
        }

        foreach (Mechanism cause in Pack.Mechanisms)
        {
            string part = Part($"zone-{cause.Zones[0]}.md", $"### {Prose.Plain(cause.Title)}\n");
            Assert.True(cause.Basis.IsStated && part.Contains(Prose.Plain(cause.Basis.Text), StringComparison.Ordinal), cause.Id);
            Assert.Contains($"Maturity: {cause.Maturity.ToString().ToLowerInvariant()}.", part, StringComparison.Ordinal);
        }

        Assert.All(Pack.Gates, gate => Assert.Contains($"## {Prose.Plain(gate.Title)}\n", Pages["gates.md"], StringComparison.Ordinal));
        Assert.All(Pack.Sources, source => Assert.Contains($"## {source.Id}: ", Pages["sources.md"], StringComparison.Ordinal));
    }

    [Fact]
    public void Drawings_OfEveryZone_ShowItsTufts()
    {
        Dictionary<string, string> drawings = RulePages.Drawings(Pack).ToDictionary(one => one.File, one => one.Svg);
        foreach (Zone zone in Pack.Zones)
        {
            string svg = drawings[$"drawings/{zone.Id}.svg"];
            int strokes = Regex.Count(svg, "<line[^>]*stroke-width=\"0.9\"");
            Assert.True(zone.TuftPattern is null ? strokes == 0 : strokes > 0, zone.Id);
            Assert.Contains($"](drawings/{zone.Id}.svg)", Pages[$"zone-{zone.Id}.md"], StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Links_OfEveryPage_LeadToAPage()
    {
        HashSet<string> files = [.. Pages.Keys, .. RulePages.Drawings(Pack).Select(one => one.File)];

        Assert.Empty(Pages.SelectMany(page => Link().Matches(page.Value).Select(match => match.Groups[1].Value)).Except(files));
    }

    [Fact]
    public void Whole_AsHtml_HoldsEveryFixAndEveryDrawing()
    {
        string html = HtmlWriting.Write(RulePages.Whole(Pack));

        Assert.All(Pack.Zones, zone => Assert.Contains(zone.Id, html, StringComparison.Ordinal));
        Assert.Equal(Pack.Zones.Count, Regex.Count(html, "<figure>"));
        Assert.Equal(Pack.Fixes.Count, Regex.Count(html, @"<h4>[^<]*\((draft|tried|trusted)\)</h4>"));
        Assert.DoesNotContain("](", html, StringComparison.Ordinal);
    }

    private static string Part(string page, string heading)
    {
        string text = Pages[page];
        int start = text.IndexOf(heading, StringComparison.Ordinal);
        Assert.True(start >= 0, $"{page}: {heading}");
        int end = text.IndexOf("\n### ", start + 4, StringComparison.Ordinal);
        return end < 0 ? text[start..] : text[start..end];
    }

    [GeneratedRegex(@"\]\(([^)]*)\)")]
    private static partial Regex Link();
}
