using System.Net;
using System.Text;
using Markdig;

namespace FixPlanner.Report.Documents;

/// <summary>A document as one self-contained HTML page: no script, nothing fetched, legible in black on white and on paper.</summary>
public static class HtmlWriting
{
    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder().DisableHtml().Build();

    private const string Style = """
        body { font: 16px/1.45 Georgia, 'Times New Roman', serif; color: #111; background: #fff; max-width: 52rem; margin: 2rem auto; padding: 0 1rem; }
        h1, h2, h3 { font-family: Helvetica, Arial, sans-serif; line-height: 1.2; }
        h1 { border-bottom: 3px solid #111; padding-bottom: .3rem; }
        h2 { border-bottom: 1px solid #111; margin-top: 2.2rem; }
        table { border-collapse: collapse; width: 100%; font: 14px/1.35 Helvetica, Arial, sans-serif; }
        th, td { border: 1px solid #555; padding: .3rem .45rem; text-align: left; vertical-align: top; }
        th { background: #eee; }
        thead { display: table-header-group; }
        .warning { border: 2px solid #111; border-left-width: 10px; padding: .5rem .8rem; margin: .8rem 0; }
        .card { border: 1px solid #333; padding: .2rem 1rem .8rem; margin: 1rem 0; }
        .sign { border: 1px solid #333; padding: .5rem .8rem; margin: .6rem 0; }
        .sign .line { display: inline-block; border-bottom: 1px solid #111; width: 28%; height: 1.8rem; margin-right: 3%; font-size: 12px; color: #333; }
        figure { margin: 1rem 0; } svg { max-width: 100%; height: auto; }
        @page { margin: 16mm; }
        @media print { body { margin: 0; max-width: none; font-size: 11pt; } .card, .sign, .warning, tr { break-inside: avoid; } h2, h3 { break-after: avoid; } }
        """;

    /// <summary>Writes a document.</summary>
    /// <param name="document">The document.</param>
    /// <returns>The page.</returns>
    public static string Write(Document document)
    {
        StringBuilder html = new();
        html.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n<title>")
            .Append(Escaped(document.Title)).Append("</title>\n<style>\n").Append(Style).Append("\n</style>\n</head>\n<body>\n<main>\n<h1>").Append(Escaped(document.Title)).Append("</h1>\n");
        foreach (Block block in document.Blocks)
        {
            Write(block, html);
        }

        return html.Append("</main>\n</body>\n</html>\n").ToString();
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
            case Table t:
                WriteTable(t, html);
                break;
            case Picture picture:
                html.Append("<figure>\n").Append(picture.Svg).Append("\n<figcaption>").Append(Inline(picture.Words)).Append("</figcaption>\n</figure>\n");
                break;
            case Card c:
                html.Append("<section class=\"card\">\n<h3>").Append(Escaped(c.Title)).Append("</h3>\n");
                foreach (Block inner in c.Blocks)
                {
                    Write(inner, html);
                }

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
