using System.Text.Json.Nodes;
using FixPlanner.Files.Rules.Binding;
using FixPlanner.Files.Rules.Cases;

namespace FixPlanner.Files.Schemas;

/// <summary>The schema of situations that must, and must not, lead somewhere.</summary>
internal static class CaseSchema
{
    public static JsonObject Of() => RuleShapes.FileOf("cases", "Situations in plain words, and what must come out of them.", new KeyGroup("One situation.")
        .Need("case", Shape.Text("The situation in a sentence.", "Big square mirrors roar on both sides"))
        .May("given", Given())
        .May("expect", Outcome("What must come out."))
        .May("expect_not", Outcome("What must not come out."))
        .Done());

    private static JsonObject Given() => new KeyGroup("What is known.")
        .May("facts", Shape.Map("Facts, each with its value.", Shape.Text("The value.")))
        .May("seen", RuleShapes.Answers("Questions, each with its answer."))
        .May("aims", Shape.Map("Aims, each with its weight.", Shape.PureNumber("0 to 3.", 0, 3)))
        .May("budget", Shape.Figure("The money; 600 EUR when it is not said.", PackUnit.Euros, "180 EUR"))
        .May("hours", Shape.Figure("The hours; 30 h when it is not said.", PackUnit.Hours, "20 h"))
        .May("planned", RuleShapes.Ids("Fixes that are planned.", "new-door-seals"))
        .May("never", RuleShapes.Ids("Fixes that the owner does not want.", "take-rack-off"))
        .May("runs", RuleShapes.Ids("Kinds of run that are planned.", "tufts"))
        .May("signed_off", Shape.Map("Gates that are signed off, each with the kind of sign-off.", Shape.Text("The kind.")))
        .Done();

    private static JsonObject Outcome(string description)
    {
        KeyGroup states = new("Gates by their state.");
        foreach (string state in CaseOutcome.GateStates)
        {
            states.May(state, RuleShapes.Ids($"Gates that are {state}.", "rear-glass"));
        }

        return new KeyGroup(description)
            .May("likely", RuleShapes.Ids("Causes at 50 % or more.", "mirror-wake"))
            .May("near_top", RuleShapes.Ids("Causes among the first five.", "mirror-wake"))
            .May("doubted", RuleShapes.Ids("Causes below what they are on an ordinary car.", "mirror-wake"))
            .May("plan", RuleShapes.Ids("Fixes in the plan.", "seal-mirror-foot"))
            .May("held", RuleShapes.Ids("Fixes in the plan that something holds.", "new-door-seals"))
            .May("open", RuleShapes.Ids("Fixes that nothing rules out.", "smaller-mirrors"))
            .May("left_out", RuleShapes.Ids("Fixes that a gate or the car rules out.", "new-door-seals"))
            .May("gates", states.Done())
            .Done();
    }
}
