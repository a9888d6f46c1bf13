using FixPlanner.Files.Problems;

namespace FixPlanner.Files;

internal static partial class Messages
{
    private const string NotRead = "the rest of the file cannot be understood from here on";

    public static Problem TooDeep(Place place, int deepest) => Error(
        "FP1011",
        place,
        $"brackets, braces or indentation are nested more than {deepest} deep",
        "no file of ours needs that, so something was probably pasted in by mistake",
        "take the nested part out");

    public static Problem Anchor(Place place, string name) => Error(
        "FP1012",
        place,
        $"{Quoted("&" + name)} names this part for use elsewhere, which is not taken here",
        "each part stands where it is used, so that it can be read and changed in one place",
        "take the name away; if the text was meant to begin with &, put it in quotes");

    public static Problem Alias(Place place, string name) => Error(
        "FP1012",
        place,
        $"{Quoted("*" + name)} refers to another part, which is not taken here",
        "each part stands where it is used, so that it can be read and changed in one place",
        "write the part out here; if the text was meant to begin with *, put it in quotes");

    public static Problem Tag(Place place, string tag) => Error(
        "FP1013",
        place,
        $"{Quoted(tag)} gives this part a type, which is not taken here",
        "every value is read as the text it is",
        "take the type away; if the text was meant to begin with !, put it in quotes");

    public static Problem RepeatedKey(Place place, string key, int firstLine) => Error(
        "FP1014",
        place,
        $"{Quoted(key)} stands here a second time, first on line {firstLine}",
        "only one of them can count, and it is not clear which",
        "keep the right one and remove the other");

    public static Problem SecondDocument(Place place) => Error(
        "FP1015",
        place,
        "a second document begins here",
        "a file holds one document; what stands behind this line would be lost",
        "remove the line --- or keep the second part in a file of its own");

    public static Problem KeyIsNotText(Place place) => Error(
        "FP1016",
        place,
        "a list or a group of keys stands where a key belongs",
        "keys are plain words",
        "write a word, a colon and the value, for example: note: dry day");

    public static Problem Syntax(Place place) => Error(
        "FP1030",
        place,
        "this is not well-formed YAML",
        NotRead,
        "look for a missing colon, quote or bracket here or on the line above");

    public static Problem TabIndents(Place place) => Error(
        "FP1031",
        place,
        "a tab indents this line",
        "a tab is as wide as each editor likes, so only spaces can show what belongs to what",
        "replace the tab with spaces, two for each level");

    public static Problem CannotStart(Place place, char first) => Error(
        "FP1032",
        place,
        $"a value cannot begin with {first}",
        "YAML keeps this character for itself",
        "put the whole value in quotes");

    public static Problem QuoteStaysOpen(Place place) => Error(
        "FP1033",
        place,
        "the quote that opens here is never closed",
        NotRead,
        "close it; inside single quotes write '' for one apostrophe");

    public static Problem BadEscape(Place place) => Error(
        "FP1034",
        place,
        "a backslash in this quoted text is followed by something it does not go with",
        "inside double quotes a backslash begins a code, such as \\n for a new line",
        "write \\\\ for a backslash, or use single quotes");

    public static Problem BracketStaysOpen(Place place, char opening) => Error(
        "FP1035",
        place,
        $"the {opening} that opens here is not closed, or a comma is missing in it",
        NotRead,
        $"put commas between the parts and {(opening == '[' ? ']' : '}')} at the end; put text with brackets or commas in quotes");

    public static Problem SecondColon(Place place) => Error(
        "FP1036",
        place,
        "a second colon on this line looks like another key",
        NotRead,
        "put the text in quotes, for example: note: \"left side: dry\"");

    public static Problem Indentation(Place place) => Error(
        "FP1037",
        place,
        "this key is indented as if it belonged to the line above, which has a value already",
        NotRead,
        "move it to the left, under the first letter of the key that it goes with");

    public static Problem Unfitting(Place place) => Error(
        "FP1038",
        place,
        "this does not fit what stands above it",
        NotRead,
        "check that the line has a colon and a space behind its key and begins under its neighbours");

    public static Problem DashBehindKey(Place place) => Error(
        "FP1039",
        place,
        "a dash of a list stands on the line of its key",
        NotRead,
        "begin the list on the next line, or write it in brackets, for example: [tape, card]");
}
