using Terminal.Gui.Input;

namespace FixPlanner.Wizard.Shell;

/// <summary>Shows a list or table, with what is known about the selected row below it or beside it.</summary>
internal sealed class ListScreen : IScreen
{
    private const int WideFrom = 100;

    private readonly Scroller list = new();
    private readonly Scroller detail = new();
    private ListModel? model;
    private int selected;
    private bool opened;

    public bool Typing => false;

    public Message? Unconfirmed => null;

    private RowModel? Row => model is { Rows.Count: > 0 } && model.Rows[selected].Id is not null ? model.Rows[selected] : null;

    public IReadOnlyList<TextLine> KeyWords =>
    [
        TextLine.Of("Arrows, PgUp, PgDn, Home, End: move", hanging: 2),
        .. Row is { Opens: true } or { Detail: not null } ? [TextLine.Of("Enter: open the row", hanging: 2)] : Rows.None,
        .. Row?.Choices is { Count: > 0 } choices
            ? [TextLine.Of($"{string.Join(", ", choices.Select(choice => $"{choice.Key}: {choice.Text}"))}; left, right: change", hanging: 2)]
            : Rows.None,
        .. model?.RowKeys.Select(one => TextLine.Of($"{one.Key}: {one.Text}", hanging: 2)) ?? Rows.None,
    ];

    public bool Shows(ScreenModel model) => model is ListModel;

    public void Show(ScreenModel model)
    {
        ListModel next = (ListModel)model;
        bool same = this.model?.Id == next.Id;
        string? row = same ? Row?.Id : null;
        this.model = next;
        int kept = row is null ? -1 : next.Rows.ToList().FindIndex(one => one.Id == row);
        int place = same ? Math.Clamp(selected, 0, Math.Max(0, next.Rows.Count - 1)) : 0;
        selected = kept >= 0 ? kept : FirstFrom(place);
        if (!same || kept < 0)
        {
            opened = false;
            detail.ToStart();
        }
        if (!same)
        {
            list.ToStart();
        }
    }

    public Reply Handle(Key key)
    {
        if (Row is { } picked && model!.RowKeys.FirstOrDefault(one => key == new Key(one.Key)) is { } deed)
        {
            return Reply.Say(new Chosen(model.Id, picked.Id!, deed.Id));
        }
        if (opened)
        {
            bool close = key == Key.Enter || key == Key.CursorLeft;
            opened = !close;
            return close || detail.Handle(key, lines: true) ? Reply.Moved : Reply.NotMine;
        }
        if (Step(key) is { } step)
        {
            Move(step);
            return Reply.Moved;
        }
        if (Row is not { } row)
        {
            return Reply.NotMine;
        }
        if (key == Key.Enter)
        {
            return Open(row);
        }
        return Choose(row, key);
    }

    public bool GoBack()
    {
        bool was = opened;
        opened = false;
        return was;
    }

    public void Paste(string text)
    {
    }

    public Sheet Draw(int width, int height)
    {
        List<TextLine> keys = model!.RowKeys.Count == 0 ? [] : Wrap.To([TextLine.Of(string.Join("  ", model.RowKeys.Select(one => $"{one.Key} {one.Text}")))], width);
        List<TextLine> top = [model!.Title.With(Emphasis.Bold), .. Wrap.To(model.Intro, width)];
        if (opened && Row is { Detail: { } whole } open)
        {
            List<TextLine> text = Wrap.To(whole(), width - 1);
            TextLine name = TextLine.Of(string.Join("  ", open.Cells.Where(cell => cell.Length > 0)), Emphasis.Bold | Emphasis.Underline);
            return new Sheet([model.Title.With(Emphasis.Bold), .. Wrap.To([name], width), .. Rows.Exactly(Rows.Window(text, detail, height - 2 - keys.Count), height - 2 - keys.Count), .. keys], (0, 1));
        }
        if (model.Rows.Count == 0)
        {
            return new Sheet([.. top, TextLine.Empty, .. Wrap.To([model.WhenEmpty], width)], (0, 0));
        }
        List<TextLine> totals = [.. Wrap.To(model.Totals, width), .. keys];
        int room = Math.Max(3, height - top.Count - totals.Count);
        bool details = model.Rows.Any(row => row.Detail is not null);
        (IReadOnlyList<TextLine> rows, int focus) = !details ? DrawList(width, room)
            : width >= WideFrom ? DrawBeside(width, room) : DrawBelow(width, room);
        return new Sheet([.. top, .. Rows.Exactly(rows, room), .. totals], (0, top.Count + focus));
    }

