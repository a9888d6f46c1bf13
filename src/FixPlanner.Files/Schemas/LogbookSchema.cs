using System.Text.Json.Nodes;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Rules.Binding;

namespace FixPlanner.Files.Schemas;

/// <summary>
/// The JSON Schema of a logbook: the facts, questions, answers, fixes and gates of the pack that the program runs with,
/// so that an editor offers them and marks slips. It lies beside the logbook, whose first line names it.
/// </summary>
public static class LogbookSchema
{
    /// <summary>Name of the file beside a logbook.</summary>
    public const string FileName = "logbook.schema.json";

    private const string FixIds = "fix";
    private const string GateIds = "gate";

    /// <summary>The first line of a logbook, by which editors find its schema.</summary>
    public static string FirstLine { get; } = RuleSchemas.Line(FileName);

    /// <summary>The schema.</summary>
    /// <param name="pack">The pack whose ids logbooks use.</param>
    /// <returns>Its text.</returns>
    public static string Text(KnowledgePack pack)
    {
        JsonObject whole = RuleSchemas.Whole("Logbook of a car", Body(pack));
        whole["definitions"] = new JsonObject
        {
            [FixIds] = Ids("A fix.", pack.Fixes.Select(fix => (fix.Id, fix.Title, fix.Aliases))),
            [GateIds] = Ids("A safety gate.", pack.Gates.Select(gate => (gate.Id, gate.Title, gate.Aliases))),
        };
        return RuleSchemas.Text(whole);
    }

    private static JsonObject Body(KnowledgePack pack) => new KeyGroup("All that is known of one car. The program changes single lines and keeps everything else as it was written.")
        .Need("logbook", Shape.Whole("The form of the file.", 1, 1))
        .May("pack", new KeyGroup("The rules that it was written with.").May("id", Shape.Text("Their id.")).May("version", Shape.Text("Their version.")).Done())
        .May("car", Facts(pack, FactScope.Vehicle, new KeyGroup("What does not change from day to day.").May("name", Shape.Text("The name of the car."))))
        .May("aims", Aims(pack))
        .May("limits", Limits(pack))
        .May("rounds", Shape.List("Looks and drives, each in one configuration of the car.", RoundSchema.Of(pack)))
        .May("readings", Shape.List("What was measured; the files are named, not copied in.", Reading()))
        .May("work", Shape.List("Fixes that are planned, tried, fitted or taken off.", Work(pack)))
        .May("sign_offs", Shape.List("Gates that were signed off.", SignOff(pack)))
        .May("read", Shape.List("Gates that were read; this clears nothing.", new KeyGroup("One of them.").Need("gate", Shape.Ref(GateIds)).May("date", Day()).Done()))
        .May("currency", new KeyGroup("How money is shown; the logbook itself keeps EUR.")
            .Need("code", Shape.Text("The code.", "CHF"))
            .Need("per_eur", Shape.PureNumber("How much of it one EUR is.", 1e-6, 1e9))
            .May("date", Day())
            .Done())
        .May("notes", [])
        .Done();

    internal static JsonObject Day() => Shape.Pattern("Year, month, day.", "^[0-9]{4}-[0-9]{2}-[0-9]{2}$", "2026-05-09");

    /// <summary>Facts of one scope as keys of a group, each with its question.</summary>
    internal static JsonObject Facts(KnowledgePack pack, FactScope scope, KeyGroup group)
    {
        Fact[] facts = [.. pack.Facts.Where(fact => fact.Scope == scope)];
        foreach (Fact fact in facts)
        {
            group.May(fact.Id, FactShape.Of(fact));
        }

        JsonObject done = group.Done();
        string[] older = [.. facts.SelectMany(fact => fact.Aliases)];
        if (older.Length > 0)
        {
            done["patternProperties"] = new JsonObject { [$"^({string.Join('|', older)})$"] = new JsonObject { ["description"] = "An older name." } };
        }

        return done;
    }

    internal static JsonObject FixList(string description) => Shape.List(description, Shape.Ref(FixIds));

    private static JsonObject Ids(string description, IEnumerable<(string Id, string Title, IReadOnlyList<string> Aliases)> all) =>
        Shape.Words(description, all.SelectMany(one => one.Aliases.Select(older => (older, $"older name of {one.Id}")).Prepend((one.Id, one.Title))));

    private static JsonObject Aims(KnowledgePack pack)
    {
        KeyGroup group = new("What matters to the owner, from 0 to 3.");
        foreach (Aim aim in pack.Scales.Aims)
        {
            group.May(aim.Id, Shape.PureNumber($"{aim.Title}: 0 not at all, 3 most.", 0, 3));
        }

        return group.Done();
    }

