using System.Text;

namespace FixPlanner.Report.Documents;

/// <summary>A document as plain text, 78 columns wide, without escape codes.</summary>
public static class TextWriting
{
    private const int Width = 78;

    /// <summary>Writes a document.</summary>
    /// <param name="document">The document.</param>
    /// <returns>The text, lines ended by a line feed.</returns>
    public static string Write(Document document)
    {
        StringBuilder text = new();
        text.Append(document.Title).Append('\n').Append(new string('=', Math.Min(Width, document.Title.Length))).Append('\n');
        WriteAll(document.Blocks, text, "");
        if (document.Footer.Length > 0)
        {
            text.Append('\n');
            Wrapped(document.Footer, text, "", "");
        }

        return Characters.WithoutControls(text.ToString());
    }

    // An empty line parts paragraphs, tables and pictures from what stands above them; headings and cards bring their own.
    private static void WriteAll(IReadOnlyList<Block> blocks, StringBuilder text, string indent)
    {
        for (int i = 0; i < blocks.Count; i++)
        {
            if (i > 0 && blocks[i - 1] is not (Heading or PageBreak) && (blocks[i] is Table or Picture or Paragraph or Details || blocks[i - 1] is Table or Picture) && blocks[i] is not (Heading or Card))
            {
                text.Append('\n');
            }

            Write(blocks[i], text, indent);
        }
    }

    private static void Write(Block block, StringBuilder text, string indent)
    {
        switch (block)
        {
            case Heading h:
                text.Append('\n');
                Wrapped(h.Text, text, indent, indent);
                text.Append(indent).Append(new string(h.Level == 2 ? '-' : '.', Math.Min(Width, h.Text.Length))).Append('\n');
                break;
            case Paragraph p:
                Wrapped(p.Text, text, indent, indent);
                break;
            case Warning w:
                Wrapped($"!! {w.Word}: {w.Text}", text, indent, indent + "   ");
                break;
            case Bullets b:
                foreach (string item in b.Items)
                {
                    Wrapped("- " + item, text, indent, indent + "  ");
                }

                break;
            case Checklist list:
                foreach (string item in list.Items)
                {
                    Wrapped("[ ] " + item, text, indent, indent + "    ");
                }

                break;
            case Steps steps:
                for (int i = 0; i < steps.Items.Count; i++)
                {
                    Wrapped($"{i + 1}. {steps.Items[i]}", text, indent, indent + "   ");
                }

                break;
            case Table { Stacked: true } t:
                WriteStacked(t, text, indent);
                break;
            case Table t:
                WriteTable(t, text, indent);
                break;
            case Picture picture:
                foreach (string line in picture.Characters)
                {
                    text.Append((indent + line).TrimEnd()).Append('\n');
                }

                Wrapped(picture.Words, text, indent, indent);
                break;
            case FillIn f:
                Wrapped(f.Number.Length > 0 ? $"{f.Number}. {f.Ask}" : f.Ask, text, indent, indent + "    ");
                Wrapped(string.Join("  ", f.Boxes.Select(b => $"[\u00a0]\u00a0{(b.Length > 60 ? b : b.Replace(' ', '\u00a0'))}").Concat(f.Blanks.Select(b => $"{b.Replace(' ', '\u00a0')}\u00a0________"))), text, indent + "    ", indent + "    ");
                break;
            case PageBreak:
                text.Append('\n');
                break;
            case Card c:
                text.Append('\n').Append(indent).Append(c.Title).Append('\n');
                WriteAll(c.Blocks, text, indent + "   ");

                break;
            case Details d:
                Wrapped(d.Summary + ":", text, indent, indent);
                WriteAll(d.Blocks, text, indent + "  ");
                break;
            case SignatureBox s:
                Wrapped($"[ ] {s.What}", text, indent, indent + "    ");
                Wrapped($"Who: {s.By}. Evidence: {s.Evidence}", text, indent + "    ", indent + "    ");
                text.Append(indent).Append("    name ____________________  date ____________  signed ____________\n");
                break;
            default:
                throw new ArgumentException($"a block of an unknown kind: {block.GetType().Name}", nameof(block));
        }
    }

    private static void Wrapped(string words, StringBuilder text, string first, string next)
    {
        string line = first;
        bool empty = true;
        foreach (string word in words.Replace("**", "").Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (!empty && line.Length + 1 + word.Length > Width)
            {
                text.Append(line).Append('\n');
                line = next;
                empty = true;
            }

            line += empty ? word : " " + word;
            empty = false;
        }

        text.Append(line).Append('\n');
    }

    private static void WriteStacked(Table table, StringBuilder text, string indent)
    {
        foreach (IReadOnlyList<string> row in table.Rows)
        {
            Wrapped(row[0], text, indent, indent + "  ");
            for (int i = 1; i < row.Count; i++)
            {
                if (row[i].Length > 0)
                {
                    Wrapped($"{table.Columns[i]}: {row[i]}", text, indent + "   ", indent + "     ");
                }
            }
        }
    }

    // Columns are as wide as their longest cell; the widest gives way until the table fits, and its cells wrap.
    private static void WriteTable(Table table, StringBuilder text, string indent)
    {
        int[] widths = [.. table.Columns.Select((c, i) => Math.Max(c.Length, table.Rows.Select(r => r[i].Length).DefaultIfEmpty(0).Max()))];
        while (widths.Sum() + (2 * (widths.Length - 1)) + indent.Length > Width && widths.Max() > 8)
        {
            widths[Array.IndexOf(widths, widths.Max())]--;
        }

        Row(table.Columns, widths, text, indent);
        text.Append(indent).Append(string.Join("  ", widths.Select(w => new string('-', w)))).Append('\n');
        foreach (IReadOnlyList<string> row in table.Rows)
        {
            Row(row, widths, text, indent);
        }
    }

    private static void Row(IReadOnlyList<string> cells, int[] widths, StringBuilder text, string indent)
    {
        List<string>[] lines = [.. cells.Select((c, i) => Cut(c, widths[i]))];
        for (int n = 0; n < lines.Max(l => l.Count); n++)
        {
            string line = string.Join("  ", lines.Select((l, i) => (n < l.Count ? l[n] : "").PadRight(widths[i])));
            text.Append((indent + line).TrimEnd()).Append('\n');
        }
    }

    private static List<string> Cut(string cell, int width)
    {
        List<string> lines = [];
        string line = "";
        foreach (string whole in cell.Split(' '))
        {
            string word = whole;
            while (word.Length > width)
            {
                if (line.Length > 0)
                {
                    lines.Add(line);
                    line = "";
                }

                lines.Add(word[..width]);
                word = word[width..];
            }

            if (line.Length > 0 && line.Length + 1 + word.Length > width)
            {
                lines.Add(line);
                line = word;
            }
            else
            {
                line = line.Length == 0 ? word : $"{line} {word}";
            }
        }

        lines.Add(line);
        return lines;
    }
}
