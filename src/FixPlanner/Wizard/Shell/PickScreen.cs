using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Shell;

/// <summary>A line to type in, and below it the rows that fit what was typed.</summary>
internal sealed class PickScreen : IScreen
{
    private const string Label = "Find: ";

    private readonly EntryLine entry = new();
    private readonly ListScreen list = new();
    private PickModel? model;

    public bool Typing => true;

    public Message? Unconfirmed => null;

    public IReadOnlyList<TextLine> KeyWords =>
    [
        TextLine.Of("Letters: find by a part of the name; Ctrl+U: empty the line", hanging: 2),
        TextLine.Of("Up, down, PgUp, PgDn: move; Enter: open the row", hanging: 2),
    ];

    public bool Shows(ScreenModel model) => model is PickModel;

    public void Show(ScreenModel model)
    {
        if (this.model?.Id != model.Id)
        {
            entry.Set("");
        }
        this.model = (PickModel)model;
        list.Show(this.model.List);
    }

    public Sheet Draw(int width, int height)
    {
        int field = Math.Max(10, width - Label.Length - 1);
        (string text, int cursor) = entry.View(field);
        TextLine line = TextLine.Of(new Words(Label), new Words(Columns.Fit(text, Math.Min(field, 40)), Emphasis.Underline | Emphasis.Bold));
        Sheet rows = list.Draw(width, height - 2);
        return new Sheet([model!.Title.With(Emphasis.Bold), line, .. rows.Rows.Skip(1)], (Label.Length + cursor, 1));
    }

    public Reply Handle(Key key)
    {
        bool moves = key == Key.CursorUp || key == Key.CursorDown || key == Key.PageUp || key == Key.PageDown || key == Key.Enter || key == Key.Tab || key == Key.Tab.WithShift;
        return moves ? list.Handle(key) : entry.Handle(key) ? Reply.Say(new Sought(model!.Id, entry.Text)) : Reply.NotMine;
    }

    public bool GoBack() => false;

    public void Paste(string text) => entry.Insert(text);
}
