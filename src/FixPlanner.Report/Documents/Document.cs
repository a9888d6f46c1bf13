namespace FixPlanner.Report.Documents;

/// <summary>A document for people, before it is text, Markdown or HTML.</summary>
/// <param name="Title">Title.</param>
/// <param name="Blocks">Blocks in reading order.</param>
public sealed record Document(string Title, IReadOnlyList<Block> Blocks);

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
public sealed record Table(IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows) : Block;

/// <summary>A picture, with the same in words.</summary>
/// <param name="Svg">The picture.</param>
/// <param name="Words">What it shows, in words, for text and for readers who do not see it.</param>
public sealed record Picture(string Svg, string Words) : Block;

/// <summary>A card that stays on one page when printed.</summary>
/// <param name="Title">Title.</param>
/// <param name="Blocks">What stands on it.</param>
public sealed record Card(string Title, IReadOnlyList<Block> Blocks) : Block;

/// <summary>A place to sign.</summary>
/// <param name="What">What is signed off.</param>
/// <param name="By">Who signs.</param>
/// <param name="Evidence">On what evidence.</param>
public sealed record SignatureBox(string What, string By, string Evidence) : Block;
