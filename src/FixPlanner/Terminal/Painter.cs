using System.Text;
using Terminal.Gui.Drawing;
using Terminal.Gui.Text;

namespace FixPlanner.Terminal;

/// <summary>Turns what changed on the screen into bytes: moves, characters, and bold, faint, underline, reverse; never a colour.</summary>
/// <param name="ascii">True when the terminal shows ASCII only.</param>
/// <remarks>Nothing changed means no bytes at all: a screen reader or a slow line is left in peace.</remarks>
internal sealed class Painter(bool ascii)
{
    private const TextStyle Shown = TextStyle.Bold | TextStyle.Faint | TextStyle.Underline | TextStyle.Reverse;

    private readonly StringBuilder output = new();
    private (string Text, TextStyle Style)[,] onScreen = new (string, TextStyle)[0, 0];
    private (int X, int Y, bool Visible)? cursor;
    private int column;
    private int row;
    private TextStyle style;

    /// <summary>Forgets what the terminal shows, so that the next frame is drawn whole.</summary>
    public void Forget() => onScreen = new (string, TextStyle)[0, 0];

    /// <summary>The bytes that bring the terminal from the last frame to this one.</summary>
    /// <param name="cells">Rows and columns as drawn by the views.</param>
    /// <param name="at">Where the cursor rests: on what has the focus; null hides it.</param>
    public byte[] Paint(Cell[,] cells, (int X, int Y)? at)
    {
        output.Clear();
        bool whole = onScreen.GetLength(0) != cells.GetLength(0) || onScreen.GetLength(1) != cells.GetLength(1);
        if (whole)
        {
            onScreen = new (string, TextStyle)[cells.GetLength(0), cells.GetLength(1)];
            output.Append("\e[0m\e[2J");
            cursor = null;
        }
        (column, row, style) = (-1, -1, TextStyle.None);
        for (int y = 0; y < cells.GetLength(0); y++)
        {
            PaintRow(cells, y);
        }
        bool changed = output.Length > 0;
        if (style != TextStyle.None)
        {
            output.Append("\e[0m");
        }
        RestCursor(at, changed);
        if (changed)
        {
            output.Insert(0, "\e[?25l");
        }
        return Encoding.UTF8.GetBytes(output.ToString());
    }

    private void PaintRow(Cell[,] cells, int y)
    {
        int width = cells.GetLength(1);
        for (int x = 0; x < width; x++)
        {
            string text = PlainCharacters.Harmless(cells[y, x].Grapheme ?? " ");
            int columns = text is [< '\x7f'] ? 1 : Math.Max(1, text.GetColumns());
            if (columns > 1 && x + columns > width)
            {
                (text, columns) = (" ", 1);
            }
            text = ascii ? PlainCharacters.Ascii(text, columns) : text;
            (string, TextStyle) now = (text, (cells[y, x].Attribute?.Style ?? TextStyle.None) & Shown);
            if (onScreen[y, x] != now)
            {
                onScreen[y, x] = now;
                Put(x, y, text, columns, now.Item2);
            }
            // What lies under the second half of a wide character is not shown: whatever comes there later is new.
            for (int covered = 1; covered < columns; covered++)
            {
                onScreen[y, ++x] = ("", TextStyle.None);
            }
        }
    }

    private void Put(int x, int y, string text, int columns, TextStyle wanted)
    {
        if (x != column || y != row)
        {
            output.Append("\e[").Append(y + 1).Append(';').Append(x + 1).Append('H');
        }
        if (wanted != style)
        {
            output.Append("\e[0");
            output.Append(wanted.HasFlag(TextStyle.Bold) ? ";1" : "").Append(wanted.HasFlag(TextStyle.Faint) ? ";2" : "");
            output.Append(wanted.HasFlag(TextStyle.Underline) ? ";4" : "").Append(wanted.HasFlag(TextStyle.Reverse) ? ";7" : "");
            output.Append('m');
            style = wanted;
        }
        output.Append(text);
        (column, row) = (x + columns, y);
    }

    private void RestCursor((int X, int Y)? at, bool changed)
    {
        (int, int, bool) wanted = at is { } place ? (place.X, place.Y, true) : (0, 0, false);
        if (!changed && cursor == wanted)
        {
            return;
        }
        cursor = wanted;
        output.Append("\e[").Append(wanted.Item2 + 1).Append(';').Append(wanted.Item1 + 1).Append('H');
        output.Append(wanted.Item3 ? "\e[?25h" : "\e[?25l");
    }
}
