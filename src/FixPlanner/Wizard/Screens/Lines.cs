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

    /// <summary>A document's text, line by line.</summary>
    public static IReadOnlyList<TextLine> Of(Document document) => [.. TextWriting.Write(document).TrimEnd('\n').Split('\n').Select(l => (TextLine)l)];
}