    private (IReadOnlyList<TextLine> Rows, int Focus) DrawList(int width, int room)
    {
        ListTable table = new(model!, width);
        List<TextLine> rows = [.. table.Heading];
        int lines = room - rows.Count;
        bool overflow = model!.Rows.Count > lines;
        lines = Math.Max(1, overflow ? lines - 1 : lines);
        list.Fit(lines, model.Rows.Count);
        list.Reveal(selected);
        list.Fit(lines, model.Rows.Count);
        int focus = rows.Count + selected - list.Top;
        rows.AddRange(model.Rows.Skip(list.Top).Take(lines).Select((row, i) => table.Row(row, list.Top + i == selected)));
        if (overflow)
        {
            string mark = $"-- rows {list.Top + 1} to {Math.Min(model.Rows.Count, list.Top + lines)} of {model.Rows.Count} --";
            rows.Add(TextLine.Of(mark, Emphasis.Faint));
        }
        return (rows, focus);
    }

    private (IReadOnlyList<TextLine> Rows, int Focus) DrawBeside(int width, int room)
    {
        int left = width * 3 / 5;
        (IReadOnlyList<TextLine> rows, int focus) = DrawList(left - 1, room);
        List<TextLine> text = DetailRows(width - left - 2, room);
        List<TextLine> right = [.. Rows.Exactly(text, room).Select(line => ((TextLine)"│ ").Then(line))];
        return (Rows.Beside(Rows.Exactly(rows, room), right, left), focus);
    }

    private (IReadOnlyList<TextLine> Rows, int Focus) DrawBelow(int width, int room)
    {
        int heading = new ListTable(model!, width).Heading.Count;
        int upper = Math.Min(model!.Rows.Count + heading, Math.Max(4, room * 3 / 5));
        (IReadOnlyList<TextLine> rows, int focus) = DrawList(width, upper);
        int lower = room - upper - 1;
        List<TextLine> text = DetailRows(width, lower);
        return ([.. Rows.Exactly(rows, upper), TextLine.Of(new string('─', width), Emphasis.Faint), .. text], focus);
    }

    private List<TextLine> DetailRows(int width, int room)
    {
        List<TextLine> text = Wrap.To(Row?.Detail?.Invoke() ?? [], width);
        return text.Count <= room ? text : [.. text.Take(Math.Max(0, room - 1)), TextLine.Of("-- more: Enter --", Emphasis.Faint)];
    }

    private int? Step(Key key)
    {
        int page = Math.Max(1, list.Height - 1);
        return key == Key.CursorDown || key == Key.Tab ? 1
            : key == Key.CursorUp || key == Key.Tab.WithShift ? -1
            : key == Key.PageDown ? page
            : key == Key.PageUp ? -page
            : key == Key.Home ? -model!.Rows.Count
            : key == Key.End ? model!.Rows.Count : null;
    }

    // Headings cannot be selected: a step that lands on one goes on in its direction, or stays.
    private void Move(int by)
    {
        int last = model!.Rows.Count - 1;
        int to = Math.Clamp(selected + by, 0, Math.Max(0, last));
        while (to > 0 && to < last && model.Rows[to].Id is null)
        {
            to += Math.Sign(by);
        }
        to = model.Rows.Count > 0 && model.Rows[to].Id is null && by < 0 ? FirstFrom(to) : to;
        if (model.Rows.Count > 0 && model.Rows[to].Id is not null)
        {
            selected = to;
            detail.ToStart();
        }
    }

    private int FirstFrom(int place)
    {
        int found = model!.Rows.Skip(place).ToList().FindIndex(row => row.Id is not null);
        return found >= 0 ? place + found : place;
    }

    private Reply Open(RowModel row)
    {
        if (row.Opens)
        {
            return Reply.Say(new Opened(model!.Id, row.Id!));
        }
        opened = row.Detail is not null;
        return opened ? Reply.Moved : Reply.NotMine;
    }

    private Reply Choose(RowModel row, Key key)
    {
        if (row.Choices is not { Count: > 0 } choices)
        {
            return Reply.NotMine;
        }
        int current = choices.ToList().FindIndex(choice => choice.Id == row.Current);
        int step = key == Key.CursorRight ? 1 : key == Key.CursorLeft ? -1 : 0;
        if (step != 0)
        {
            int to = current < 0 ? (step > 0 ? 0 : choices.Count - 1) : Math.Clamp(current + step, 0, choices.Count - 1);
            return to == current ? Reply.Moved : Reply.Say(new Chosen(model!.Id, row.Id!, choices[to].Id));
        }
        ChoiceModel? picked = choices.FirstOrDefault(choice => key == new Key(choice.Key));
        if (picked is null)
        {
            return Reply.NotMine;
        }
        // A row answered by its letter is done with: the next one is ready for its own.
        Reply reply = Reply.Say(new Chosen(model!.Id, row.Id!, picked.Id));
        Move(1);
        return reply;
    }
}
