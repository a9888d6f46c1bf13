using System.Text.Json.Nodes;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Physics.Vents;
using FixPlanner.Files.Rules.Binding;
using Known = FixPlanner.Files.Rules.Binding.Words;

namespace FixPlanner.Files.Schemas;

/// <summary>The schema of a fix.</summary>
internal static class FixSchema
{
    public static JsonObject Of(RuleShapes shapes) => new KeyGroup("Work that can be done on the car: what it does, what it costs, what must come first and how to check it.")
        .Need("id", Shape.Id("The file name without its ending, in trade words.", "seal-bonnet-rear-edge"))
        .May("was", RuleShapes.Aliases())
        .Need("title", Shape.Text("A short name for lists.", "Refit the rear bonnet seal"))
        .Need("what", Shape.Text("What is done, so that a mechanic can do it.", "Full-width rubber between lid and scuttle."))
        .May("acts_on", Shape.Map("What it does to which causes.", shapes.Words("What it does to the cause.", "fix-actions", Known.Actions.Keys)))
        .Need("effects", Effects(shapes))
        .Need("cost", RuleShapes.Range("Material for somebody at home; the whole price for professional work.", PackUnit.Euros, "25").Need("basis", RuleShapes.Basis("the cost")).Done())
        .Need("hours", RuleShapes.Range("Hours in a home garage.", PackUnit.Hours, "1.5").Need("basis", RuleShapes.Basis("the time")).Done())
        .Need("materials", Shape.Text("What to buy.", "bulb seal strip, adhesive"))
        .Need("tools", Shape.Text("What to have at hand.", "cleaner, knife"))
        .Need("skill", shapes.Words("Who can do it.", "skills", Known.Skills.Keys))
        .Need("reversible", shapes.Words("Whether it can be undone.", "reversible", Known.Reversible.Keys))
        .May("reversible_note", Shape.Text("What stays when it is undone."))
        .May("trial", Trial(shapes))
        .May("no_trial", Shape.Text("Why no trial is possible."))
        .May("risk", Shape.Text("What it can make worse."))
        .May("conflicts", Shape.Map("Fixes that it gets in the way of; said on one side only.", Conflict(shapes)))
        .May("goes_well_with", Shape.Map("Fixes that go well with it, each with the reason.", Shape.Text("Why.")))
        .May("beforehand", Shape.Text("What comes first, in words."))
        .May("requires", Shape.List("Fixes that come first.", RuleShapes.Requirement("A fix that comes first.")))
        .May("gates", Gates())
        .May("caution", Shape.Text("What can hurt people."))
        .May("legal", Shape.Text("What local rules commonly ask; they differ, and the licensed inspector decides."))
        .May("verify", RuleShapes.Answers("The answers that show that it worked."))
        .Need("sign_off", Shape.Text("Who looks at the work.", "owner"))
        .May("applies_when", ConditionShape.Ref("The cars that it is for."))
        .May("seals_cabin", Shape.YesNo("yes when it closes leaks of the cabin."))
        .May("air_ways", AirWays())
        .May("sealing_exempt", Shape.Text("Why the rule about sealing does not apply to it."))
        .Need("maturity", shapes.Words("How far it has been tried.", "maturity", Known.Maturity.Keys))
        .Done();

    private static JsonObject Effects(RuleShapes shapes)
    {
        KeyGroup group = new("What changes when the cause is there, for each quantity worst, likely and best from the owner's side.");
        foreach ((string word, EffectOn quantity) in Known.Quantities)
        {
            PackUnit unit = EffectsBinder.UnitOf(quantity);
            string meaning = shapes.Pack.Terms.FirstOrDefault(list => list.Id == "quantities")?.Words.FirstOrDefault(entry => entry.Word == word).Meaning ?? word;
            group.May(word, new KeyGroup(meaning)
                .Need("worst", Shape.Figure("The worst that is to be expected; on the wrong side of zero it can backfire.", unit))
                .Need("likely", Shape.Figure("What is most likely.", unit))
                .Need("best", Shape.Figure("The best that is to be expected.", unit))
                .Done());
        }

        return group
            .Need("confidence", Shape.Words("How sure the figures are.", Known.Confidence.Keys.Select(word => (word, ""))))
            .Need("basis", RuleShapes.Basis("the effects"))
            .Done();
    }

    private static JsonObject Trial(RuleShapes shapes)
    {
        JsonObject trial = new KeyGroup("How to try it in card, tape and foam before anything lasting is done.")
            .Need("do", Shape.Text("What to do.", "low-tack tape over the gap for one run"))
            .Need("cost", Shape.Figure("What the trial costs.", PackUnit.Euros, "2 EUR"))
            .Need("hours", Shape.Figure("How long it takes.", PackUnit.Hours, "0.5 h"))
            .May("shows", shapes.Words("The quantity that the trial shows.", "quantities", Known.Quantities.Keys))
            .May("se", Shape.Text("Standard error of what the trial shows, in the unit of that quantity.", "1 dB(A)"))
            .Need("basis", RuleShapes.Basis("the trial"))
            .Done();
        trial["dependencies"] = new JsonObject { ["se"] = Shape.Names("shows") };
        return trial;
    }

    private static JsonObject Conflict(RuleShapes shapes) => new KeyGroup("How the two get in each other's way.")
        .Need("kind", shapes.Words("What kind of conflict.", "conflicts", Known.Conflicts.Keys))
        .Need("why", Shape.Text("Why."))
        .Done();

    private static JsonObject AirWays()
    {
        KeyGroup group = new("What it leaves of the ways of the air: below 100 % it closes, above it opens.");
        foreach (string opening in OldCarVents.Names)
        {
            group.May(opening.Replace(' ', '_'), RuleShapes.Range($"What it leaves of this way: {opening}.", PackUnit.Percent, "25").Done());
        }

        return group.Need("basis", RuleShapes.Basis("the figures")).Done();
    }

    private static JsonObject Gates() => new KeyGroup("Safety gates that this work concerns.")
        .May("before", RuleShapes.Ids("Must be clear before the work begins.", "rear-glass"))
        .May("with_the_work", RuleShapes.Ids("Part of the job; signed before the first drive with the part.", "driver-view"))
        .May("before_fast_use", RuleShapes.Ids("Must be clear before driving faster than now with it.", "overheating"))
        .Done();
}
