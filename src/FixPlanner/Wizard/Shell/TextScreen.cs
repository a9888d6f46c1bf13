using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Shell;

/// <summary>Shows a text to read page by page.</summary>
internal sealed class TextScreen : IScreen
{
    private readonly Scroller scroller = new();
    private TextModel? model;

    public bool Typing => false;

    public Message? Unconfirmed => null;

    public IReadOnlyList<TextLine> KeyWords => [TextLine.Of("Arrows, PgUp, PgDn, space, Home, End: read on and back", hanging: 2)];

    public bool Shows(ScreenModel model) => model is TextModel;

    public void Show(ScreenModel model)
    {
        if (this.model?.Id != model.Id)
        {
            scroller.ToStart();
        }
        this.model = (TextModel)model;
    }

    public Sheet Draw(int width, int height)
    {
        List<TextLine> rows = Wrap.To(model!.Text, width - 1);
        IReadOnlyList<TextLine> shown = Rows.Window(rows, scroller, height - 1);
        return new Sheet([model.Title.With(Emphasis.Bold), .. shown], (0, 0));
    }

    public Reply Handle(Key key) => scroller.Handle(key, lines: true) ? Reply.Moved : Reply.NotMine;

    public bool GoBack() => false;

    public void Paste(string text)
    {
    }
}
