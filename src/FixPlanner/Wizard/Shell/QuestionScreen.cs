using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Shell;

/// <summary>Shows a question: what is asked, why, how to look, the place on the car, and the answers.</summary>
internal sealed class QuestionScreen : IScreen
{
    private const int LeastText = 38;
    private const int LeastQuestion = 5;

    private readonly AnswerList answers = new();
    private readonly EntryLine entry = new();
    private readonly Scroller scroller = new();
    private readonly Scroller below = new();
    private QuestionModel? model;
    private bool inEntry;

    public bool Typing => inEntry;

    public Message? Unconfirmed =>
        model?.Entry is { } kept && entry.Text != kept.Text ? new Drafted(model.Id, entry.Text) : null;

    public IReadOnlyList<TextLine> KeyWords =>
    [
        .. model!.Answers.Count > 0 ? [TextLine.Of(model.NumberOnlyChooses ? "A number chooses an answer, Enter gives it" : "1 to 9: give that answer", hanging: 2)] : Rows.None,
        .. model.Reserved.Where(answer => answer.Letter is not null).Select(answer => TextLine.Of($"{answer.Letter}: {answer.Text}", hanging: 2)),
        .. model.MayHesitate ? [TextLine.Of("h: mark the next answer as not quite sure", hanging: 2)] : Rows.None,
        .. model.Entry is not null ? [TextLine.Of("Enter: confirm what you typed; down: to the other answers; Ctrl+U: empty the line", hanging: 2)] : Rows.None,
        TextLine.Of("Arrows, Enter: choose; PgUp, PgDn: more of the text", hanging: 2),
    ];

    public bool Shows(ScreenModel model) => model is QuestionModel;

    public void Show(ScreenModel model)
    {
        QuestionModel question = (QuestionModel)model;
        bool fresh = this.model?.Id != question.Id;
        if (fresh || this.model?.Entry?.Text != question.Entry?.Text)
        {
            entry.Set(question.Entry?.Text ?? "");
        }
        if (fresh)
        {
            scroller.ToStart();
            below.ToStart();
            inEntry = question.Entry is not null && question.Reserved.All(answer => answer.Id != question.Current);
        }
        this.model = question;
        answers.Show(question, fresh);
    }

    public Reply Handle(Key key)
    {
        if (scroller.Overflows && scroller.Handle(key, lines: false))
        {
            return Reply.Moved;
        }
        if (!inEntry)
        {
            Reply reply = answers.Handle(key);
            bool up = !reply.Taken && model!.Entry is not null && (key == Key.CursorUp || key == Key.Tab.WithShift);
            bool figure = !reply.Taken && model!.Entry is not null && char.IsAsciiDigit((char)key.AsRune.Value) && entry.Handle(key);
            inEntry = up || figure;
            return inEntry ? Reply.Moved : reply;
        }
        if (key == Key.Enter)
        {
            return Reply.Say(new Entered(model!.Id, entry.Text));
        }
        if (key == Key.CursorDown || key == Key.Tab)
        {
            inEntry = model!.Reserved.Count + model.Answers.Count == 0;
            return Reply.Moved;
        }
        return entry.Handle(key) ? Reply.Moved : Reply.NotMine;
    }

    public bool GoBack() => false;

    public void Paste(string text)
    {
        if (inEntry)
        {
            entry.Insert(text);
        }
    }

    public Sheet Draw(int width, int height)
    {
        List<TextLine> lower = [];
        (int X, int Y) cursor = (0, 0);
        if (model!.Entry is { } asked)
        {
            (IReadOnlyList<TextLine> rows, cursor) = DrawEntry(asked, width);
            lower.AddRange(rows);
        }
        (IReadOnlyList<TextLine> choices, (int X, int Y) focus) = answers.Draw(width, focused: !inEntry);
        cursor = inEntry ? cursor : (focus.X, focus.Y + lower.Count);
        lower.AddRange(choices);
        lower.AddRange(model.NumberOnlyChooses ? Wrap.To([TextLine.Of(" A number chooses; Enter gives the answer.", Emphasis.Faint)], width) : []);
        lower.AddRange(Hesitation(width));
        (lower, cursor) = InView(lower, cursor, height - LeastQuestion - 2);
        int room = Math.Max(LeastQuestion, height - lower.Count - 2);
        IReadOnlyList<TextLine> upper = DrawQuestion(width, room);
        List<TextLine> all = [model.Title.With(Emphasis.Bold), .. upper, TextLine.Empty, .. lower];
        return new Sheet(all, (cursor.X, cursor.Y + upper.Count + 2));
    }

