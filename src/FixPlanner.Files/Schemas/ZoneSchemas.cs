using System.Text.Json.Nodes;
using FixPlanner.Files.Rules.Binding;
using Known = FixPlanner.Files.Rules.Binding.Words;

namespace FixPlanner.Files.Schemas;

/// <summary>The schemas of a place on the car and of its questions.</summary>
internal static class ZoneSchemas
{
    public static JsonObject Zone() => new KeyGroup("A place on the car: good flow, bad flow, where tufts go, what misleads.")
        .Need("id", Shape.Id("The name of its folder.", "roof-tail"))
        .May("was", RuleShapes.Aliases())
        .Need("order", Shape.Whole("Place in the walk round the car.", 1, 999))
        .Need("title", Shape.Text("A short name."))
        .Need("good_flow", Shape.Text("What tufts and paint show when all is well."))
        .Need("tufts_when_bad", Shape.Text("What tufts show when it is not."))
        .Need("paint_when_bad", Shape.Text("What paint shows when it is not."))
        .May("look_at", Shape.List("What to look at with the car parked.", Shape.Text("One thing.")))
        .Need("tuft_placing", Shape.Text("Where tufts go."))
        .May("tuft_pattern", new KeyGroup("The tufts of this place, counted.")
            .Need("what", Shape.Text("The pattern.", "3 x 3 behind the mirror"))
            .Need("count", Shape.Figure("How many.", PackUnit.Tufts, "9 tufts"))
            .Need("minutes", Shape.Figure("How long it takes to stick them.", PackUnit.Minutes, "3 min"))
            .Need("default_day", Shape.YesNo("Whether they belong to an ordinary day."))
            .Done())
        .May("traps", Shape.List("What misleads here.", Shape.Text("One trap.")))
        .May("pressure_hint", Shape.Text("Where a water gauge helps."))
        .Need("sources", RuleShapes.Basis("its figures"))
        .Done();

    public static JsonObject Observations(RuleShapes shapes) => RuleShapes.FileOf(
        "observations",
        "Questions of a place, in walking order.",
        new KeyGroup("One question.")
            .Need("id", Shape.Id("Its id, in trade words.", "mirror-taped"))
            .May("was", RuleShapes.Aliases())
            .Need("question", Shape.Text("The question."))
            .Need("why", Shape.Text("Why it is asked, in one sentence."))
            .Need("how", Shape.Text("How to find out, and what to take care of."))
            .May("answers", Answers())
            .Need("noticed_by", shapes.Words("What notices it.", "noticed-by", Known.NoticedBy.Keys))
            .Need("evidence_group", Shape.Text("Questions of one group are not independent; the strongest counts in full.", "mirror"))
            .Need("when", shapes.Words("By when it can be looked at.", "when", Known.When.Keys))
            .Need("effort", Shape.Figure("How long it takes.", PackUnit.Minutes, "5 min"))
            .May("speed", Shape.Text("At which speed.", "{90 km/h} to {110 km/h}"))
            .Need("repeatability", shapes.Words("How well two people looking twice would agree.", "repeatability", Known.Repeatability.Keys))
            .May("ordered", Shape.YesNo("yes when the answers stand in order, from one end to the other."))
            .May("private_ground", Shape.YesNo("yes when it may only be done on private ground."))
            .May("who", Shape.Text("Who looks."))
            .May("state", Shape.Text("The state that the car must be in."))
            .May("applies_when", ConditionShape.Ref("The cars that it is asked for."))
            .May("replaced_by_model", Shape.YesNo("yes when a model of the shape answers it."))
            .May("spoils_round", Shape.List("Answers that say that wind, tufts or paint were at fault.", Shape.Text("An answer.")))
            .May("trap", Shape.Text("What misleads."))
            .Need("sources", RuleShapes.Basis("it"))
            .Done());

    private static JsonObject Answers()
    {
        JsonObject answers = Shape.Map("At least two answers: id and text.", Shape.Either(
            "The text of the answer; or text and how often it is given on an ordinary car.",
            Shape.Text("The text."),
            new KeyGroup("Text and how usual it is.")
                .Need("text", Shape.Text("The text."))
                .May("usual", Shape.Figure("How often it is given on an ordinary car.", PackUnit.Percent, "60 %"))
                .May("grid", Shape.List("Shapes of a tuft grid that give this answer.", Shape.Words("A shape.", Known.GridShapes.Keys.Select(word => (word, "")))))
                .Done()));
        answers["minProperties"] = 2;
        return answers;
    }
}
