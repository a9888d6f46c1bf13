using System.Net;
using System.Text;
using Markdig;

namespace FixPlanner.Report.Documents;

/// <summary>A document as one self-contained HTML page: no script, nothing fetched, legible in black on white and on paper.</summary>
public static class HtmlWriting
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().Use<NothingFetched>().Build();

    /// <summary>Writes a document.</summary>
    /// <param name="document">The document.</param>
    /// <returns>The page.</returns>
    public static string Write(Document document)
    {
        StringBuilder html = new();
        html.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
            .Append(Escaped(document.Title)).Append("</title>\n<style>\n").Append(HtmlStyle.Report).Append(document.IsForm ? "\n" + HtmlStyle.Form : "").Append("\n</style>\n</head>\n<body").Append(document.IsForm ? " class=\"form\"" : "").Append(">\n<main>\n<h1>").Append(Escaped(document.Title)).Append("</h1>\n");
        WriteAll(document.Blocks, html);
        html.Append("</main>\n");
        if (document.Footer.Length > 0)
        {
            html.Append("<footer>").Append(Escaped(document.Footer)).Append("</footer>\n");
        }

        return Characters.WithoutControls(html.Append("</body>\n</html>\n").ToString());
    }

    // Questions that follow each other stand in one group, so that a form can set them in columns.
    private static void WriteAll(IReadOnlyList<Block> blocks, StringBuilder html)
    {
        for (int i = 0; i < blocks.Count; i++)
        {
            bool asks = blocks[i] is FillIn;
            if (asks && (i == 0 || blocks[i - 1] is not FillIn))
            {
                html.Append("<div class=\"asks\">\n");
            }

            Write(blocks[i], html);
            if (asks && (i + 1 == blocks.Count || blocks[i + 1] is not FillIn))
            {
                html.Append("</div>\n");
            }
        }
    }

    private static void Write(Block block, StringBuilder html)
    {
        switch (block)
        {
            case Heading h:
                html.Append("<h").Append(h.Level).Append('>').Append(Escaped(h.Text)).Append("</h").Append(h.Level).Append(">\n");
                break;
            case Paragraph p:
                html.Append(Markdown.ToHtml(p.Text, Pipeline));
                break;
            case Warning w:
                html.Append("<div class=\"warning\" role=\"note\"><strong>").Append(Escaped(w.Word)).Append("</strong> ").Append(Inline(w.Text)).Append("</div>\n");
                break;
            case Bullets b:
                html.Append("<ul>\n");
                foreach (string item in b.Items)
                {
                    html.Append("<li>").Append(Inline(item)).Append("</li>\n");
                }

                html.Append("</ul>\n");
                break;
            case Checklist list:
                html.Append("<ul class=\"check\">\n");
                foreach (string item in list.Items)
                {
                    html.Append("<li>&#9744; ").Append(Inline(item)).Append("</li>\n");
                }

                html.Append("</ul>\n");
                break;
            case Steps steps:
                html.Append("<ol>\n");
                foreach (string item in steps.Items)
                {
                    html.Append("<li>").Append(Inline(item)).Append("</li>\n");
                }

                html.Append("</ol>\n");
                break;
            case FillIn f:
                html.Append("<div class=\"ask\">").Append(f.Number.Length > 0 ? $"<strong>{Escaped(f.Number)}</strong> " : "").Append(Inline(f.Ask)).Append(f.Boxes.Count + f.Blanks.Count > 0 ? "<br>" : "")
                    .Append(string.Join(" &ensp;", f.Boxes.Select(b => $"&#9744;&nbsp;{Inline(b)}").Concat(f.Blanks.Select(b => $"<span class=\"blank\">{Escaped(b)}</span>")))).Append("</div>\n");
                break;
            case PageBreak:
                html.Append("<div class=\"page\"></div>\n");
                break;
            case Table t:
                WriteTable(t, html);
                break;
            case Picture picture:
                html.Append("<figure>\n").Append(picture.Svg).Append("\n<figcaption>").Append(Inline(picture.Words)).Append("</figcaption>\n</figure>\n");
                break;
            case Card c:
                html.Append("<section class=\"card\">\n<h3>").Append(Escaped(c.Title)).Append("</h3>\n");
                WriteAll(c.Blocks, html);

                html.Append("</section>\n");
                break;
            case SignatureBox s:
                html.Append("<div class=\"sign\"><strong>&#9744; ").Append(Escaped(s.What)).Append("</strong><br>Who: ").Append(Inline(s.By)).Append("<br>Evidence: ").Append(Inline(s.Evidence))
                    .Append("<br><span class=\"line\">name</span><span class=\"line\">date</span><span class=\"line\">signature</span></div>\n");
                break;
            default:
                throw new ArgumentException($"a block of an unknown kind: {block.GetType().Name}", nameof(block));
        }
    }

    private static void WriteTable(Table table, StringBuilder html)
    {
        html.Append("<table>\n<thead><tr>");
        foreach (string column in table.Columns)
        {
            html.Append("<th scope=\"col\">").Append(Escaped(column)).Append("</th>");
        }

        html.Append("</tr></thead>\n<tbody>\n");
        foreach (IReadOnlyList<string> row in table.Rows)
        {
            html.Append("<tr>").Append(string.Concat(row.Select(cell => $"<td>{Inline(cell)}</td>"))).Append("</tr>\n");
        }

        html.Append("</tbody>\n</table>\n");
    }

    private static string Escaped(string text) => WebUtility.HtmlEncode(text);

    // One paragraph of Markdown without the paragraph around it.
    private static string Inline(string text)
    {
        string html = Markdown.ToHtml(text.Replace('\n', ' '), Pipeline).Trim();
        return html.StartsWith("<p>", StringComparison.Ordinal) && html.EndsWith("</p>", StringComparison.Ordinal) && html.IndexOf("<p>", 3, StringComparison.Ordinal) < 0 ? html[3..^4] : html;
    }
}
