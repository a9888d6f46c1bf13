namespace FixPlanner.Wizard.Shell;

/// <summary>A text to read page by page: a report, a test-day sheet, a text that must be read before going on.</summary>
internal sealed record TextModel : ScreenModel
{
    /// <summary>Paragraphs; wrapped to the window.</summary>
    public required IReadOnlyList<TextLine> Text { get; init; }
}
