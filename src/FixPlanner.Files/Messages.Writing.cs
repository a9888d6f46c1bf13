using FixPlanner.Files.Problems;

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
}
