using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace FixPlanner.Wizard.Shell;

/// <summary>A part of the window that shows rows of text, in bold, reverse, underline and faint, without any colour.</summary>
internal sealed class Pane : View
{
    /// <summary>From here on characters may be two columns wide (Unicode, East Asian Width: Hangul Jamo are the first).</summary>
    private const char FirstPerhapsWide = '\u1100';

    private IReadOnlyList<TextLine> rows = [];

    /// <summary>Sets what is shown; nothing is drawn when it is the same as before.</summary>
    public void Show(IReadOnlyList<TextLine> next)
    {
        if (!rows.SequenceEqual(next))
        {
            rows = next;
            SetNeedsDraw();
        }
    }

    /// <summary>Puts the pane in its place; only a change costs anything.</summary>
    public void Place(int x, int y, int width, int height)
    {
        Visible = width > 0 && height > 0;
        Frame = new System.Drawing.Rectangle(x, y, Math.Max(0, width), Math.Max(0, height));
    }

    // The rows cover the pane: clearing it first would cost as much as drawing it.
    /// <inheritdoc/>
    protected override bool OnClearingViewport() => true;

    // Giving a character to the library costs some two microseconds and a few kilobytes: only rows that do not stand there yet are given to it.
    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        Cell[,]? cells = App?.Driver?.Contents;
        System.Drawing.Point corner = ViewportToScreen(System.Drawing.Point.Empty);
        for (int y = 0; y < Viewport.Height; y++)
        {
            TextLine row = y < rows.Count ? rows[y] : TextLine.Empty;
            if (cells is null || !Stands(row, cells, corner.X, corner.Y + y))
            {
                DrawRow(row, y);
            }
        }
        return true;
    }

    private bool Stands(TextLine row, Cell[,] cells, int left, int y)
    {
        int x = 0;
        foreach (Words part in row.Parts)
        {
            TextStyle style = Style(part.Emphasis).Style;
            foreach (char character in part.Text)
            {
                if (x < Viewport.Width && !IsThere(character, style, x++))
                {
                    return false;
                }
            }
        }
        while (x < Viewport.Width)
        {
            if (!IsThere(' ', TextStyle.None, x++))
            {
                return false;
            }
        }
        return true;

        bool IsThere(char character, TextStyle style, int column) =>
            character < FirstPerhapsWide && y < cells.GetLength(0) && left + column < cells.GetLength(1)
            && cells[y, left + column] is { Grapheme: [var shown] } cell && shown == character && (cell.Attribute?.Style ?? TextStyle.None) == style;
    }

    private void DrawRow(TextLine row, int y)
    {
        if (row.Parts.Any(part => part.Text.Any(character => character >= FirstPerhapsWide)))
        {
            // Under the second half of a wide character the library leaves what stood there.
            Draw(new string(' ', Viewport.Width), Emphasis.None, 0, y);
        }
        int x = 0;
        foreach (Words part in row.Parts)
        {
            string text = Columns.Cut(part.Text, Viewport.Width - x);
            Draw(text, part.Emphasis, x, y);
            x += Columns.Of(text);
        }
        if (x < Viewport.Width)
        {
            Draw(new string(' ', Viewport.Width - x), Emphasis.None, x, y);
        }
    }

    private void Draw(string text, Emphasis emphasis, int x, int y)
    {
        SetAttribute(Style(emphasis));
        AddStr(x, y, text);
    }

    private static Attribute Style(Emphasis emphasis)
    {
        TextStyle style = TextStyle.None;
        style |= emphasis.HasFlag(Emphasis.Bold) ? TextStyle.Bold : TextStyle.None;
        style |= emphasis.HasFlag(Emphasis.Reverse) ? TextStyle.Reverse : TextStyle.None;
        style |= emphasis.HasFlag(Emphasis.Underline) ? TextStyle.Underline : TextStyle.None;
        style |= emphasis.HasFlag(Emphasis.Faint) ? TextStyle.Faint : TextStyle.None;
        return new Attribute(Color.None, Color.None, style);
    }
}
