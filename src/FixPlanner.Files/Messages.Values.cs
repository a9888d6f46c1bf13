using FixPlanner.Core.Quantities;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files;

internal static partial class Messages
{
    public static Problem UnknownKey(Place place, Severity severity, string key, string thing, IEnumerable<string> known)
    {
        List<string> keys = [.. known.Order(StringComparer.Ordinal)];
        return new Problem(
            "FP1020",
            severity,
            place,
            $"{thing} has no {Quoted(key)}{Meant(key, keys)}",
            "what stands there is not used, which may not be what you meant",
            $"use one of: {string.Join(", ", keys)}; or remove it");
    }

    public static Problem MissingKey(Place place, string key, string thing) => Error(
        "FP1021",
        place,
        $"{thing} needs {Quoted(key)}",
        "without it the rest cannot be used",
        $"add a line that begins with {key}: and the value");

    public static Problem WrongShape(YamlNode found, string what, string wanted, string example) => Error(
        "FP1022",
        found.Place,
        $"{what} is {Shape(found)}, but {wanted} belongs here",
        "it is read as one thing only, so that a slip does not pass unseen",
        $"write it like this: {example}");

    public static Problem NotAmong(YamlScalar found, string what, IEnumerable<string> allowed)
    {
        List<string> words = [.. allowed];
        return Error(
            "FP1023",
            found.Place,
            $"{what} cannot be {Quoted(found.Text)}{Meant(found.Text, words)}",
            "only words of the list are understood",
            $"use one of: {string.Join(", ", words)}");
    }

    public static Problem NotWhole(YamlScalar found, string what) => Error(
        "FP1024",
        found.Place,
        $"{what} is {Quoted(found.Text)}, but a whole number belongs here",
        "it counts something",
        "write digits only, for example: 3");

    public static Problem OutOfRange(YamlScalar found, string what, double least, double most) => Error(
        "FP1025",
        found.Place,
        $"{what} is {Quoted(found.Text)}, but it goes from {least} to {most}",
        "outside of that it has no meaning",
        $"write a number from {least} to {most}");

    public static Problem Trouble(YamlScalar found, string what, TextTrouble trouble) => Error(
        "FP1026",
        found.Place,
        $"{what}: {trouble.What}",
        trouble.Why,
        trouble.Mend);

    private static string Shape(YamlNode found) => found switch
    {
        YamlScalar { IsUnset: true } => "empty",
        YamlScalar => "a single value",
        YamlList => "a list",
        _ => "a group of keys",
    };
}
