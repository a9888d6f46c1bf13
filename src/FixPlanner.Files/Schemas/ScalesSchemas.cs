using System.Text.Json.Nodes;
using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Rules.Binding;
using Known = FixPlanner.Files.Rules.Binding.Words;

namespace FixPlanner.Files.Schemas;

/// <summary>The schemas of pack.yaml and scales.yaml.</summary>
internal static class ScalesSchemas
{
    public static JsonObject Head() => new KeyGroup("What the pack is called and what holds for all of it.")
        .Need("id", Shape.Text("Its id.", "old-boxy-cars"))
        .Need("version", Shape.Text("Its version."))
        .Need("title", Shape.Text("A short name."))
        .Need("what", Shape.Text("What it is about."))
        .Need("legal_note", Shape.Text("What stands where a fix has no legal note of its own."))
        .Need("sizes_basis", RuleShapes.Basis("a size in the words of a fix or a trial"))
        .Need("sealing", new KeyGroup("The rule about sealing the cabin.")
            .Need("why", Shape.Text("Why."))
            .Need("gate", Shape.Id("The gate of the glass.", "rear-glass"))
            .Need("outlet", RuleShapes.Requirement("The way out for air that comes first."))
            .Need("glass_load_worst", Shape.Figure("How much the load on the glass may grow.", PackUnit.Percent, "35 %"))
            .Need("counted", Shape.Text("How often it counts."))
            .Need("basis", RuleShapes.Basis("it"))
            .Done())
        .Done();

    public static JsonObject Scales(RuleShapes shapes) => new KeyGroup("How strong the words are, what aims there are and which change is worth a point.")
        .Need("strengths", Strengths())
        .Need("strengths_basis", RuleShapes.Basis("the strengths"))
        .Need("same_group_power", Shape.PureNumber("The power of the ratios of further answers of one group.", 0, 1))
        .Need("same_group_rule", Shape.Text("The same in words."))
        .Need("low_repeatability_rule", Shape.Text("What low repeatability does, in words."))
        .Need("priors", new KeyGroup("The words for priors.")
            .May("words", Shape.Map("Each word with its chance.", Shape.Figure("A percentage.", PackUnit.Percent, "20 %")))
            .Need("meaning", Shape.Text("What a prior is."))
            .Need("order", Shape.Text("Which prior counts."))
            .Need("size", Shape.Text("How they were set."))
            .Need("no_double_count", Shape.Text("What must not count twice."))
            .Need("basis", RuleShapes.Basis("the priors"))
            .Done())
        .May("aims", Shape.List("What an owner can want.", new KeyGroup("One aim.")
            .Need("id", Shape.Text("Its id, as logbooks write it.", "clean_glass"))
            .Need("title", Shape.Text("What it is."))
            .Need("quantities", Shape.List("What counts for it.", shapes.Words("A quantity.", "quantities", Known.Quantities.Keys)))
            .Done()))
        .Need("worthwhile_steps", Steps())
        .Need("worthwhile_steps_basis", RuleShapes.Basis("the steps"))
        .Need("effect_order", Shape.Text("How effects are written."))
        .Done();

    private static JsonObject Strengths()
    {
        KeyGroup group = new("The ratio that each strength stands for.");
        foreach (string word in Known.StrengthNames.Keys)
        {
            group.Need(word, new KeyGroup("The ratios of this strength.")
                .Need("for", Shape.PureNumber("How many times more often the answer is given with the cause.", 1, 1000))
                .Need("against", Shape.PureNumber("The same for an answer against it.", 0.001, 1))
                .Done());
        }

        return group.Done();
    }

    private static JsonObject Steps()
    {
        KeyGroup group = new("The change of each quantity that is worth one point.");
        foreach ((string word, EffectOn quantity) in Known.Quantities)
        {
            group.Need(word, Shape.Figure("The change that is worth one point.", quantity == EffectOn.Drag ? PackUnit.SquareMetres : EffectsBinder.UnitOf(quantity)));
        }

        return group.Done();
    }
}
