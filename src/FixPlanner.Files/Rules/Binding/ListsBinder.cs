using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>Reads the lists that are no rules of their own: words, kinds of run, things that usually disappoint.</summary>
internal static class ListsBinder
{
    public static void BindTerms(MapReader map, FileBinder binder)
    {
        string title = map.NeedText("title");
        List<(string Word, string Meaning)> words = [.. binder.Texts(map, "words")];
        foreach (MapReader inner in map.Inners("runs", "a kind of run"))
        {
            RunKind run = new(binder.ListedId(inner, RuleKind.Run), inner.NeedText("title"), binder.NamedList(inner, "part_of", RuleKind.Run));
            inner.Done();
            binder.Bound.Runs.Add(run);
            words.Add((run.Id, run.Title));
        }

        binder.Bound.Terms.Add(new(binder.File.Name, title, words));
        if (Words.Explained.TryGetValue(binder.File.Name, out IEnumerable<string>? known))
        {
            Compare(map, words, [.. known], binder);
        }
    }

    public static void BindDisappointments(MapReader root, FileBinder binder)
    {
        foreach (MapReader map in root.Inners("disappointments", "an entry"))
        {
            binder.Bound.Disappointments.Add(new(
                binder.ListedId(map, RuleKind.Disappointment),
                map.NeedText("what"),
                map.NeedText("why"),
                map.NeedText("do_instead"),
                binder.NeedBasis(map, "sources", "the entry"))
            {
                Aliases = map.Aliases(),
            });
            map.Done();
        }
    }

    // The program knows the words by heart; a list that explains others would mislead.
    private static void Compare(MapReader map, IReadOnlyList<(string Word, string Meaning)> words, IReadOnlyList<string> known, FileBinder binder)
    {
        foreach (YamlEntry entry in binder.Entries(map, "words").Where(entry => !known.Contains(entry.Key.Text)))
        {
            binder.Problems.Add(Messages.WordNotUsed(entry.Key.Place, entry.Key.Text, known));
        }

        foreach (string word in known.Where(word => words.All(entry => entry.Word != word)))
        {
            binder.Problems.Add(Messages.WordNotExplained(map.PlaceOf("words"), word));
        }
    }
}
