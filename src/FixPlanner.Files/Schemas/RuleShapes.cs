using System.Text.Json.Nodes;
using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Rules.Binding;

namespace FixPlanner.Files.Schemas;

/// <summary>What many files of the pack have in common, with the meanings that the pack's own lists of words give.</summary>
internal sealed class RuleShapes(KnowledgePack pack)
{
    private const string BasisExample = "S06 for the direction; numbers from memory";

    /// <summary>The lists of words that the pack explains.</summary>
    public KnowledgePack Pack { get; } = pack;

    /// <summary>One word of a closed list; what it means is read from the list under terms/.</summary>
    public JsonObject Words(string description, string list, IEnumerable<string> words)
    {
        TermList? terms = Pack.Terms.FirstOrDefault(one => one.Id == list);
        return Shape.Words(description, words.Select(word => (word, terms?.Words.FirstOrDefault(entry => entry.Word == word).Meaning ?? "")));
    }

    public static JsonObject Basis(string what) =>
        Shape.Text($"Where {what} comes from: ids of sources, or the words from memory, common practice, computed, judgement.", BasisExample);

    /// <summary>Older ids that stay valid in logbooks.</summary>
    public static JsonObject Aliases() => Shape.Either(
        "Older ids that stay valid in logbooks: one, or a list.",
        Shape.Text("An older id."),
        Shape.List("Older ids.", Shape.Text("An older id.")));

    /// <summary>low, likely and high with their unit.</summary>
    public static KeyGroup Range(string description, PackUnit unit, string example = "1") => new KeyGroup(description)
        .Need("low", Shape.Figure("The lowest that is to be expected.", unit, $"{example} {unit.Name}"))
        .Need("likely", Shape.Figure("What is most likely.", unit, $"{example} {unit.Name}"))
        .Need("high", Shape.Figure("The highest that is to be expected.", unit, $"{example} {unit.Name}"));

    /// <summary>Observations, each with one answer.</summary>
    public static JsonObject Answers(string description) => Shape.Map(description, Shape.Text("The answer: its id."));

    public static JsonObject Requirement(string description) => new KeyGroup(description)
        .Need("fix", Shape.Id("The fix that comes first.", "restore-cabin-outlets"))
        .May("unless", Answers("One question with the answer that makes it unnecessary."))
        .Done();

    public static JsonObject Ids(string description, string example) => Shape.List(description, Shape.Id("An id.", example));

    /// <summary>A list of groups under one key, which is all that the file holds.</summary>
    public static JsonObject FileOf(string key, string description, JsonObject item) =>
        new KeyGroup(description).May(key, Shape.List(description, item)).Done();
}
