using System.Text.Json.Nodes;
using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Rules.Binding;

namespace FixPlanner.Files.Schemas;

/// <summary>A condition: one test of a fact or an observation, or <c>all</c> of several.</summary>
internal static class ConditionShape
{
    private const string Condition = "condition";
    private const string Test = "test";

    private static readonly Dictionary<Comparison, string> Meanings = new Dictionary<Comparison, string>
    {
        [Comparison.Is] = "It is this.",
        [Comparison.IsNot] = "It is known and is not this.",
        [Comparison.In] = "It is one of these.",
        [Comparison.NotIn] = "It is known and is none of these.",
        [Comparison.AtLeast] = "It is this or more; a figure with its unit, or another fact.",
        [Comparison.Above] = "It is more than this; a figure with its unit, or another fact.",
        [Comparison.AtMost] = "It is this or less; a figure with its unit, or another fact.",
        [Comparison.Below] = "It is less than this; a figure with its unit, or another fact.",
        [Comparison.AgeAtLeast] = "It is this old or older.",
        [Comparison.AgeAbove] = "It is older than this.",
        [Comparison.AgeBelow] = "It is younger than this.",
        [Comparison.IsUnknown] = "Nobody knows it.",
    };

    /// <summary>A condition under a key.</summary>
    public static JsonObject Ref(string description) => new() { ["description"] = description, ["allOf"] = new JsonArray(Shape.Ref(Condition)) };

    /// <summary>What <see cref="Ref"/> points to.</summary>
    public static JsonObject Definitions() => new()
    {
        [Condition] = new JsonObject
        {
            ["type"] = "object",
            ["if"] = Shape.Requires("all"),
            ["then"] = new KeyGroup("All of these must be met.").May("all", Shape.List("Tests that must all be met.", Shape.Ref(Test))).Done(),
            ["else"] = Shape.Ref(Test),
        },
        [Test] = OneTest(),
    };

    private static JsonObject OneTest()
    {
        KeyGroup group = new KeyGroup("One test of a fact or of an observation.")
            .May("fact", Shape.FactId("The fact that is tested.", "engine_cooling"))
            .May("observation", Shape.Id("The observation that is tested.", "glass-push"))
            .May("unknown_counts", Shape.YesNo("yes lets a value that nobody knows count as met."));
        foreach ((string word, Comparison comparison) in ConditionBinder.Comparisons)
        {
            group.May(word, Shape.Either(
                Meanings[comparison],
                Shape.Text("A word, or a figure with its unit."),
                Shape.List("Several.", Shape.Text("A word, or a figure with its unit.")),
                new KeyGroup("Another fact.").Need("fact", Shape.FactId("The fact to compare with.", "top_speed_as_built_kmh")).Done()));
        }

        JsonObject test = group.Done();
        test["allOf"] = new JsonArray(
            new JsonObject { ["oneOf"] = new JsonArray(Shape.Requires("fact"), Shape.Requires("observation")) },
            new JsonObject { ["oneOf"] = new JsonArray([.. ConditionBinder.Comparisons.Keys.Select(Shape.Requires)]) });
        return test;
    }
}
