using System.Text.Json.Nodes;
using FixPlanner.Files.Rules.Binding;
using Known = FixPlanner.Files.Rules.Binding.Words;

namespace FixPlanner.Files.Schemas;

/// <summary>The schemas of the questions about the car and of the body templates.</summary>
internal static class CarSchemas
{
    public static JsonObject Facts(RuleShapes shapes)
    {
        JsonObject fact = new KeyGroup("One fact about the car, its state or the plan.")
            .Need("id", Shape.FactId("Its id; a number ends in its unit.", "top_speed_now_kmh"))
            .May("was", RuleShapes.Aliases())
            .Need("title", Shape.Text("A short name."))
            .Need("ask", Shape.Text("The question."))
            .Need("why", Shape.Text("Why it is asked, in one sentence."))
            .Need("how", Shape.Text("How to find out."))
            .Need("kind", Shape.Words("What its value is.", Known.FactKinds.Keys.Select(word => (word, ""))))
            .May("choices", Shape.List("The values that a choice can have.", Shape.Text("A value.")))
            .May("unit", Shape.Text("The unit of a number.", "km/h"))
            .May("range", new KeyGroup("Values outside are refused as slips of the pen.")
                .Need("low", Shape.Text("The lowest, with its unit; a year without."))
                .Need("high", Shape.Text("The highest, with its unit; a year without."))
                .Done())
            .Need("scope", shapes.Words("What it belongs to.", "facts-scopes", Known.Scopes.Keys))
            .Need("asked", Shape.Pattern(
                "When it is asked.",
                "^(opening [0-9]+|with opening [0-9]+|before you drive|in zone [a-z][a-z0-9-]*|with fix|with run|worked out)$",
                "opening 1",
                "with opening 1",
                "before you drive",
                "in zone roof",
                "with fix",
                "with run",
                "worked out"))
            .May("fill_from_template", Shape.YesNo("yes when the body template fills a usual range."))
            .May("then_ask", Shape.List("Facts or questions that follow at once.", Shape.Text("A fact or a question.")))
            .May("fills_in", new KeyGroup("An observation that it answers as well.")
                .Need("observation", Shape.Id("The observation.", "tail-slope"))
                .May("answers", Shape.Map("For each choice the answer that follows.", Shape.Text("The answer.")))
                .Done())
            .May("worked_out", Shape.Text("How it is worked out from others."))
            .Done();
        fact["allOf"] = new JsonArray(OnlyFor("choice", "choices"), OnlyFor("number", "unit"));
        return new KeyGroup("Questions about the car, its state and the plan.")
            .Need("basis", RuleShapes.Basis("the ranges"))
            .May("facts", Shape.List("Questions about the car, its state and the plan.", fact))
            .Done();
    }

    public static JsonObject Templates()
    {
        KeyGroup template = new KeyGroup("What is usual for one shape of body.")
            .Need("body_style", Shape.Text("The shape, as the fact body_style has it.", "notchback"));
        foreach ((string key, (string _, PackUnit unit, double _)) in FactBinder.TemplateKeys)
        {
            template.May(key, RuleShapes.Range($"Usual {key.Replace('_', ' ')}.", unit).Done());
        }

        return RuleShapes.FileOf("templates", "Usual sizes by body shape.", template.Need("basis", RuleShapes.Basis("the template")).Done());
    }

    // A choice needs its choices and a number its unit; elsewhere these keys mean nothing.
    private static JsonObject OnlyFor(string kind, string key) => new()
    {
        ["if"] = new JsonObject { ["properties"] = new JsonObject { ["kind"] = new JsonObject { ["const"] = kind } }, ["required"] = Shape.Names("kind") },
        ["then"] = Shape.Requires(key),
        ["else"] = new JsonObject { ["properties"] = new JsonObject { [key] = false } },
    };
}
