namespace FixPlanner.Wizard.Shell;

/// <summary>Breaks paragraphs into rows at the blanks.</summary>
internal static class Wrap
{
    public static List<TextLine> To(IEnumerable<TextLine> paragraphs, int width) => Flow(paragraphs, _ => width);

    /// <summary>Wraps where the room differs from row to row, as beside a picture.</summary>
    /// <param name="paragraphs">What to wrap.</param>
    /// <param name="widthOfRow">Columns there are in row n, counted from 0; at least 1.</param>
    public static List<TextLine> Flow(IEnumerable<TextLine> paragraphs, Func<int, int> widthOfRow)
    {
        List<TextLine> rows = [];
        foreach (TextLine paragraph in paragraphs)
        {
            new Paragraph(rows, widthOfRow, paragraph.Hanging).Add(paragraph);
        }
        return rows;
    }

    private sealed class Paragraph(List<TextLine> rows, Func<int, int> widthOfRow, int hanging)
    {
        private readonly List<Words> row = [];
        private int used;
        private bool continued;

        public void Add(TextLine paragraph)
        {
            foreach (Words part in paragraph.Parts)
            {
                foreach (string piece in Pieces(part.Text))
                {
                    AddPiece(piece, part.Emphasis);
                }
            }
            EndRow();
        }

        private void AddPiece(string piece, Emphasis emphasis)
        {
            int room = Math.Max(1, widthOfRow(rows.Count)) - used;
            int needed = Columns.Of(piece.TrimEnd(' '));
            if (needed > room && used > Start)
            {
                EndRow();
                continued = true;
                Indent();
                room = Math.Max(1, widthOfRow(rows.Count)) - used;
            }
            // A word longer than a whole row is cut: nothing may run out of the window.
            while (needed > room)
            {
                string head = Columns.Cut(piece, Math.Max(1, room));
                head = head.Length == 0 ? piece[..1] : head;
                Put(head, emphasis);
                piece = piece[head.Length..];
                EndRow();
                continued = true;
                Indent();
                room = Math.Max(1, widthOfRow(rows.Count)) - used;
                needed = Columns.Of(piece.TrimEnd(' '));
            }
            string shown = Columns.Of(piece) > room ? piece.TrimEnd(' ') : piece;
            if (!(continued && used == Start && string.IsNullOrWhiteSpace(shown)))
            {
                Put(shown, emphasis);
            }
        }

        // In a very narrow room the text needs all of it.
        private int Start => continued && widthOfRow(rows.Count) >= hanging + 8 ? hanging : 0;

        private void Indent()
        {
            if (Start > 0)
            {
                Put(new string(' ', Start), Emphasis.None);
            }
        }

        private void Put(string text, Emphasis emphasis)
        {
            if (text.Length == 0)
            {
                return;
            }
            used += Columns.Of(text);
            if (row.Count > 0 && row[^1].Emphasis == emphasis)
            {
                row[^1] = row[^1] with { Text = row[^1].Text + text };
            }
            else
            {
                row.Add(new Words(text, emphasis));
            }
        }

        private void EndRow()
        {
            if (row.Count > 0)
            {
                row[^1] = row[^1] with { Text = row[^1].Text.TrimEnd(' ') };
            }
            rows.Add(new TextLine([.. row.Where(part => part.Text.Length > 0)]));
            row.Clear();
            used = 0;
        }

        // A word with the blanks behind it; a tab or a line end counts as a blank.
        private static IEnumerable<string> Pieces(string text)
        {
            string plain = text.Replace('\t', ' ').Replace('\n', ' ').Replace('\r', ' ');
            int start = 0;
            for (int i = 1; i <= plain.Length; i++)
            {
                if (i == plain.Length || (plain[i - 1] == ' ' && plain[i] != ' '))
                {
                    yield return plain[start..i];
                    start = i;
                }
            }
        }
    }
}
