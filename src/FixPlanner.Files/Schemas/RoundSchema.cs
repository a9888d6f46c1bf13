using System.Text.Json.Nodes;
using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Logbooks;

namespace FixPlanner.Files.Schemas;

/// <summary>The part of a logbook's schema for one look or drive.</summary>
internal static class RoundSchema
{
    private static readonly (string Word, string Meaning)[] Reserved =
        [("not looked", "nobody has looked"), ("not sure", "somebody looked and cannot say"), ("not today", "for the next drive")];

    public static JsonObject Of(KnowledgePack pack) => new KeyGroup("One look or drive in one configuration of the car.")
        .Need("id", Shape.Text("Its name.", "first-look"))
        .May("date", LogbookSchema.Day())
        .May("fitted", LogbookSchema.FixList("What was on the car that day."))
        .May("weather", Weather())
        .May("facts", LogbookSchema.Facts(pack, FactScope.State, new("What held that day.")))
        .May("findings", Shape.List("What was found.", Finding(pack)))
        .May("note", Shape.Text("A note."))
        .Done();

    private static JsonObject Weather() => LogbookReader.Weather.Aggregate(new KeyGroup("The weather, in your own words."), (group, key) => group.May(key, Shape.Text("What it was."))).Done();

    private static JsonObject Finding(KnowledgePack pack)
    {
        JsonObject finding = new KeyGroup("One question with its answer.")
            .Need("observation", Shape.Words("The question.", pack.Observations.SelectMany(one =>
                one.Aliases.Select(older => (older, $"older name of {one.Id}")).Prepend((one.Id, one.Question)))))
            .Need("answer", Shape.Text("The answer."))
            .May("hesitant", Shape.Either("true when not quite sure, or how sure from 0 to 1.", Shape.Words("In a word.", [("yes", ""), ("no", "")]), new() { ["type"] = "boolean" }, Shape.PureNumber("As a number.", 0, 1)))
            .May("place", Shape.Text("Where."))
            .May("speed", Shape.Text("At which speed.", "100 km/h"))
            .May("photo", Shape.Text("A photo, or a film and its time.", "left-door.mp4 at 2:10"))
            .May("note", Shape.Text("A note."))
            .Done();
        finding["allOf"] = new JsonArray([.. pack.Observations.Select(one =>
            LogbookSchema.OnlyFor("observation", one.Id, "answer", one.Answers.Select(answer => (answer.Id, answer.Text)).Concat(Reserved)))]);
        return finding;
    }
}
