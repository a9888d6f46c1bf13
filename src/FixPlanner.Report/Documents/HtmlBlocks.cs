using System.Net;
using System.Text;
using Markdig;

namespace FixPlanner.Report.Documents;

/// <summary>Blocks of a document as HTML. Prose is Markdown with HTML off; nothing is fetched.</summary>
internal static class HtmlBlocks
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().Use<NothingFetched>().Build();

    /// <summary>Text without any meaning as HTML.</summary>
    public static string Escaped(string text) => WebUtility.HtmlEncode(text);

    /// <summary>Blocks one after another. Questions that follow each other stand in one group, so that a form can set them in columns.</summary>
    public static string All(IReadOnlyList<Block> blocks)
    {
        StringBuilder html = new();
        bool asking = false;
        foreach (Block block in blocks)
        {
            if (block is FillIn != asking)
            {
                html.Append(asking ? "</div>\n" : "<div class=\"asks\">\n");
                asking = !asking;
            }

            html.Append(Of(block));
        }

        return html.Append(asking ? "</div>\n" : "").ToString();
    }

    private static string Of(Block block) => block switch
    {
        Heading h => $"<h{h.Level}>{Escaped(h.Text)}</h{h.Level}>\n",
        Paragraph p => Markdown.ToHtml(p.Text, Pipeline),
        Warning w => $"<div class=\"warning\" role=\"note\"><strong>{Escaped(w.Word)}</strong> {Inline(w.Text)}</div>\n",
        Bullets b => $"<ul>\n{Items(b.Items)}</ul>\n",
        Checklist list => $"<ul class=\"check\">\n{Items(list.Items, "&#9744; ")}</ul>\n",
        Steps steps => $"<ol>\n{Items(steps.Items)}</ol>\n",
        FillIn f => Ask(f),
        PageBreak => "<div class=\"page\"></div>\n",
        Table t => TableOf(t),
        Picture p => $"<figure>\n{p.Svg}\n<figcaption>{Inline(p.Words)}</figcaption>\n</figure>\n",
        Card c => $"<section class=\"card\">\n<h3>{Escaped(c.Title)}</h3>\n{All(c.Blocks)}</section>\n",
        Details d => $"<details>\n<summary>{Escaped(d.Summary)}</summary>\n{All(d.Blocks)}</details>\n",
        SignatureBox s => $"<div class=\"sign\"><strong>&#9744; {Escaped(s.What)}</strong><br>Who: {Inline(s.By)}<br>Evidence: {Inline(s.Evidence)}"
            + "<br><span class=\"line\">name</span><span class=\"line\">date</span><span class=\"line\">signature</span></div>\n",
        _ => throw new ArgumentException($"a block of an unknown kind: {block.GetType().Name}", nameof(block)),
    };

    private static string Items(IReadOnlyList<string> items, string mark = "") => string.Concat(items.Select(item => $"<li>{mark}{Inline(item)}</li>\n"));

    private static string Ask(FillIn f)
    {
        string number = f.Number.Length > 0 ? $"<strong>{Escaped(f.Number)}</strong> " : "";
        string[] answers = [.. f.Boxes.Select(b => $"&#9744;&nbsp;{Inline(b)}"), .. f.Blanks.Select(b => $"<span class=\"blank\">{Escaped(b)}</span>")];
        return $"<div class=\"ask\">{number}{Inline(f.Ask)}{(answers.Length > 0 ? "<br>" : "")}{string.Join(" &ensp;", answers)}</div>\n";
    }

    private static string TableOf(Table table)
    {
        string columns = string.Concat(table.Columns.Select(column => $"<th scope=\"col\">{Escaped(column)}</th>"));
        string rows = string.Concat(table.Rows.Select(row => $"<tr>{string.Concat(row.Select(cell => $"<td>{Inline(cell)}</td>"))}</tr>\n"));
        return $"<table>\n<thead><tr>{columns}</tr></thead>\n<tbody>\n{rows}</tbody>\n</table>\n";
    }

    // One paragraph of Markdown without the paragraph around it.
    private static string Inline(string text)
    {
        string html = Markdown.ToHtml(text.Replace('\n', ' '), Pipeline).Trim();
        return html.StartsWith("<p>", StringComparison.Ordinal) && html.EndsWith("</p>", StringComparison.Ordinal) && html.IndexOf("<p>", 3, StringComparison.Ordinal) < 0 ? html[3..^4] : html;
    }
}
