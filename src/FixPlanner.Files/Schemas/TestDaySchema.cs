using System.Text.Json.Nodes;
using FixPlanner.Files.Rules.Binding;

namespace FixPlanner.Files.Schemas;

/// <summary>The schema of the notes for the day of the test.</summary>
internal static class TestDaySchema
{
    public static JsonObject Of() => new KeyGroup("Weather, order of the day, tufts, paint, cameras, gauge and proof.")
        .Need("basis", RuleShapes.Basis("what is not marked otherwise"))
        .May("principles", Lines("What holds for every test."))
        .May("roles", Named("Who does what."))
        .Need("place", Texts("Where to test.", "best", "road_use").Done())
        .May("windows", Shape.List("The weather that each kind of test needs.", Window()))
        .May("items", Shape.List("What to bring.", Texts("One thing.", "item", "amount", "use").Done()))
        .May("steps", Shape.List("The order of the day.", new KeyGroup("One step.")
            .Need("phase", Shape.Text("The part of the day."))
            .Need("minutes", Minutes())
            .Need("what", Shape.Text("What is done."))
            .Done()))
        .May("tufts", Shape.List("Kinds of tuft.", Tuft()))
        .Need("tuft_rule", Shape.Text("The rule for their length."))
        .Need("tuft_why", Shape.Text("Why."))
        .Need("tuft_basis", RuleShapes.Basis("the rule"))
        .Need("tuft_practice", Texts("How tufts are used.", "count", "speeds", "film").Need("fifty_tufts", Minutes()).Need("basis", RuleShapes.Basis("it")).Done())
        .May("paints", Shape.List("Flow paints.", Texts("One paint.", "name", "mix", "drying").May("gate", Shape.Id("The gate that it concerns.", "flammable-paint")).Done()))
        .May("paint_practice", Named("How paint is used."))
        .May("cameras", Shape.List("Where cameras stand.", Texts("One place.", "position", "sees", "note").May("zones", RuleShapes.Ids("The places that it sees.", "roof-tail")).Done()))
        .Need("manometer", Texts("The water gauge.", "parts", "rule", "read", "safe").May("pairs", Lines("Pairs of places to compare.")).Need("basis", RuleShapes.Basis("it")).Done())
        .May("trained_checks", Lines("What a trained eye looks for."))
        .Need("trained_checks_basis", RuleShapes.Basis("the checks"))
        .Need("verification", Verification())
        .May("mistakes", Shape.List("What spoils a day.", Texts("One mistake.", "id", "mistake", "spoils", "guard").Done()))
        .May("log", Lines("What is written down."))
        .May("cautions", Lines("What can hurt people."))
        .May("default_day", new KeyGroup("An ordinary day.")
            .Need("people", Shape.Figure("How many people.", PackUnit.People, "2 people"))
            .Need("hours", Shape.Figure("How long.", PackUnit.Hours, "4 h"))
            .May("zones", RuleShapes.Ids("The places that are looked at.", "roof-tail"))
            .Need("zone_rule", Shape.Text("How they were chosen."))
            .Need("left_for_another_day", Shape.Text("What is left."))
            .Need("basis", RuleShapes.Basis("it"))
            .Done())
        .Done();

    private static JsonObject Window() => new KeyGroup("The weather for one kind of test.")
        .Need("test", Shape.Text("The test.", "tufts"))
        .Need("wind_max", Shape.Figure("The strongest mean wind.", PackUnit.MetresPerSecond, "3 m/s"))
        .Need("cross_max", Shape.Figure("The strongest wind across.", PackUnit.MetresPerSecond, "2 m/s"))
        .Need("temperature", Shape.Text("The temperature.", "{5 °C} to {30 °C}"))
        .Need("dry", Shape.YesNo("Whether the road must be dry."))
        .Need("best_time", Shape.Text("The best time of the day."))
        .Need("sources", RuleShapes.Basis("it"))
        .Done();

    private static JsonObject Tuft() => new KeyGroup("One kind of tuft.")
        .Need("name", Shape.Text("Its name."))
        .Need("length", Shape.Figure("Its length.", PackUnit.Millimetres, "60 mm"))
        .Need("spacing", Shape.Figure("From one to the next.", PackUnit.Millimetres, "100 mm"))
        .Need("material", Shape.Text("What it is made of."))
        .Need("where", Shape.Text("Where it goes."))
        .Done();

    private static JsonObject Verification() =>
        Texts("How a change is proved.", "plan", "coast_down", "warm_up", "reject", "judge", "noise", "dirt", "temperatures", "marks", "runs", "wind")
            .Need("smallest_change_worth_claiming", Shape.Figure("The smallest change that is worth claiming.", PackUnit.Percent, "3 %"))
            .Need("smallest_change_basis", RuleShapes.Basis("it"))
            .Done();

    private static JsonObject Minutes() => Shape.Figure("How long it takes.", PackUnit.Minutes, "15 min");

    private static JsonObject Lines(string description) => Shape.List(description, Shape.Text("One line."));

    private static JsonObject Named(string description) => Shape.Map(description, Shape.Text("The text."));

    private static KeyGroup Texts(string description, params string[] keys)
    {
        KeyGroup group = new(description);
        foreach (string key in keys)
        {
            group.Need(key, Shape.Text($"{key.Replace('_', ' ')}, in words."));
        }

        return group;
    }
}
