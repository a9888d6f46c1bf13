using System.Text.Json.Nodes;
using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Rules.Binding;

namespace FixPlanner.Files.Schemas;

/// <summary>A fact in a logbook: its value, a reserved answer, or a value with the day from which it holds.</summary>
internal static class FactShape
{
    private static readonly (string Word, string Meaning)[] Reserved = [("not sure", ""), ("not looked", ""), ("not today", "")];

    public static JsonObject Of(Fact fact) => Shape.Either(
        fact.Ask,
        [.. Values(fact), new KeyGroup("The value with the day from which it holds.")
            .Need("value", Shape.Either(fact.Title, [.. Values(fact)]))
            .May("date", LogbookSchema.Day())
            .Done()]);

    private static IEnumerable<JsonObject> Values(Fact fact) => fact.Kind switch
    {
        FactKind.Choice => [Shape.Words(fact.How, [.. fact.Choices.Select(choice => (choice, "")), .. Reserved])],
        FactKind.YesNo => [Shape.Words(fact.How, [("yes", ""), ("no", ""), .. Reserved]), new() { ["type"] = "boolean" }],
        FactKind.Year => [Shape.Whole(fact.How, (int)(fact.Range?.Low ?? 1800), (int)(fact.Range?.High ?? 2200)), Shape.Words("Not known.", Reserved)],
        _ => [PackUnit.OfFact(fact.Unit) is { } unit ? Shape.Figure(fact.How, unit) : Shape.Text(fact.How), Shape.Words("Not known.", Reserved)],
    };
}
