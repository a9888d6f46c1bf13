using System.Text.RegularExpressions;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Yaml;

namespace FixPlanner.RulePack.Tests;

/// <summary>Every quantity in the prose of the pack stands in braces, so that each page can show the owner's units.</summary>
public partial class ProseTests
{
    // Units that only prose has. Months and years are left out: no owner counts them otherwise.
    private static readonly IEnumerable<string> AlsoUnits = ["mpg", "daN", "CL", "CD"];

    // A unit of one letter needs its space: the 1970s are no seconds.
    private static readonly Regex Bare = new(
        $@"(?<![\w.{{/])[-+]?\d+(?:[.,]\d+)?(?:\s?(?:{Any(Spellings().Where(unit => unit.Length > 1))}|%)|\s(?:{Any(Spellings().Where(unit => unit.Length == 1))}))(?![\w/(²³])",
        RegexOptions.Compiled);

    [Fact]
    public void Prose_OfThePack_WritesEveryQuantityInBraces()
    {
        string[] found = [.. Texts(PackFolders.Rules).SelectMany(text => BareQuantities(text.Scalar.Text).Select(bare => $"{text.Path}:{text.Scalar.Place.Line}: {bare}"))];

        Assert.True(found.Length == 0, $"write them {{80 km/h}}:\n{string.Join('\n', found)}");
    }

    [Theory]
    [InlineData("above 50 km/h it turns", "50 km/h")]
    [InlineData("gaps of 80-140 mm", "140 mm")]
    [InlineData("a reading of 9ppm or more", "9ppm")]
    [InlineData("10 % less drag", "10 %")]
    [InlineData("within 0.5 degree", "0.5 degree")]
    [InlineData("q at {80 km/h} is 302 Pa", "302 Pa")]
    public void BareQuantities_NumberWithUnitOutsideBraces_AreFound(string prose, string bare) => Assert.Equal([bare], BareQuantities(prose));

    [Theory]
    [InlineData("above {50 km/h} it turns")]
    [InlineData("{60 mm} to {75 mm} hose")]
    [InlineData("a litre in two minutes, 3 x 3 tufts, S31, four hubs, over 10 years old")]
    [InlineData("35 EUR")]
    [InlineData("-0.5 dB(A)")]
    public void BareQuantities_NoneOrAFigureAlone_AreNotFound(string prose) => Assert.Empty(BareQuantities(prose));

    private static IEnumerable<string> BareQuantities(string text) =>
        FigureAlone().IsMatch(text) ? [] : Bare.Matches(Braces().Replace(text, "")).Select(match => match.Value);

    // Longest first, so that 'm' does not stop at the first letter of 'mm'. Words that stand behind a number in plain English are left out.
    private static IEnumerable<string> Spellings() => UnitTable.All
        .SelectMany(unit => unit.Spellings.Append(unit.Name))
        .Where(spelling => spelling.Length > 0 && spelling is not ("\"" or "d" or "day" or "days" or "in"))
        .Concat(AlsoUnits)
        .Distinct()
        .OrderByDescending(spelling => spelling.Length);

    private static string Any(IEnumerable<string> units) => string.Join('|', units.Select(Regex.Escape));

    private static IEnumerable<(string Path, YamlScalar Scalar)> Texts(string folder) =>
        from file in Directory.GetFiles(folder, "*.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
        let path = $"rules/{Path.GetRelativePath(folder, file).Replace('\\', '/')}"
        let document = YamlReader.Read(path, File.ReadAllText(file), new ProblemList())
        from scalar in Scalars(document!.Root)
        select (path, scalar);

    private static IEnumerable<YamlScalar> Scalars(YamlNode? node) => node switch
    {
        YamlScalar scalar => [scalar],
        YamlMap map => map.Entries.SelectMany(entry => Scalars(entry.Value)),
        YamlList list => list.Items.SelectMany(Scalars),
        _ => [],
    };

    [GeneratedRegex(@"\{[^{}]*\}")]
    private static partial Regex Braces();

    [GeneratedRegex(@"^[-+]?\d+(\.\d+)? ?\S*$")]
    private static partial Regex FigureAlone();
}