    private static JsonObject Limits(KnowledgePack pack) => Facts(pack, FactScope.Plan, new KeyGroup("Money, time and what must stay.")
        .May("budget", Money("What may be spent.", "180 EUR"))
        .May("hours", Hours("The hours that there are.", "20 h"))
        .May("skill", Shape.Words("What the owner can do.", Enum.GetValues<Skill>().Select(skill => (skill.ToString().ToLowerInvariant(), Core.Interview.Words.Of(skill)))))
        .May("stays_original", Shape.List(
            "Zones or fixes where nothing lasting may be done.",
            Ids("A zone or a fix.", pack.Zones.Select(zone => (zone.Id, zone.Title, zone.Aliases)).Concat(pack.Fixes.Select(fix => (fix.Id, fix.Title, fix.Aliases))))))
        .May("must", FixList("Fixes that are wanted in any case."))
        .May("never", FixList("Fixes that are not wanted."))
        .May("runs", Shape.List("Kinds of run that are planned.", Shape.Words("A kind of run.", pack.Scales.RunKinds.Select(run => (run.Id, run.Title))))));

    private static JsonObject Reading() => new KeyGroup("One measurement.")
        .May("id", Shape.Text("Its name, made by the program.", "sound-1"))
        .Need("kind", Shape.Words("What was measured.", ReadingKinds.All.Select(kind => (kind, ""))))
        .May("date", Day())
        .May("place", Shape.Text("The zone of a tuft grid, the place of a gauge, the axle of a ride height.", "roof-tail"))
        .May("speed", Shape.Figure("Speed at which it was read.", new PackUnit("km/h", UnitKind.Speed), "80 km/h"))
        .May("photo", Shape.Text("Photo or film, and the time in it.", "roof.mp4 at 1:10"))
        .May("planned", Shape.Text("The change sought, with its unit.", "0.03 m2"))
        .May("axle_rate", Shape.Figure("Force for each rise of the axle.", new PackUnit("N/mm", UnitKind.ForcePerLength), "45 N/mm"))
        .May("files", Shape.List("Its files.", Shape.Text("A file, from this folder on.")))
        .May("fix", Shape.Ref(FixIds))
        .May("fitted", Shape.List("Fixes that were on the car.", Shape.Ref(FixIds)))
        .May("values", Shape.List("Values in the order in which they were read.", Shape.Text("A value with its unit.", "before 71.5 dB(A) at 100 km/h")))
        .May("grid", Shape.List("Rows of a tuft grid, the first that the air meets on top.", Shape.Pattern("One letter a tuft: s, w, l, r, a point.", "^[swlrSWLR.]+$", "sswlr")))
        .May("note", Shape.Text("A note."))
        .May("result", new KeyGroup("What came out.")
            .Need("on", Shape.Text("The quantity.", "drag_area_m2"))
            .Need("estimate", Shape.PureNumber("The change.", -1e6, 1e6))
            .Need("low", Shape.PureNumber("The low end of its 95 % interval.", -1e6, 1e6))
            .Need("high", Shape.PureNumber("The high end.", -1e6, 1e6))
            .May("before", Shape.PureNumber("The mean before the change.", -1e6, 1e6))
            .Need("verdict", Shape.Words("What that shows.", Enum.GetValues<Verdict>().Select(verdict => (verdict.Key(), ""))))
            .Done())
        .Done();

    private static JsonObject Work(KnowledgePack pack) => new KeyGroup("One fix.")
        .Need("fix", Shape.Ref(FixIds))
        .Need("state", Shape.Words("How far it is.", Enum.GetValues<WorkState>().Select(state => (state.ToString().ToLowerInvariant(), ""))))
        .May("date", Day())
        .May("spent", Money("What was spent.", "25 EUR"))
        .May("hours", Hours("How long it took.", "2 h"))
        .May("note", Shape.Text("A note."))
        .May("facts", Facts(pack, FactScope.Fix, new("What is known of this work.")))
        .Done();

    private static JsonObject SignOff(KnowledgePack pack)
    {
        JsonObject signed = new KeyGroup("One sign-off: who looked, when, and what was seen.")
            .Need("gate", Shape.Ref(GateIds))
            .Need("kind", Shape.Text("Which sign-off of the gate."))
            .Need("by", Shape.Text("Who signed."))
            .May("role", Shape.Text("As what."))
            .May("date", Day())
            .Need("evidence", Shape.Text("What was seen or done."))
            .Done();
        signed["allOf"] = new JsonArray([.. pack.Gates.Select(gate => OnlyFor("gate", gate.Id, "kind", gate.SignOffs.Select(one => (one.Kind, one.By))))]);
        return signed;
    }

    /// <summary>Where one key names something, the words that another may have.</summary>
    internal static JsonObject OnlyFor(string key, string id, string other, IEnumerable<(string Word, string Meaning)> words) => new()
    {
        ["if"] = new JsonObject { ["properties"] = new JsonObject { [key] = new JsonObject { ["const"] = id } }, ["required"] = Shape.Names(key) },
        ["then"] = new JsonObject { ["properties"] = new JsonObject { [other] = Shape.Words("", words) } },
    };

    private static JsonObject Money(string description, string example) => Shape.Figure(description, PackUnit.Euros, example);

    private static JsonObject Hours(string description, string example) => Shape.Figure(description, new PackUnit("h", UnitKind.Duration), example);
}
