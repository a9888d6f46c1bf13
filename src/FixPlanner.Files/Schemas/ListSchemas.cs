using System.Text.Json.Nodes;
using Known = FixPlanner.Files.Rules.Binding.Words;

namespace FixPlanner.Files.Schemas;

/// <summary>The schemas of sources, words and of what usually disappoints.</summary>
internal static class ListSchemas
{
    public static JsonObject Sources(RuleShapes shapes) => RuleShapes.FileOf("sources", "Where figures and rules come from.", new KeyGroup("One source.")
        .Need("id", Shape.Pattern("Its id, by which rules cite it.", "^[A-Za-z0-9-]+$", "S06"))
        .May("was", RuleShapes.Aliases())
        .Need("kind", Shape.Text("What it is.", "magazine article"))
        .Need("grade", shapes.Words("How much it is worth.", "source-grades", Known.Grades.Keys))
        .Need("what", Shape.Text("What it says or holds."))
        .Need("used_for", Shape.Text("What it is used for here."))
        .Need("where", Shape.Text("Where it is to be found."))
        .Need("read", Shape.Text("What of it was read, and what was not.", "abstract; the paper was not read"))
        .May("erratum", Shape.Text("What is wrong in it."))
        .Done());

    public static JsonObject Disappointments() => RuleShapes.FileOf("disappointments", "What people do that usually disappoints.", new KeyGroup("One of them.")
        .Need("id", Shape.Id("Its id.", "bonnet-on-spacers"))
        .May("was", RuleShapes.Aliases())
        .Need("what", Shape.Text("What people do."))
        .Need("why", Shape.Text("Why it disappoints."))
        .Need("do_instead", Shape.Text("What to do instead."))
        .Need("sources", RuleShapes.Basis("it"))
        .Done());

    public static JsonObject Terms() => new KeyGroup("A closed list of words, explained.")
        .Need("title", Shape.Text("What the words are for."))
        .May("words", Shape.Map("Each word with what it means.", Shape.Text("What it means.")))
        .May("runs", Shape.List("Kinds of run.", new KeyGroup("A kind of run.")
            .Need("id", Shape.Id("Its id.", "coast-down"))
            .May("was", RuleShapes.Aliases())
            .Need("title", Shape.Text("What it is."))
            .May("part_of", RuleShapes.Ids("Kinds that it belongs to.", "any-run"))
            .Done()))
        .Done();
}
