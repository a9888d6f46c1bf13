using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;
using FixPlanner.Files.Writing;

namespace FixPlanner.Files;

internal static partial class Messages
{
    public static Problem PathDoesNotFit(string file, string place) => Error(
        "FP1104",
        Place.Whole(file),
        $"{Quoted(place)} cannot be filled in, because something of another shape stands on the way to it",
        "the file was left as it is",
        "look at that place in the file: a list, a group of keys or a single value may stand where another belongs");

    public static Problem HalfCharacter(string file, string place) => Error(
        "FP1105",
        Place.Whole(file),
        $"the text for {Quoted(place)} holds half of a character",
        "it cannot be written to a file; the file was left as it is",
        "type the text again");

    public static Problem CannotSplice(string file, string place) => Error(
        "FP1106",
        Place.Whole(file),
        $"{Quoted(place)} cannot be changed without disturbing what stands around it",
        "the change was tried, read back and found to touch more than it should; the file was left as it is",
        "change that place in an editor; writing it in the plainest way, one key on each line, lets it be changed here");

    public static Problem Protected(string file) => Error(
        "FP1101",
        Place.Whole(file),
        "the file is protected against writing",
        "somebody chose that it should stay as it is",
        "take the protection away, or work on a copy");

    public static Problem Unwritable(string file, Exception failure) => failure switch
    {
        _ when FileFailure.IsFullDisk(failure) => Error(
            "FP1102",
            Place.Whole(file),
            "the disk is full",
            "nothing more can be written; what was written before is safe",
            "make room, then confirm once more"),
        UnauthorizedAccessException => Error(
            "FP1101",
            Place.Whole(file),
            "the file or its folder may not be written",
            "answers could not be kept",
            "allow your user to write there, or work on a copy in a folder of your own"),
        _ when FileFailure.IsMissing(failure) => Error(
            "FP1103",
            Place.Whole(file),
            "the folder of this file is not there",
            "answers could not be kept",
            "make the folder, or name a file in another one"),
        _ => Error(
            "FP1103",
            Place.Whole(file),
            $"the file cannot be written ({failure.Message})",
            "the disk or the system gave this answer",
            "check the disk and the connection, then confirm once more"),
    };

    public static Problem OpenElsewhere(string logbook, string lockFile, LockHolder other) => Error(
        "FP1107",
        Place.Whole(logbook),
        $"the logbook is open elsewhere (process {other.Process} on {other.Machine})",
        "two programs that write one logbook would undo each other's work",
        $"close the other one; if there is none, delete {lockFile}");

    public static Problem LockIsLost(string file) => Error(
        "FP1107",
        Place.Whole(file),
        "another program has taken this logbook over",
        "two programs that write one logbook would undo each other's work",
        "close one of them and open the logbook again");

    public static Problem ChoiceIsOpen(string file) => Error(
        "FP1108",
        Place.Whole(file),
        "it is not settled yet whether the answers in the journal belong in the logbook",
        "writing now would decide it silently",
        "choose first: put them in, or leave the logbook as it is");

    public static Problem NothingToUndo(string file) => Error(
        "FP1109",
        Place.Whole(file),
        "there is nothing to take back",
        "the journal holds no answer that is still in force",
        "change the value itself");

    public static Problem NothingToRedo(string file) => Error(
        "FP1109",
        Place.Whole(file),
        "there is nothing to put in again",
        "nothing was taken back since the last answer",
        "answer the question again");

    public static Problem ChangedSince(string file, string place) => Error(
        "FP1110",
        Place.Whole(file),
        $"{Quoted(place)} was changed since, so it was left as it is",
        "taking the older answer back would undo the newer change as well",
        "change the value itself");

    public static Problem ChangedOutside(string file) => new(
        "FP1111",
        Severity.Note,
        Place.Whole(file),
        "the logbook was changed outside while it was open; the change was read in",
        "the answer was added to it, nothing was written over",
        "nothing to do");

    public static Problem BrokenOutside(string file) => Error(
        "FP1112",
        Place.Whole(file),
        "the logbook was changed outside and cannot be read now; the answer was not kept",
        "writing would lose what was changed there",
        "mend the file at the places named, then confirm once more");

    public static Problem WasRemoved(string file) => new(
        "FP1113",
        Severity.Warning,
        Place.Whole(file),
        "the logbook was moved or deleted while it was open; it was written again",
        "the answers given here would have been lost",
        "if you moved it, close this and open it where it is now");

    public static Problem KeptInJournal(string file, Problem reason) => new(
        "FP1114",
        Severity.Warning,
        Place.Whole(file),
        $"the answer is kept in the journal, but not yet in the logbook: {reason.What}",
        "the next answer or the next start puts it in",
        reason.Mend);

    public static Problem SpoiledJournalLine(Place place) => new(
        "FP1115",
        Severity.Warning,
        place,
        "this line of the journal cannot be read",
        "an answer that only stood here could not be put in or taken back",
        "compare the last answers with the logbook");

    public static string AnswersFromJournal(int count) => count == 1 ? "an answer from the journal" : $"{count} answers from the journal";

    public static string PutIn(IReadOnlyList<JournalEntry> entries) =>
        $"{Counted(entries.Count, "had")} not reached the logbook when the program stopped; put in now: {string.Join("; ", entries.Select(entry => $"{entry.What} ({entry.Time})"))}.";

    public static string BothMovedOn(string file, int count) =>
        $"{file} was edited after the program stopped, and {Counted(count, "is", "are")} only in its journal. Put them in, or leave the logbook as it is?";

    public static string OlderFile(string file, int count) =>
        $"{file} is an older state than the one last kept; {Counted(count, "is", "are")} only in its journal. Put them in, or leave the logbook as it is?";

    public static string LogbookIsGone(string file, int count) =>
        $"{file} is not there any more, but its journal holds {Counted(count, "")}. Put them into a new logbook, or begin without them?";

    public static string EditedSince(string file) => $"{file} was edited since it was last open here; all answers are in it.";

    public static string WaitingAnswer(JournalEntry entry, YamlValue whole)
    {
        string now = entry.Changes is [YamlChange change] && ValueTree.At(whole, change.Path) is YamlValue.Single single
            ? $"; the logbook says {Quoted(single.Text)} now"
            : "";
        return $"{entry.What} ({entry.Time}{now})";
    }

    private static string Counted(int count, string one, string? several = null) =>
        (count == 1 ? $"one confirmed answer {one}" : $"{count} confirmed answers {several ?? one}").TrimEnd();
}
