namespace FixPlanner.Report.Documents;

/// <summary>A document for people, before it is text, Markdown or HTML.</summary>
/// <param name="Title">Title.</param>
/// <param name="Blocks">Blocks in reading order.</param>
public sealed record Document(string Title, IReadOnlyList<Block> Blocks)
{
    /// <summary>The last line: with what and when it was made. Empty for none.</summary>
    public string Footer { get; init; } = "";

    /// <summary>True for a form of one or two pages that is filled in by hand: small type, two columns.</summary>
    public bool IsForm { get; init; }
}

/// <summary>A block of a document.</summary>
public abstract record Block;

/// <summary>A heading.</summary>
/// <param name="Level">2 for a part, 3 for a section of it.</param>
/// <param name="Text">Text.</param>
public sealed record Heading(int Level, string Text) : Block;

/// <summary>A paragraph of prose (CommonMark, no HTML).</summary>
/// <param name="Text">Text.</param>
public sealed record Paragraph(string Text) : Block;

/// <summary>A warning that must not be overlooked. The word in front says how serious it is: nothing is said by colour alone.</summary>
/// <param name="Word">For instance STOP, FIX FIRST, CAUTION.</param>
/// <param name="Text">Text.</param>
public sealed record Warning(string Word, string Text) : Block;

/// <summary>A list.</summary>
/// <param name="Items">Items.</param>
public sealed record Bullets(IReadOnlyList<string> Items) : Block;

/// <summary>A table.</summary>
/// <param name="Columns">Column headings.</param>
/// <param name="Rows">Rows, as many cells as there are columns.</param>
public sealed record Table(IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : Block
{
    /// <summary>True when its cells are sentences: in plain text each row stands as lines below each other, the first cell on top.</summary>
    public bool Stacked { get; init; }
}

/// <summary>Things to tick off.</summary>
/// <param name="Items">Items.</param>
public sealed record Checklist(IReadOnlyList<string> Items) : Block;

/// <summary>Steps in their order, numbered from 1.</summary>
/// <param name="Items">Steps.</param>
public sealed record Steps(IReadOnlyList<string> Items) : Block;

/// <summary>A question of a form, with a box for each answer.</summary>
/// <param name="Number">Its number on the form; empty for none.</param>
/// <param name="Ask">The question.</param>
/// <param name="Boxes">Answers to tick; may be empty.</param>
/// <param name="Blanks">Names of what is written in by hand.</param>
public sealed record FillIn(string Number, string Ask, IReadOnlyList<string> Boxes, IReadOnlyList<string> Blanks) : Block;

/// <summary>On paper what follows begins on a new page.</summary>
public sealed record PageBreak : Block;

/// <summary>A picture, with the same in words.</summary>
/// <param name="Svg">The picture.</param>
/// <param name="Words">What it shows, in words, for text and for readers who do not see it.</param>
public sealed record Picture(string Svg, string Words) : Block
{
    /// <summary>The picture in plain characters, at most 78 wide; empty where words must do.</summary>
    public IReadOnlyList<string> Characters { get; init; } = [];

    /// <summary>The file that holds the picture, where one is written beside a Markdown page; empty for none.</summary>
    public string File { get; init; } = "";
}

/// <summary>A card that stays on one page when printed.</summary>
/// <param name="Title">Title.</param>
/// <param name="Blocks">What stands on it.</param>
public sealed record Card(string Title, IReadOnlyList<Block> Blocks) : Block;

/// <summary>Something that a page shows when it is opened; on paper and as text it stands open.</summary>
/// <param name="Summary">What it holds.</param>
/// <param name="Blocks">What stands in it.</param>
public sealed record Details(string Summary, IReadOnlyList<Block> Blocks) : Block;

/// <summary>A place to sign.</summary>
/// <param name="What">What is signed off.</param>
/// <param name="By">Who signs.</param>
/// <param name="Evidence">On what evidence.</param>
public sealed record SignatureBox(string What, string By, string Evidence) : Block;
