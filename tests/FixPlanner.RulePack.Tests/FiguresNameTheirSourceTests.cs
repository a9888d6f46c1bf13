using System.Text.RegularExpressions;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules;
using FixPlanner.Files.Yaml;

namespace FixPlanner.RulePack.Tests;

/// <summary>Every figure of the pack stands where somebody says where it comes from, and saying nothing is refused in each such place.</summary>
public sealed partial class FiguresNameTheirSourceTests : IDisposable
{
    private readonly string layer = Directory.CreateTempSubdirectory("rules-basis-").FullName;

    /// <summary>One place of each kind at which the shipped pack says where its figures come from: kind of file and way of keys.</summary>
    public static TheoryData<string, string> Places
    {
        get
        {
            TheoryData<string, string> places = [];
            foreach (var kind in Files().SelectMany(file => Basis(file).Select(place => (File: file, place.Way))).GroupBy(place => (Kind(place.File), place.Way)))
            {
                places.Add(Path.GetRelativePath(PackFolders.Rules, kind.First().File).Replace('\\', '/'), kind.Key.Way);
            }

            return places;
        }
    }

    public void Dispose() => Directory.Delete(layer, recursive: true);

    [Theory]
    [MemberData(nameof(Places))]
    public void Check_PlaceThatSaysNothing_IsRefused(string path, string way)
    {
        string text = File.ReadAllText(Path.Combine(PackFolders.Rules, path));
        YamlScalar said = Basis(Path.Combine(PackFolders.Rules, path)).First(place => place.Way == way).Said;
        string target = Path.Combine(layer, path);
        Directory.CreateDirectory(Path.GetDirectoryName(target)!);
        File.WriteAllText(target, Silenced(text, said));

        var problems = RulePackReader.Read([PackFolders.Rules, layer]).Problems;

        Assert.Contains(problems, problem => problem.Code == "FP2106" && problem.Place.Line == said.Place.Line);
    }

    [Fact]
    public void Figure_OfThePack_StandsBesideOrUnderAPlaceThatSaysWhereItComesFrom()
    {
        // Sizes in the words of a fix have one place for all of them, in pack.yaml; its effects, costs, hours and trials have their own.
        var bare = Files().SelectMany(file => Figures(Root(file), covered: false).Where(scalar => Kind(file) != "fixes" || !scalar.Text.Contains('{')));

        Assert.Equal([], bare.Select(scalar => $"{scalar.Place}: {scalar.Text}"));
        Assert.True(ShippedPack.Pack.Scales.Sizes!.IsStated);
    }

    [Fact]
    public void Source_OfThePack_SaysWhatWasReadAndWhatWasNot() => Assert.All(ShippedPack.Pack.Sources, source =>
        Assert.True(source.Read == "whole page" || source.Read.EndsWith("not read", StringComparison.Ordinal) || source.Read.EndsWith("not looked up in law", StringComparison.Ordinal), $"{source.Id}: {source.Read}"));

    // Words that explain, situations and sources carry no figures of their own: the first are definitions, the others given or quoted.
    private static IEnumerable<string> Files() => Directory.EnumerateFiles(PackFolders.Rules, "*.yaml", SearchOption.AllDirectories)
        .Where(file => Path.GetFileName(file) is not ("cases.yaml" or "sources.yaml") && !file.Contains($"{Path.DirectorySeparatorChar}terms{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
        .Order(StringComparer.Ordinal);

    private static string Kind(string file)
    {
        string folder = Path.GetFileName(Path.GetDirectoryName(file)!);
        return folder is "fixes" or "mechanisms" or "gates" ? folder : Path.GetFileName(file);
    }

    private static IEnumerable<(string Way, YamlScalar Said)> Basis(string file) => Basis(Root(file), "");

    private static IEnumerable<(string Way, YamlScalar Said)> Basis(YamlNode node, string way) => node switch
    {
        YamlMap map => map.Entries.SelectMany(entry => entry.Value is YamlScalar said && Says(entry.Key.Text) && !IsProse(way) ? [($"{way}{entry.Key.Text}", said)] : Basis(entry.Value, $"{way}{entry.Key.Text}.")),
        YamlList list => list.Items.SelectMany(item => Basis(item, way)),
        _ => [],
    };

    // The practice with paint is read out to people, line by line, basis and all.
    private static bool IsProse(string way) => way == "paint_practice.";

    private static IEnumerable<YamlScalar> Figures(YamlNode node, bool covered) => node switch
    {
        YamlMap map => map.Entries.SelectMany(entry => Figures(entry.Value, covered || map.Entries.Any(other => Says(other.Key.Text)))),
        YamlList list => list.Items.SelectMany(item => Figures(item, covered)),
        YamlScalar scalar when !covered && Figure().IsMatch(scalar.Text) => [scalar],
        _ => [],
    };

    private static bool Says(string key) => key is "sources" or "basis" || key.EndsWith("_basis", StringComparison.Ordinal);

    private static YamlNode Root(string file) => YamlReader.Read(file, File.ReadAllText(file), new ProblemList())!.Root!;

    // What is said there, folded or not, becomes a word that names nothing.
    private static string Silenced(string text, YamlScalar said) =>
        text[..said.Start] + "because" + (text[said.Start..said.End].EndsWith('\n') ? "\n" : "") + text[said.End..];

    [GeneratedRegex(@"\{[^{}]*\d[^{}]*\}|^[-+]?\d+(\.\d+)? ?(mm|m|m2|km/h|m/s|kg|EUR|h|min|%|dB\(A\)|CL|CD|steps?|tufts|people|months)$")]
    private static partial Regex Figure();
}
