using System.Text;

namespace FixPlanner.Report.Documents;

/// <summary>A document as CommonMark with pipe tables.</summary>
public static class MarkdownWriting
{
    /// <summary>Writes a document.</summary>
    /// <param name="document">The document.</param>
    /// <returns>The Markdown.</returns>
    public static string Write(Document document)
    {
        StringBuilder text = new();
        text.Append("# ").Append(document.Title).Append('\n');
        foreach (Block block in document.Blocks)
        {
            text.Append('\n');
            Write(block, text);
        }

        if (document.Footer.Length > 0)
        {
            text.Append("\n---\n\n").Append(document.Footer).Append('\n');
        }

        // A note of the owner's must not become HTML in whatever shows the Markdown.
        return Characters.WithoutControls(text.ToString()).Replace("<", "\\<");
    }

    private static void Write(Block block, StringBuilder text)
    {
        switch (block)
        {
            case Heading h:
                text.Append('#', h.Level).Append(' ').Append(h.Text).Append('\n');
                break;
            case Paragraph p:
                text.Append(p.Text).Append('\n');
                break;
            case Warning w:
                text.Append("> **").Append(w.Word).Append(":** ").Append(w.Text).Append('\n');
                break;
            case Bullets b:
                foreach (string item in b.Items)
                {
                    text.Append("- ").Append(item).Append('\n');
                }

                break;
            case Table t:
                Row(t.Columns, text);
                text.Append('|').Append(string.Concat(Enumerable.Repeat(" --- |", t.Columns.Count))).Append('\n');
                foreach (IReadOnlyList<string> row in t.Rows)
                {
                    Row(row, text);
                }

                break;
            case Checklist list:
                foreach (string item in list.Items)
                {
                    text.Append("- [ ] ").Append(item).Append('\n');
                }

                break;
            case Steps steps:
                for (int i = 0; i < steps.Items.Count; i++)
                {
                    text.Append(i + 1).Append(". ").Append(steps.Items[i]).Append('\n');
                }

                break;
            case Picture { File.Length: > 0 } filed:
                text.Append("![").Append(filed.Words).Append("](").Append(filed.File).Append(")\n");
                break;
            case Picture picture:
                if (picture.Characters.Count > 0)
                {
                    text.Append("```\n").Append(string.Join('\n', picture.Characters.Select(l => l.TrimEnd()))).Append("\n```\n\n");
                }

                text.Append(picture.Words).Append('\n');
                break;
            case FillIn f:
                text.Append("- ").Append(f.Number.Length > 0 ? $"**{f.Number}** " : "").Append(f.Ask).Append("  \n  ")
                    .Append(string.Join(" ", f.Boxes.Select(b => $"\\[ \\] {b}").Concat(f.Blanks.Select(b => $"{b} \\_\\_\\_\\_\\_\\_")))).Append('\n');
                break;
            case PageBreak:
                text.Append("---\n");
                break;
            case Card c:
                text.Append("### ").Append(c.Title).Append('\n');
                foreach (Block inner in c.Blocks)
                {
                    text.Append('\n');
                    Write(inner, text);
                }

                break;
            case Details d:
                text.Append("**").Append(d.Summary).Append("**\n");
                foreach (Block inner in d.Blocks)
                {
                    text.Append('\n');
                    Write(inner, text);
                }

                break;
            case SignatureBox s:
                text.Append("- [ ] **").Append(s.What).Append("** - who: ").Append(s.By).Append("; evidence: ").Append(s.Evidence).Append("; name, date, signature: \\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\n");
                break;
            default:
                throw new ArgumentException($"a block of an unknown kind: {block.GetType().Name}", nameof(block));
        }
    }

    private static void Row(IReadOnlyList<string> cells, StringBuilder text) =>
        text.Append("| ").Append(string.Join(" | ", cells.Select(c => c.Replace("|", "\\|").Replace('\n', ' ')))).Append(" |\n");
}
