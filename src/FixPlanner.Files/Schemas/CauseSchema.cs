using System.Text.Json.Nodes;
using Known = FixPlanner.Files.Rules.Binding.Words;

namespace FixPlanner.Files.Schemas;

/// <summary>The schema of a cause.</summary>
internal static class CauseSchema
{
    public static JsonObject Of(RuleShapes shapes) => new KeyGroup("A cause: what the air, or something that looks like it, does on the car.")
        .Need("id", Shape.Id("The file name without its ending, in trade words.", "mirror-wake"))
        .May("was", RuleShapes.Aliases())
        .Need("title", Shape.Text("A short name for lists."))
        .Need("what", Shape.Text("What happens."))
        .Need("why", Shape.Text("Why it happens."))
        .Need("kind", shapes.Words("What kind of cause.", "kinds-of-cause", Known.CauseKinds.Keys))
        .May("also_in", RuleShapes.Ids("Other zones that it belongs to; its home is the folder.", "side-glass"))
        .Need("prior", Prior(shapes))
        .May("prior_unknown", Shape.Figure("The same while a fact of applies_when is unknown.", Rules.Binding.PackUnit.Percent, "10 %"))
        .May("prior_if", Shape.List("Other chances on some cars; the first whose condition is met counts.", PriorIf()))
        .May("applies_when", ConditionShape.Ref("The cars that can have it."))
        .May("hurts", Shape.List("What it hurts.", Hurts(shapes)))
        .Need("grows_with_speed", Shape.Text("How it grows with speed."))
        .May("signs", Shape.Map("What speaks for and against it: questions, each with its answers.", Shape.Map(
            "The answers of this question, each with how it speaks.",
            shapes.Words("How strongly the answer speaks.", "strengths", Known.Strengths.Keys))))
        .May("mistaken_for", Shape.Map("Causes that look like it, each with how to tell them apart.", Shape.Text("How to tell them apart.")))
        .May("not_air", Shape.Text("What gives the same signs without any air, and how to rule it out first.", "Worn dampers or soft tyres: bounce each corner, read the gauge."))
        .May("best_look", new KeyGroup("The one look that tells most.")
            .Need("observation", Shape.Id("The question.", "mirror-taped"))
            .Need("why", Shape.Text("What it would tell."))
            .Done())
        .Need("maturity", shapes.Words("How far it has been tried.", "maturity", Known.Maturity.Keys))
        .Need("sources", RuleShapes.Basis("the rule"))
        .Done();

    // A word of the scales, or a percentage; the words are the pack's own, so any word passes here.
    private static JsonObject Prior(RuleShapes shapes) => Shape.Either(
        "The chance that an ordinary old car has it strongly enough to be worth a fix: common, sometimes, rare, or a percentage.",
        Shape.Pattern("A word of scales.yaml.", "^[a-z][a-z -]*$", "common", "sometimes", "rare"),
        Shape.Figure("A percentage.", Rules.Binding.PackUnit.Percent, "15 %"));

    private static JsonObject PriorIf() => new KeyGroup("A chance on some cars.")
        .Need("when", ConditionShape.Ref("Which cars."))
        .May("prior", Shape.Figure("The chance on these.", Rules.Binding.PackUnit.Percent, "30 %"))
        .Done();

    private static JsonObject Hurts(RuleShapes shapes)
    {
        IEnumerable<(string Word, string Meaning)> meanings = shapes.Pack.Terms.Where(list => list.Id is "quantities" or "hurts").SelectMany(list => list.Words);
        return Shape.Words("One thing that it hurts.", Known.Hurts.Keys.Select(word => (word, meanings.FirstOrDefault(entry => entry.Word == word).Meaning ?? "")));
    }
}
