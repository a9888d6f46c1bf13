using System.CommandLine;
using FixPlanner.Core.Knowledge;
using FixPlanner.Report.Documents;
using FixPlanner.Report.Rules;

namespace FixPlanner.Commands;

/// <summary><c>fixplanner rules docs [DIR]... --out FILE|DIR</c>: the rules as pages for people.</summary>
internal static class RuleDocsCommand
{
    public static Command Build()
    {
        Argument<string[]> folders = new("DIR") { Arity = ArgumentArity.ZeroOrMore, Description = "folders of your own rules, laid over the shipped ones" };
        Option<string> to = new("--out") { Description = "a file that ends in .html, .md or .txt, or a folder for a page and a drawing of each place", Required = true };
        Command command = new("docs", "Write the rules as pages for people: places with drawings of where tufts go, causes, fixes, gates, sources.\n\nExamples:\n  fixplanner rules docs --out rules.html\n  fixplanner rules docs my-rules --out pages") { folders, to };
        command.SetAction(parsed => Run(parsed.GetValue(folders) ?? [], parsed.GetValue(to)!));
        return command;
    }

    public static int Run(IReadOnlyList<string> folders, string to)
    {
        (KnowledgePack? pack, int exit) = Desk.Pack(folders);
        return pack is null ? exit : Path.GetExtension(to) switch
        {
            ".html" or ".htm" => Desk.Give(HtmlWriting.Write(RulePages.Whole(pack)), to),
            ".md" => Desk.Give(MarkdownWriting.Write(RulePages.Whole(pack)), to),
            ".txt" => Desk.Give(TextWriting.Write(RulePages.Whole(pack)), to),
            _ => Desk.GiveAll([.. RulePages.Pages(pack).Select(page => (page.Name + ".md", MarkdownWriting.Write(page.Page))), .. RulePages.Drawings(pack)], to),
        };
    }
}
