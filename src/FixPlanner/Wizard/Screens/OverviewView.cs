using FixPlanner.Core.Interview;
using FixPlanner.Core.Quantities;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Wizard.Screens;

/// <summary>All questions of a part with the answers that stand; short ones are answered in their row, the others open.</summary>
internal static class OverviewView
{
    public static ListModel Of(string id, string title, IReadOnlyList<Question> questions, IReadOnlyList<TextLine> intro) => new()
    {
        Id = id,
        Title = title,
        Intro = intro,
        Columns = [new("Question", 0), new("Answer", 26)],
        Rows = [.. questions.Select(Row)],
        WhenEmpty = "Nothing to ask here.",
    };

    private static RowModel Row(Question q)
    {
        if (Keys(q) is not { } choices)
        {
            return new(q.Key.ToString(), [Prose.Plain(q.Ask), Prose.Plain(q.Current ?? "not answered")], Opens: true);
        }

        return new(q.Key.ToString(), [Prose.Plain(q.Name ?? q.Ask), ""], () => Detail(q), Choices: choices, Current: q.CurrentChoice ?? (q.CurrentNot is not null ? QuestionView.NotSure : null));
    }

    // Yes, no and weights fit in a row.
    private static List<ChoiceModel>? Keys(Question q) => q.Key.Kind switch
    {
        QuestionKind.Aim => [.. q.Choices.Select(c => new ChoiceModel(c.Id, c.Id, c.Id[0]))],
        QuestionKind.Fact when q.Choices.Count == 2 && q.Choices.All(c => c.Id is "yes" or "no") => [new("yes", "yes", 'y'), new("no", "no", 'n'), new(QuestionView.NotSure, "not sure", 's')],
        _ => null,
    };

    private static List<TextLine> Detail(Question q) =>
    [
        Lines.Of(q.Ask),
        Lines.Named("Why", q.Why),
        Lines.Named("How", q.How),
        .. q.Key.Kind == QuestionKind.Aim ? q.Choices.Select(c => (TextLine)$"{c.Id}  {c.Text}") : [],
    ];
}