    // More answers than there is room for: the one with the focus is in view, and the arrows bring the others.
    private (List<TextLine> Rows, (int X, int Y) Cursor) InView(List<TextLine> rows, (int X, int Y) cursor, int room)
    {
        if (rows.Count <= room)
        {
            below.Fit(room, rows.Count);
            return (rows, cursor);
        }
        int shown = Math.Max(1, room - 1);
        below.Fit(shown, rows.Count);
        below.Reveal(Math.Min(rows.Count - 1, cursor.Y + 2));
        below.Reveal(cursor.Y);
        TextLine mark = TextLine.Of($"-- answers, {below.Position}: arrows --", Emphasis.Faint);
        return ([.. rows.Skip(below.Top).Take(shown), mark], (cursor.X, cursor.Y - below.Top));
    }

    private IReadOnlyList<TextLine> DrawQuestion(int width, int room)
    {
        List<TextLine> text =
        [
            model!.Question.With(Emphasis.Bold),
            .. model.First is { } first ? [first] : Rows.None,
            .. Labelled("Why", model.Why),
            .. Labelled("How", model.How),
            .. model.Notes,
        ];
        if (Drawing(width, room) is not { } drawing)
        {
            return Rows.Window(Wrap.To(text, width), scroller, room);
        }
        TextLine caption = TextLine.Of(new Words("Here: "), new Words(model.Picture!.Place, Emphasis.Bold));
        List<TextLine> right = [.. drawing.Lines, .. Wrap.To([caption with { Hanging = 6 }], drawing.Width)];
        int narrow = width - drawing.Width - 2;
        List<TextLine> left = Wrap.Flow(text, row => row < right.Count ? narrow : width);
        IReadOnlyList<TextLine> shown = left.Count > room
            ? Rows.Window(Wrap.To(text, narrow), scroller, room)
            : Rows.Window(left, scroller, room);
        return Rows.Beside(shown, [.. right.Take(room)], width - drawing.Width);
    }

    private DrawingModel? Drawing(int width, int room)
    {
        if (model!.Picture is not { } picture)
        {
            return null;
        }
        DrawingModel?[] sizes = [picture.Large, picture.Slim];
        return sizes.FirstOrDefault(drawing => drawing!.Width + LeastText + 2 <= width && drawing.Rows.Count < room);
    }

    private (IReadOnlyList<TextLine> Rows, (int X, int Y) Cursor) DrawEntry(EntryModel asked, int width)
    {
        const string Label = "Answer: ";
        int field = Math.Clamp(width - Label.Length - 20, 10, 30);
        (string text, int cursor) = entry.View(field);
        TextLine line = TextLine.Of(
            new Words(Label),
            new Words(Columns.Fit(text, field + 1), Emphasis.Underline | (inEntry ? Emphasis.Bold : Emphasis.None)),
            new Words("  " + Columns.Cut(asked.Unit, Math.Max(0, width - Label.Length - field - 3))));
        List<TextLine> rows = [line];
        rows.AddRange(asked.Problem is { } problem
            ? Wrap.To([TextLine.Of("! ", Emphasis.Bold).Then(problem) with { Hanging = 2 }], width)
            : asked.Example.Length > 0 ? Wrap.To([TextLine.Of(asked.Example, Emphasis.Faint)], width) : []);
        return (rows, (Label.Length + cursor, 0));
    }

    private List<TextLine> Hesitation(int width)
    {
        if (!model!.MayHesitate)
        {
            return [];
        }
        string text = answers.Hesitant ? "h [x] not quite sure: the next answer counts for less" : "h [ ] not quite sure";
        return Wrap.To([TextLine.Of(" " + text, answers.Hesitant ? Emphasis.Bold : Emphasis.None)], width);
    }

    private static IEnumerable<TextLine> Labelled(string label, TextLine text) =>
        text.Text.Length == 0 ? [] : [TextLine.Of(new Words(label + ": ", Emphasis.Underline)).Then(text)];
}
