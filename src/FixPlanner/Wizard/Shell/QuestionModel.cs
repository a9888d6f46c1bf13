namespace FixPlanner.Wizard.Shell;

/// <summary>A question with its reason, how to look, and the answers there are. Its id is sent with every answer.</summary>
internal sealed record QuestionModel : ScreenModel
{
    public required TextLine Question { get; init; }

    /// <summary>What must be read before anything is done; null for nothing.</summary>
    public TextLine? First { get; init; }

    /// <summary>Why it is asked.</summary>
    public required TextLine Why { get; init; }

    /// <summary>How to look or measure.</summary>
    public TextLine How { get; init; } = TextLine.Empty;

    /// <summary>What misleads, cautions, what was answered before.</summary>
    public IReadOnlyList<TextLine> Notes { get; init; } = [];

    /// <summary>Answers to choose from, numbered from 1 on the screen; empty when the answer is typed.</summary>
    public IReadOnlyList<AnswerModel> Answers { get; init; } = [];

    /// <summary>Always possible: not looked, not sure, not today. Each has a letter.</summary>
    public IReadOnlyList<AnswerModel> Reserved { get; init; } = [];

    /// <summary>Id of the answer that stands, or null.</summary>
    public string? Current { get; init; }

    /// <summary>True when the standing answer was marked as not quite sure.</summary>
    public bool CurrentHesitant { get; init; }

    /// <summary>True when an answer may be marked as not quite sure.</summary>
    public bool MayHesitate { get; init; }

    /// <summary>True when a number only chooses an answer, and Enter confirms it: it may be a figure, or the first of two digits.</summary>
    public bool NumberOnlyChooses { get; init; }

    /// <summary>Where the answer is typed, or null.</summary>
    public EntryModel? Entry { get; init; }

    /// <summary>The car with the place marked, or null.</summary>
    public PictureModel? Picture { get; init; }
}

/// <summary>One answer.</summary>
/// <param name="Id">Sent when chosen.</param>
/// <param name="Text">As the person reads it.</param>
/// <param name="Letter">Picks it; null for the numbered ones.</param>
internal sealed record AnswerModel(string Id, string Text, char? Letter = null);

/// <summary>A one-line answer to type.</summary>
/// <param name="Text">What stands in it now: the kept answer or a draft.</param>
/// <param name="Unit">Which units will do; shown beside the line. A unit is never guessed.</param>
/// <param name="Example">As in: for example 1580 mm.</param>
/// <param name="Problem">What is wrong with what was typed, and what would do; null when nothing is.</param>
internal sealed record EntryModel(string Text, string Unit, string Example, TextLine? Problem = null);
