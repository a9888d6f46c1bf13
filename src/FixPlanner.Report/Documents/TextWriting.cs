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
        foreach (Block block in document.Blocks)
        {
            Write(block, text, "");
        }

        return text.ToString();
    }

    private static void Write(Block block, StringBuilder text, string indent)
    {
        switch (block)
        {
            case Heading h:
                text.Append('\n').Append(indent).Append(h.Text).Append('\n').Append(indent).Append(new string(h.Level == 2 ? '-' : '.', Math.Min(Width, h.Text.Length))).Append('\n');
                break;
            case Paragraph p:
                Wrapped(p.Text, text, indent, indent);
                break;
            case Warning w:
                Wrapped($"!! {w.Word}: {w.Text.Replace("**", "")}", text, indent, indent + "   ");
                break;
            case Bullets b:
                foreach (string item in b.Items)
                {
                    Wrapped("- " + item, text, indent, indent + "  ");
                }

                break;
            case Table t:
                WriteTable(t, text, indent);
                break;
            case Picture picture:
                Wrapped(picture.Words, text, indent, indent);
                break;
            case Card c:
                text.Append('\n').Append(indent).Append(c.Title).Append('\n');
                foreach (Block inner in c.Blocks)
                {
                    Write(inner, text, indent + "   ");
                }

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
        foreach (string word in words.Split((char[])[' ', '\n'], StringSplitOptions.RemoveEmptyEntries))
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
