using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;

namespace FixPlanner.Files;

internal static partial class Messages
{
    public const string NoSuchFile = "FP1001";

    public static Problem IsFolder(string file) => Error(
        "FP1002",
        Place.Whole(file),
        "this is a folder, not a file",
        "one file is needed here",
        "name a file in it, for example: " + Path.Combine(file, "car.logbook.yaml"));

    public static Problem TooLarge(string file, int most) => Error(
        "FP1005",
        Place.Whole(file),
        $"the file is larger than {most / 1_000_000.0:0.#} MB",
        "files of this kind are far smaller, so another file was probably named",
        "check the name; take long recordings out of it and name their files instead");

    public static Problem NotText(string file) => Error(
        "FP1006",
        Place.Whole(file),
        "this is not a plain text file",
        "it holds bytes that no text has; pictures, office documents and UTF-16 text look like this",
        "name a text file, or save it as plain text in UTF-8");

    public static Problem NotUtf8(Place place) => Error(
        "FP1007",
        place,
        "a letter here is not in UTF-8",
        "read in the wrong encoding, letters such as ä or é would come out wrong",
        "open the file in an editor and save it as UTF-8");

    public static Problem Unreadable(string file, Exception failure) => failure switch
    {
        _ when FileFailure.IsMissing(failure) => Error(
            NoSuchFile,
            Place.Whole(file),
            "there is no such file",
            "nothing can be read from it",
            "check the name and the folder"),
        UnauthorizedAccessException => Error(
            "FP1003",
            Place.Whole(file),
            "the file may not be read",
            "the system refuses it to your user",
            "allow your user to read it, or copy it to where you may"),
        _ => Error(
            "FP1004",
            Place.Whole(file),
            $"the file cannot be read ({failure.Message})",
            "the disk or the system gave this answer",
            "check the name, the disk and the connection, then try again"),
    };
}
