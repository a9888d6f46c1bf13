using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Rules;

/// <summary>The pages of what usually disappoints, and of words.</summary>
internal static class ListPages
{
    public static Document Disappointments(KnowledgePack pack) => new("What usually disappoints",
    [
        .. pack.Disappointments.SelectMany(one => (Block[])
        [
            new Heading(2, Prose.Plain(one.What)),
            new Bullets([.. ZonePage.Named(("Why", one.Why), ("Better", one.DoInstead), ("From", one.Basis.Text))]),
        ]),
    ]);

    public static Document Words(KnowledgePack pack) => new("Words and what they mean",
    [
        .. pack.Terms.SelectMany(list => (Block[])
        [
            new Heading(2, Prose.Plain(list.Title)),
            new Table(["Word", "Meaning"], [.. list.Words.Select(word => (IReadOnlyList<string>)[word.Word, Prose.Plain(word.Meaning)])]),
        ]),
    ]);
}
