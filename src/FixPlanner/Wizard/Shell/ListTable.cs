namespace FixPlanner.Wizard.Shell;

/// <summary>Rows of a list set in columns.</summary>
internal sealed class ListTable
{
    private const int Margin = 2;

    private readonly ListModel model;
    private readonly int width;
    private readonly int[] widths;

    public ListTable(ListModel model, int width)
    {
        (this.model, this.width) = (model, width);
        int set = model.Columns.Sum(column => column.Width) + model.Columns.Count - 1 + Margin;
        int rest = Math.Max(4, width - set);
        widths = [.. model.Columns.Select(column => column.Width == 0 ? rest : column.Width)];
    }

    /// <summary>The line of titles; none when no column has one.</summary>
    public IReadOnlyList<TextLine> Heading => model.Columns.All(column => column.Title.Length == 0)
        ? []
        : [TextLine.Of(Columns.Fit("  " + Cells([.. model.Columns.Select(column => column.Title)]), width), Emphasis.Underline)];

    public TextLine Row(RowModel row, bool selected)
    {
        if (row.Id is null)
        {
            return TextLine.Of(Columns.Fit(row.Cells[0], width), row.Emphasis);
        }
        string mark = selected ? "> " : "  ";
        string text = mark + Cells([.. row.Cells, .. Enumerable.Repeat("", Math.Max(0, model.Columns.Count - row.Cells.Count))]);
        Emphasis emphasis = row.Emphasis | (selected ? Emphasis.Reverse : Emphasis.None);
        if (row.Choices is not { Count: > 0 } choices)
        {
            return TextLine.Of(Columns.Fit(text, width), emphasis);
        }
        int room = widths[^1];
        string before = Columns.Fit(Columns.Cut(text, width - room), width - room);
        return new TextLine([new Words(before, emphasis), .. Choices(row, choices, room)]);
    }

    // The choice that stands has brackets and is bold; all of them are shown, so that nobody has to know them.
    private static IEnumerable<Words> Choices(RowModel row, IReadOnlyList<ChoiceModel> choices, int room)
    {
        int left = room;
        foreach (ChoiceModel choice in choices)
        {
            bool stands = choice.Id == row.Current;
            string text = Columns.Cut(stands ? $"[{choice.Text}]" : $" {choice.Text} ", left);
            left -= Columns.Of(text);
            yield return new Words(text, stands ? Emphasis.Bold : Emphasis.None);
        }
    }

    private string Cells(IReadOnlyList<string> cells) =>
        string.Join(' ', model.Columns.Select((column, i) => Columns.Fit(cells[i], widths[i], column.ToTheRight)));
}
