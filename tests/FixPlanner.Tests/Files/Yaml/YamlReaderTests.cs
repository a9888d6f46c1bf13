using System.Diagnostics;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Tests.Files.Yaml;

public class YamlReaderTests
{
    private static (YamlDocument? Document, IReadOnlyList<Problem> Problems) Read(string text)
    {
        var problems = new ProblemList();
        YamlDocument? document = YamlReader.Read("t.yaml", text, problems);
        return (document, problems.InOrder());
    }

    private static string[] PlacesOf(string text) => [.. Read(text).Problems.Select(problem => $"{problem.Place.Line}:{problem.Place.Column} {problem.Code}")];

    [Fact]
    public void Read_Scalars_KeepTheirTextAsWritten()
    {
        (YamlDocument? document, _) = Read("a: no\nb: 105 km/h\nc: 1.0\nd: 'it''s'\ne: \"x\\ty\"\nf: 2024-05-01\ng:\nh: ''\n");

        var map = Assert.IsType<YamlMap>(document!.Root);
        Assert.Equal(
            ["no", "105 km/h", "1.0", "it's", "x\ty", "2024-05-01", "", ""],
            map.Entries.Select(entry => Assert.IsType<YamlScalar>(entry.Value).Text));
        Assert.True(((YamlScalar)map.Find("g")!.Value).IsUnset);
        Assert.False(((YamlScalar)map.Find("h")!.Value).IsUnset);
    }

    [Theory]
    [InlineData("a: 1\nb: two words  # note\n", "two words")]
    [InlineData("a: 1\r\nb: 'two words'\r\n", "'two words'")]
    [InlineData("\uFEFFa: 1\nb: [x, {y: z}] # note\n", "[x, {y: z}]")]
    [InlineData("a: 1\nb:\n  - x\n  - y: 1\n    z: 2   \n\n# note\n", "- x\n  - y: 1\n    z: 2")]
    [InlineData("a: 1\nb:\n- x\n- - y\n  - z\n", "- x\n- - y\n  - z")]
    [InlineData("a: 1\nb: {}\n", "{}")]
    [InlineData("a: 1\nb:\n", "")]
    public void Read_Node_KnowsItsPlaceInTheText(string text, string expected)
    {
        (YamlDocument? document, _) = Read(text);

        YamlEntry entry = ((YamlMap)document!.Root!).Find("b")!;
        Assert.Equal(expected, text[entry.Value.Start..entry.Value.End]);
        Assert.Equal("b", text[entry.Key.Start..entry.Key.End]);
        Assert.Equal((2, 1), (entry.Key.Place.Line, entry.Key.Place.Column));
    }

    [Theory]
    [InlineData("")]
    [InlineData("\uFEFF")]
    [InlineData("# only a remark\n")]
    public void Read_NothingSaid_HasNoRoot(string text)
    {
        (YamlDocument? document, IReadOnlyList<Problem> problems) = Read(text);

        Assert.Empty(problems);
        Assert.Null(document!.Root);
    }

    [Fact]
    public void Read_SeveralMistakes_AreAllReportedAtOnce() => Assert.Equal(
        ["1:4 FP1012", "2:4 FP1012", "3:4 FP1013", "4:1 FP1014", "6:5 FP1016", "8:1 FP1015"],
        PlacesOf("a: &x 1\nb: *x\nc: !t 2\na: 3\nd:\n  ? [k]\n  : v\n---\ne: 1\n"));

    [Theory]
    [InlineData("a: b: c\n", "1:5 FP1036")]
    [InlineData("a: 1\n b: 2\n", "2:3 FP1037")]
    [InlineData("a: [1, 2", "1:4 FP1035")]
    [InlineData("a: {b: 1\nc: 2\n", "1:4 FP1035")]
    [InlineData("a: 'x\nb: 2\n", "1:4 FP1033")]
    [InlineData("a: \"x\\q\"\n", "1:4 FP1034")]
    [InlineData("a: @x\n", "1:4 FP1032")]
    [InlineData("a:\n\tb: 1\n", "2:1 FP1031")]
    [InlineData("a: 1\nb\nc: 2\n", "2:1 FP1038")]
    [InlineData("a: 1\n- b\n", "2:1 FP1038")]
    [InlineData("a: [b\nc: 2\n", "1:4 FP1035")]
    [InlineData("a: [1, [2]\nb: {x: 1]\n", "1:4 FP1035")]
    [InlineData("a:\n  b: 1\n\tc: 1\n", "3:1 FP1031")]
    [InlineData("a: b\n\t\n", "2:1 FP1031")]
    [InlineData("a: - b\n", "1:4 FP1039")]
    [InlineData("a: |x\n  b\n", "1:4 FP1032")]
    [InlineData("a: *\n", "1:4 FP1032")]
    [InlineData("a: , b\n", "1:4 FP1032")]
    [InlineData("a: ]\n", "1:4 FP1032")]
    [InlineData("a:b\nc: d\n", "2:2 FP1038")]
    [InlineData("a: 'x' b\n", "1:8 FP1038")]
    [InlineData("%YAML 3.0\n---\na: 1\n", "1:1 FP1032")]
    public void Read_BrokenYaml_SaysWhatAndWhere(string text, string expected) => Assert.Equal([expected], PlacesOf(text));

    [Fact]
    public void Read_DeepNesting_IsRefusedQuicklyWithItsPlace()
    {
        var clock = Stopwatch.StartNew();

        Assert.Equal(["1:65 FP1011"], PlacesOf(new string('[', 200_000)));
        Assert.Equal(["1:257 FP1011"], PlacesOf(string.Concat(Enumerable.Repeat("{a: ", 200_000))));
        Assert.Equal(["1:129 FP1011"], PlacesOf(string.Concat(Enumerable.Repeat("- ", 200_000))));
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(5), $"took {clock.Elapsed}");
    }

    [Fact]
    public void Read_NestingAtTheLimit_IsTaken() =>
        Assert.Empty(Read(new string('[', YamlReader.DeepestNesting) + new string(']', YamlReader.DeepestNesting)).Problems);

    [Fact]
    public void Read_AliasBomb_IsRefusedWithoutExpansion()
    {
        string bomb = "a0: &a0 [x, x]\n" + string.Concat(Enumerable.Range(1, 40).Select(i => $"a{i}: &a{i} [*a{i - 1}, *a{i - 1}]\n"));

        IReadOnlyList<Problem> problems = Read(bomb).Problems;

        Assert.All(problems, problem => Assert.Equal("FP1012", problem.Code));
        Assert.Equal(41 + 80, problems.Count);
    }

    [Fact]
    public void Read_LargestFile_TakesBoundedTime()
    {
        var clock = Stopwatch.StartNew();

        Assert.Empty(Read(string.Concat(Enumerable.Range(0, 40_000).Select(i => $"key{i}: {new string('v', 80)}\n"))).Problems);
        Assert.True(clock.Elapsed < TimeSpan.FromSeconds(20), $"took {clock.Elapsed}");
    }
}
