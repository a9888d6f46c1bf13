using FixPlanner.Core.Interview;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard.Screens;

/// <summary>Texts of the pack and of documents as lines of a screen.</summary>
internal static class Lines
{
    /// <summary>The letters that do something with a row of such a kind.</summary>
    public static IReadOnlyList<ChoiceModel> Keys(SubjectKind kind) => [.. Interviewer.DeedsFor(kind).Select(d => new ChoiceModel(d.Id, d.Short, d.Key))];

    public static TextLine Of(string prose) => Prose.Plain(prose);

    public static TextLine Named(string name, string prose) => TextLine.Of(new Shell.Words($"{name}: ", Emphasis.Bold), new Shell.Words(Prose.Plain(prose)));

    /// <summary>Blocks as paragraphs that fit any width: beside a list there is less than half a page.</summary>
    public static IReadOnlyList<TextLine> Of(IEnumerable<Block> blocks) => [.. blocks.SelectMany(Of)];

    private static IEnumerable<TextLine> Of(Block block) => block switch
    {
        Paragraph p => [Of(p.Text)],
        Warning w => [TextLine.Of(new Shell.Words($"!! {w.Word}: ", Emphasis.Bold), new Shell.Words(Prose.Plain(w.Text))) with { Hanging = 3 }],
        Bullets b => b.Items.Select(item => TextLine.Of("- " + Prose.Plain(item), hanging: 2)),
        Table t => t.Rows.Select(row => TextLine.Of($"- {row[0]}: {string.Join("; ", row.Skip(1).Select((cell, i) => $"{t.Columns[i + 1]} {cell}"))}", hanging: 2)),
        Details d => [TextLine.Of(d.Summary, Emphasis.Bold), .. d.Blocks.SelectMany(Of)],
        _ => Of(new Document("", [block])).Skip(2),
    };

    /// <summary>A document's text, line by line.</summary>
    public static IReadOnlyList<TextLine> Of(Document document) => [.. TextWriting.Write(document).TrimEnd('\n').Split('\n').Select(l => (TextLine)l)];
}
