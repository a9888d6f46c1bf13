namespace FixPlanner.Wizard.Shell;

/// <summary>A list or table whose rows can be opened, or carry a choice each.</summary>
internal sealed record ListModel : ScreenModel
{
    /// <summary>A few lines above the list.</summary>
    public IReadOnlyList<TextLine> Intro { get; init; } = [];

    /// <summary>The columns; when one has a title, the titles are shown above the rows.</summary>
    public required IReadOnlyList<ColumnModel> Columns { get; init; }

    public required IReadOnlyList<RowModel> Rows { get; init; }

    /// <summary>Said instead when there are no rows.</summary>
    public required TextLine WhenEmpty { get; init; }

    /// <summary>What a letter does with the selected row, also while it is open; sent as a choice in that row.</summary>
    public IReadOnlyList<ChoiceModel> RowKeys { get; init; } = [];

    /// <summary>Lines under the list that are always visible.</summary>
    public IReadOnlyList<TextLine> Totals { get; init; } = [];
}

/// <summary>One column.</summary>
/// <param name="Title">Heading; empty for none.</param>
/// <param name="Width">Columns on the screen; 0 takes what is left (one column of a list does).</param>
/// <param name="ToTheRight">True for figures.</param>
internal sealed record ColumnModel(string Title, int Width, bool ToTheRight = false);

/// <summary>One row.</summary>
/// <param name="Id">Sent when opened or chosen in. Null: a heading that cannot be selected.</param>
/// <param name="Cells">One text per column; a heading has one cell, shown across.</param>
/// <param name="Detail">What is known about it, reasons and all; made only when it is shown. Null: nothing to open.</param>
/// <param name="Emphasis">How the row stands out, beside its words.</param>
/// <param name="Choices">Choices in this row; empty for none. They are shown in the last column.</param>
/// <param name="Current">Id of the choice that stands.</param>
/// <param name="Opens">True when opening the row is for the program; false when it shows the detail over the whole body.</param>
internal sealed record RowModel(
    string? Id,
    IReadOnlyList<string> Cells,
    Func<IReadOnlyList<TextLine>>? Detail = null,
    Emphasis Emphasis = Emphasis.None,
    IReadOnlyList<ChoiceModel>? Choices = null,
    string? Current = null,
    bool Opens = false)
{
    public static RowModel Heading(string text) => new(null, [text], Emphasis: Emphasis.Bold);
}

/// <summary>One choice of a row.</summary>
/// <param name="Id">Sent when chosen.</param>
/// <param name="Text">As shown, short: yes, no, not sure, 0 to 3.</param>
/// <param name="Key">The character that picks it.</param>
internal sealed record ChoiceModel(string Id, string Text, char Key);
