using System.Text.Json.Nodes;
using FixPlanner.Files.Rules.Binding;
using Known = FixPlanner.Files.Rules.Binding.Words;

namespace FixPlanner.Files.Schemas;

/// <summary>The schema of a safety gate.</summary>
internal static class GateSchema
{
    public static JsonObject Of(RuleShapes shapes) => new KeyGroup("A safety gate: what is dangerous, what it holds, and who may sign that it is put right.")
        .Need("id", Shape.Id("The file name without its ending.", "rear-glass"))
        .May("was", RuleShapes.Aliases())
        .Need("order", Shape.Whole("Place among the gates; lower comes first.", 1, 999))
        .Need("title", Shape.Text("A short name for lists."))
        .Need("what", Shape.Text("What triggers it, in words."))
        .Need("why", Shape.Text("What would happen."))
        .Need("level", shapes.Words("How hard it holds.", "gate-levels", Known.Levels.Keys))
        .Need("decided_by", shapes.Words("What decides about it.", "decided-by", Known.DecidedBy.Keys))
        .May("is_glass", Shape.YesNo("yes for the gate of the rear glass, which stands ahead of all others but a stop."))
        .May("figures", Shape.List("Figures computed for the car that stand with it; they clear nothing.", shapes.Words("Which figures.", "gate-figures", Known.GateFigures.Keys)))
        .May("must_know", MustKnow())
        .May("triggers", new KeyGroup("What puts it in force; any one is enough.")
            .May("answers", Shape.Map("Questions, each with the answers that trigger.", TriggerAnswers()))
            .May("facts", Shape.List("Conditions that trigger.", ConditionShape.Ref("A condition that triggers.")))
            .Done())
        .Need("concerned_when", new KeyGroup("When it is of concern at all.")
            .May("always", Shape.YesNo("Always."))
            .May("fixes", Shape.YesNo("When a planned fix names it or is blocked by it."))
            .May("faster", Shape.YesNo("When faster running than now is planned."))
            .May("runs", RuleShapes.Ids("When one of these kinds of run is planned.", "tufts"))
            .May("facts", Shape.List("When one of these conditions is met.", ConditionShape.Ref("A condition.")))
            .Done())
        .Need("action", Shape.Text("What to do."))
        .May("blocks", Blocks())
        .May("helped_by", RuleShapes.Ids("Fixes that help to clear it.", "new-rear-glass-rubber"))
        .May("sign_offs", Shape.List("What clears it, in order; the last lifts all.", SignOff(shapes)))
        .Need("sources", RuleShapes.Basis("the gate"))
        .Done();

    private static JsonObject MustKnow()
    {
        JsonObject entry = Way("A fact or an observation that must be known.")
            .May("or", Shape.List("Other ways to know it.", OneOfBoth(Way("Another way to know it.").Done())))
            .Done();
        JsonObject list = Shape.List("At most three things that must be known before it can be clear.", OneOfBoth(entry));
        list["maxItems"] = 3;
        return list;
    }

    private static KeyGroup Way(string description) => new KeyGroup(description)
        .May("fact", Shape.FactId("A fact.", "rear_glass_hold"))
        .May("observation", Shape.Id("An observation.", "glass-push"))
        .May("only", Shape.Text("Only this value makes it known."));

    private static JsonObject OneOfBoth(JsonObject group)
    {
        group["oneOf"] = new JsonArray(Shape.Requires("fact"), Shape.Requires("observation"));
        return group;
    }

    private static JsonObject TriggerAnswers() => Shape.Either(
        "One answer, or a list.",
        Shape.Text("An answer."),
        Shape.List("Answers.", Shape.Text("An answer.")));

    private static JsonObject Blocks() => new KeyGroup("What it holds while in force.")
        .May("runs", RuleShapes.Ids("Kinds of run that must wait.", "faster"))
        .May("runs_if", Shape.List("Kinds of run that must wait in some cases.", new KeyGroup("A kind of run in some cases.")
            .Need("run", Shape.Id("The kind of run.", "any-run"))
            .Need("when", Shape.Text("In which case, in words."))
            .Done()))
        .May("fixes", Shape.Either(
            "Fixes that must wait: a list, or all.",
            Shape.Words("Every fix.", [("all", "")]),
            RuleShapes.Ids("Fixes.", "new-door-seals")))
        .Done();

    private static JsonObject SignOff(RuleShapes shapes) => new KeyGroup("One sign-off.")
        .Need("kind", Shape.Text("Its name, as logbooks write it.", "retained"))
        .Need("by", Shape.Text("Who may sign.", "glass technician"))
        .Need("evidence", Shape.Text("What must have been seen or done."))
        .Need("lapses_when", Shape.Text("When it no longer counts, in words."))
        .May("valid", Shape.Figure("How long it counts.", PackUnit.Months, "12 months"))
        .May("lapses_on_fixes", RuleShapes.Ids("Fixes after which it no longer counts.", "bond-rear-glass"))
        .May("lapses_if_raised", Shape.List("Facts that end it when they are raised.", Shape.FactId("A fact.", "top_speed_planned_kmh")))
        .Need("lifts", Shape.List("What it lifts: all, fixes, or kinds of run.", Shape.Id(Lifts(shapes), "all", "fixes", "stepped")))
        .May("needs_runs", RuleShapes.Ids("Runs that it is signed on.", "stepped"))
        .May("after_fixes", RuleShapes.Ids("One of these is done first.", "new-rear-glass-rubber"))
        .May("needs_gates", RuleShapes.Ids("Gates that must be clear first.", "brakes"))
        .Done();

    private static string Lifts(RuleShapes shapes) =>
        string.Join("; ", shapes.Pack.Terms.Where(list => list.Id == "lifts").SelectMany(list => list.Words).Select(entry => $"{entry.Word}: {entry.Meaning}"));
}
