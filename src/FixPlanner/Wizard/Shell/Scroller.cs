using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Shell;

/// <summary>Which part of a long text is in view.</summary>
internal sealed class Scroller
{
    private int height = 1;
    private int length;

    public int Top { get; private set; }

    public int Height => height;

    public bool Overflows => length > height;

    public void ToStart() => Top = 0;

    /// <summary>Takes the room and the length there are now.</summary>
    public void Fit(int room, int rows)
    {
        (height, length) = (Math.Max(1, room), rows);
        Top = Math.Clamp(Top, 0, Math.Max(0, length - height));
    }

    /// <summary>Moves so that the row is in view.</summary>
    public void Reveal(int row)
    {
        if (row < Top)
        {
            Top = row;
        }
        else if (row >= Top + height)
        {
            Top = row - height + 1;
        }
    }

    /// <summary>Page keys; with <paramref name="lines"/> the arrows, Home, End and the space bar as well.</summary>
    public bool Handle(Key key, bool lines)
    {
        int page = Math.Max(1, height - 1);
        int? to = key == Key.PageDown ? Top + page : key == Key.PageUp ? Top - page : null;
        if (to is null && lines)
        {
            to = key == Key.CursorDown ? Top + 1
                : key == Key.CursorUp ? Top - 1
                : key == Key.Home ? 0
                : key == Key.End ? length
                : key == Key.Space ? Top + page : null;
        }
        Top = Math.Clamp(to ?? Top, 0, Math.Max(0, length - height));
        return to is not null;
    }

    /// <summary>Where one is in the text, for people.</summary>
    public string Position => Overflows ? $"lines {Top + 1} to {Math.Min(length, Top + height)} of {length}" : "";
}
