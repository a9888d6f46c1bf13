using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Screens;

/// <summary>Shows a tuft grid; a letter reads the tuft under the cursor and goes on to the next. A row is sent whole, as it is typed line by line elsewhere.</summary>
internal sealed class GridScreen : IScreen
{
    private const string Letters = "swlr.";
    private readonly Scroller scroller = new();
    private readonly EntryLine film = new();
    private GridModel? model;
    private int row;
    private int column;
    private bool counting;
    private bool sent;

    public bool Typing => counting;

    public Message? Unconfirmed => null;

    public IReadOnlyList<TextLine> KeyWords =>
    [
        TextLine.Of("s steady, w waving, l lifted, r reversed, point or space: not readable", hanging: 2),
        TextLine.Of("f: type how many frames of the film show this tuft steady, waving, lifted, reversed; Esc closes the line", hanging: 2),
        TextLine.Of("Arrows, Home, End: to another tuft; Enter: done, what it shows goes into the diagnosis", hanging: 2),
    ];

    public bool Shows(ScreenModel model) => model is GridModel;

    public void Show(ScreenModel model)
    {
        if (this.model?.Id != model.Id)
        {
            (row, column, counting) = (0, 0, false);
            scroller.ToStart();
        }

        this.model = (GridModel)model;
        if (sent && this.model.Trouble is null)
        {
            film.Set("");
            Next(this.model.Rows.Count, this.model.Rows[0].Length);
        }

        sent = false;
    }

    public Reply Handle(Key key)
    {
        if (counting)
        {
            return Count(key);
        }

        if (key == Key.F)
        {
            counting = true;
            film.Set("");
            return Reply.Moved;
        }

        if (key == Key.Enter)
        {
            return Reply.Say(new Entered(model!.Id, ""));
        }

        if (scroller.Overflows && scroller.Handle(key, lines: false))
        {
            return Reply.Moved;
        }

        (int rows, int columns) = (model!.Rows.Count, model.Rows[0].Length);
        (int Row, int Column)? to = key == Key.CursorDown ? (row + 1, column) : key == Key.CursorUp ? (row - 1, column)
            : key == Key.CursorRight ? (row, column + 1) : key == Key.CursorLeft ? (row, column - 1)
            : key == Key.Home ? (row, 0) : key == Key.End ? (row, columns - 1) : null;
        if (to is { } place)
        {
            (row, column) = (Math.Clamp(place.Row, 0, rows - 1), Math.Clamp(place.Column, 0, columns - 1));
            return Reply.Moved;
        }

        char letter = key == Key.Space ? '.' : (char)key.AsRune.Value;
        if (!Letters.Contains(char.ToLowerInvariant(letter)))
        {
            return Reply.NotMine;
        }

        char[] changed = model.Rows[row].ToCharArray();
        changed[column] = char.ToLowerInvariant(letter);
        Entered said = new(model.Id, $"{row + 1} {new string(changed)}");
        Next(rows, columns);
        return Reply.Say(said);
    }

    // Tuft after tuft, as the film is gone through; an empty line closes it.
    private Reply Count(Key key)
    {
        if (key != Key.Enter)
        {
            return film.Handle(key) ? Reply.Moved : Reply.NotMine;
        }

        if (film.Text.Trim().Length == 0)
        {
            counting = false;
            return Reply.Moved;
        }

        sent = true;
        return Reply.Say(new Entered(model!.Id, $"{row + 1}.{column + 1}: {film.Text.Trim()}"));
    }

    public bool GoBack()
    {
        bool was = counting;
        counting = false;
        return was;
    }

    public void Paste(string text)
    {
        if (counting)
        {
            film.Insert(text);
        }
    }

    public Sheet Draw(int width, int height)
    {
        IReadOnlyList<TextLine> grid = [.. model!.Rows.Select(Row)];
        DrawingModel? drawing = model.Picture is not { } picture ? null
            : new[] { picture.Large, picture.Slim }.FirstOrDefault(d => d.Width + model.Rows[0].Length + 12 <= width && d.Rows.Count + grid.Count < height);
        List<TextLine> text = Wrap.To(model.Text, width);
        (IReadOnlyList<TextLine> line, int cursor) = Film(width);
        int room = Math.Max(2, height - 1 - line.Count - Math.Max(grid.Count + 1, drawing?.Rows.Count ?? 0));
        IReadOnlyList<TextLine> upper = Rows.Window(text, scroller, room);
        IReadOnlyList<TextLine> lower = drawing is null ? grid : Rows.Beside(grid, drawing.Lines, width - drawing.Width);
        (int, int) at = counting ? (cursor, 1 + upper.Count) : (6 + column, 1 + upper.Count + line.Count + row);
        return new([model.Title.With(Emphasis.Bold), .. upper, .. line, .. lower], at);
    }

    private (IReadOnlyList<TextLine> Rows, int Cursor) Film(int width)
    {
        if (!counting)
        {
            return ([], 0);
        }

        string label = $"Tuft {row + 1}.{column + 1}, frames steady waving lifted reversed: ";
        (string text, int cursor) = film.View(Math.Max(4, width - label.Length - 1));
        TextLine line = TextLine.Of(new Words(label), new Words(Columns.Fit(text, Math.Max(5, width - label.Length)), Emphasis.Underline | Emphasis.Bold));
        TextLine below = model!.Trouble is { } trouble ? TextLine.Of("! ", Emphasis.Bold).Then(trouble) with { Hanging = 2 } : TextLine.Of("for example: 10 30 0 60. Enter: taken, and on to the next tuft; Esc: back to the letters", Emphasis.Faint);
        return ([line, .. Wrap.To([below], width)], label.Length + cursor);
    }

    private TextLine Row(string letters, int number)
    {
        TextLine name = $"{number + 1,4}  ";
        return number != row ? name.Then(letters)
            : name.Then(letters[..column]).Then(TextLine.Of(letters[column].ToString(), Emphasis.Reverse | Emphasis.Bold)).Then(letters[(column + 1)..]);
    }

    private void Next(int rows, int columns)
    {
        column++;
        if (column == columns && row + 1 < rows)
        {
            (row, column) = (row + 1, 0);
        }

        column = Math.Min(column, columns - 1);
    }
}
