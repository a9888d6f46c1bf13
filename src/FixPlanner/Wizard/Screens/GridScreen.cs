using FixPlanner.Wizard.Shell;
using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Screens;

/// <summary>Shows a tuft grid; a letter reads the tuft under the cursor and goes on to the next. A row is sent whole, as it is typed line by line elsewhere.</summary>
internal sealed class GridScreen : IScreen
{
    private const string Letters = "swlr.";
    private readonly Scroller scroller = new();
    private GridModel? model;
    private int row;
    private int column;

    public bool Typing => false;

    public Message? Unconfirmed => null;

    public IReadOnlyList<TextLine> KeyWords =>
    [
        TextLine.Of("s steady, w waving, l lifted, r reversed, point or space: not readable", hanging: 2),
        TextLine.Of("Arrows, Home, End: to another tuft; Enter: done, what it shows goes into the diagnosis", hanging: 2),
    ];

    public bool Shows(ScreenModel model) => model is GridModel;

    public void Show(ScreenModel model)
    {
        if (this.model?.Id != model.Id)
        {
            (row, column) = (0, 0);
            scroller.ToStart();
        }

        this.model = (GridModel)model;
    }

    public Reply Handle(Key key)
    {
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

    public bool GoBack() => false;

    public void Paste(string text)
    {
    }

    public Sheet Draw(int width, int height)
    {
        IReadOnlyList<TextLine> grid = [.. model!.Rows.Select(Row)];
        DrawingModel? drawing = model.Picture is not { } picture ? null
            : new[] { picture.Large, picture.Slim }.FirstOrDefault(d => d.Width + model.Rows[0].Length + 12 <= width && d.Rows.Count + grid.Count < height);
        List<TextLine> text = Wrap.To(model.Text, width);
        int room = Math.Max(2, height - 1 - Math.Max(grid.Count + 1, drawing?.Rows.Count ?? 0));
        IReadOnlyList<TextLine> upper = Rows.Window(text, scroller, room);
        IReadOnlyList<TextLine> lower = drawing is null ? grid : Rows.Beside(grid, drawing.Lines, width - drawing.Width);
        return new([model.Title.With(Emphasis.Bold), .. upper, .. lower], (6 + column, 1 + upper.Count + row));
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
