using FixPlanner.Core.Quantities;
using FixPlanner.Files.Problems;

namespace FixPlanner.Files;

internal static partial class Messages
{
    public static Problem NotALogbook(Place place) => new(
        "FP1201", Severity.Error, place, "this is not a logbook", "a logbook begins with its version, so that later versions can still read it", "begin the file with: logbook: 1");

    public static Problem NewerLogbook(Place place, string version) => new(
        "FP1202", Severity.Error, place, $"this logbook is of version {version}, newer than this program", "a newer version may hold answers that this program would not understand; it is left as it is", "use a newer FixPlanner, or set it back to logbook: 1 if you wrote the number by hand");

    public static Problem UnknownId(Place place, string id, string thing, IEnumerable<string> known)
    {
        string near = NearestWord.To(id, known) is { } word ? $"did you mean '{word}'? " : "";
        return new("FP1203", Severity.Error, place, $"there is no {thing} '{id}' in the rule pack", "an answer that belongs to nothing cannot count, and is kept as it is", $"{near}Use an id of the pack, or take the line out".Trim());
    }

    public static Problem UnknownFact(Place place, string key, string group, IEnumerable<string> known) => new(
        "FP1209", Severity.Warning, place, $"there is no fact {Quoted(key)} for {group}{Meant(key, known)}", "what stands there is not used, which may not be what you meant", "correct the name, or leave it: it is kept as it is");

    public static Problem NotAnAnswer(Place place, string answer, string question, IEnumerable<string> allowed) => new(
        "FP1204", Severity.Error, place, $"'{answer}' is not an answer to '{question}'", "only the answers of the pack have a known meaning", $"write one of: {string.Join(", ", allowed)}, or: not looked, not sure, not today");

    public static Problem NotADate(Place place, string text) => new(
        "FP1205", Severity.Error, place, $"'{text}' is not a date", "sign-offs lapse and findings are put in order by their day", "write year-month-day, for example: 2026-05-16");

    public static Problem WrongScope(Place place, string fact, string belongs) => new(
        "FP1206", Severity.Warning, place, $"'{fact}' stands in the wrong place", "it is read all the same, but the program will write it elsewhere", $"move it under {belongs}");

    public static Problem DoubleFinding(Place place, string observation) => new(
        "FP1207", Severity.Warning, place, $"'{observation}' is answered twice in this round", "only the last of the two counts", "take one of the two out, or put it in a round of its own");

    public static Problem NotAGridRow(Place place, string row, int length) => new(
        "FP1208", Severity.Error, place, $"'{row}' is not a row of this tuft grid", "a letter stands for a tuft, and every row has as many as the first", $"write {length} letters: s steady, w waving, l lifted, r reversed, a point for not readable");
}
