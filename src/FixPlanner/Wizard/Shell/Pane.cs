using Terminal.Gui.Drawing;
using Terminal.Gui.ViewBase;
using Attribute = Terminal.Gui.Drawing.Attribute;

namespace FixPlanner.Wizard.Shell;

/// <summary>A part of the window that shows rows of text, in bold, reverse, underline and faint, without any colour.</summary>
internal sealed class Pane : View
{
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

    /// <inheritdoc/>
    protected override bool OnDrawingContent(DrawContext? context)
    {
        for (int y = 0; y < Viewport.Height; y++)
        {
            DrawRow(y < rows.Count ? rows[y] : TextLine.Empty, y);
        }
        return true;
    }

    private void DrawRow(TextLine row, int y)
    {
        int x = 0;
        foreach (Words part in row.Parts)
        {
            string text = Columns.Cut(part.Text, Viewport.Width - x);
            SetAttribute(Style(part.Emphasis));
            AddStr(x, y, text);
            x += Columns.Of(text);
        }
        if (x < Viewport.Width)
        {
            SetAttribute(Style(Emphasis.None));
            AddStr(x, y, new string(' ', Viewport.Width - x));
        }
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
