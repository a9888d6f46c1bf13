using FixPlanner.Files.Problems;
using FixPlanner.Files.Writing;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Tests.Files.Writing;

public class YamlSplicerTests
{
    private static (string? Text, YamlChange? Change, string[] Codes) Apply(string text, string path, YamlValue? value)
    {
        var problems = new ProblemList();
        YamlDocument document = YamlReader.Read("car.yaml", text, problems)!;
        Spliced? spliced = YamlSplicer.Apply(document, new YamlEdit(YamlPath.Parse(path)!, value), problems);
        return (spliced?.Document.Text, spliced?.Change, [.. problems.InOrder().Select(problem => problem.Code)]);
    }

    private static YamlValue Map(params string[] keysAndValues) => YamlValue.Map(
        [.. keysAndValues.Chunk(2).Select(pair => KeyValuePair.Create(pair[0], YamlValue.Of(pair[1])))]);

    [Theory]
    [InlineData("a: 1\nb: 2  # two\n", "a", "3", "a: 3\nb: 2  # two\n")]
    [InlineData("a: 1\r\nb: 2  # two\r\n", "b", "3", "a: 1\r\nb: 3  # two\r\n")]
    [InlineData("a: 'old'   # keep", "a", "it's", "a: 'it''s'   # keep")]
    [InlineData("a: \"old\"\n", "a", "new", "a: \"new\"\n")]
    [InlineData("a: old\n", "a", "left: dry # no", "a: 'left: dry # no'\n")]
    [InlineData("a: old\n", "a", "two\nlines", "a: \"two\\nlines\"\n")]
    [InlineData("a: old\n", "a", "", "a: ''\n")]
    [InlineData("a: old\n", "a", "~", "a: '~'\n")]
    [InlineData("a: old\n", "a", "no", "a: no\n")]
    [InlineData("a: old\n", "a", "- x", "a: '- x'\n")]
    [InlineData("a:\nb: 2\n", "a", "x", "a: x\nb: 2\n")]
    [InlineData("a:    # to do\nb: 2\n", "a", "x", "a: x    # to do\nb: 2\n")]
    [InlineData("a: ~\n", "a", "x", "a: x\n")]
    [InlineData("a: {b: 1, c: }\n", "a.c", "x", "a: {b: 1, c: x}\n")]
    [InlineData("a: {b: 1, c}\n", "a.c", "x", "a: {b: 1, c: x}\n")]
    [InlineData("a: {b: 1, c:}\n", "a.b", "x, y", "a: {b: 'x, y', c:}\n")]
    [InlineData("a: |\n  one\n  two\n\nb: 2\n", "a", "x", "a: x\n\nb: 2\n")]
    [InlineData("a: one\n  two\nb: 2\n", "a", "x", "a: x\nb: 2\n")]
    [InlineData("a:\n  - x\n  -\n", "a[1]", "y", "a:\n  - x\n  - y\n")]
    [InlineData("a:\n  - x # first\n  - y\n", "a[0]", "z", "a:\n  - z # first\n  - y\n")]
    [InlineData("a:\n  - b: 1\n    c: 2\n", "a[b=1].c", "3", "a:\n  - b: 1\n    c: 3\n")]
    [InlineData("a: [x, y] # z\n", "a", "w", "a: w # z\n")]
    [InlineData("a: # list\n  - x\nb: 2\n", "a", "w", "a: w # list\nb: 2\n")]
    [InlineData("\uFEFFa: 1\n", "a", "2", "\uFEFFa: 2\n")]
    [InlineData("{a: 1}", "a", "2", "{a: 2}")]
    public void Apply_ValueInPlaceOfAnother_TouchesOnlyThat(string before, string path, string value, string after) =>
        Assert.Equal(after, Apply(before, path, YamlValue.Of(value)).Text);

    [Theory]
    [InlineData("", "a", "1", "a: 1\n")]
    [InlineData("# mine\n", "a", "1", "# mine\na: 1\n")]
    [InlineData("# mine", "a.b", "1", "# mine\na:\n  b: 1\n")]
    [InlineData("a: 1\n", "b", "2", "a: 1\nb: 2\n")]
    [InlineData("a: 1", "b", "2", "a: 1\nb: 2")]
    [InlineData("a: 1\r\n\r\n# end\r\n", "b", "2", "a: 1\r\nb: 2\r\n\r\n# end\r\n")]
    [InlineData("a:\n  b: 1 # one\n\nz: 1\n", "a.c", "2", "a:\n  b: 1 # one\n  c: 2\n\nz: 1\n")]
    [InlineData("a:\n    b: 1\nz:\n", "z.c", "2", "a:\n    b: 1\nz:\n    c: 2\n")]
    [InlineData("a: # mine\n# more\nz: 1\n", "a.b", "2", "a: # mine\n  b: 2\n# more\nz: 1\n")]
    [InlineData("a: {} # mine\n", "a.b", "2", "a: # mine\n  b: 2\n")]
    [InlineData("a:\n  b: {}\n", "a.b.c", "2", "a:\n  b: {c: 2}\n")]
    [InlineData("a: {b: 1}\n", "a.c", "2", "a: {b: 1, c: 2}\n")]
    [InlineData("a: {b: 1,}\n", "a.c", "2", "a: {b: 1, c: 2,}\n")]
    [InlineData("a: {\n  b: 1 # one\n}\n", "a.c", "2", "a: {\n  b: 1, c: 2 # one\n}\n")]
    [InlineData("a:\n  b: |\n    text\n\nz: 1\n", "a.c", "2", "a:\n  b: |\n    text\n  c: 2\n\nz: 1\n")]
    [InlineData("a:\n  b: |+\n    text\n\nz: 1\n", "a.c", "2", "a:\n  b: |+\n    text\n\n  c: 2\nz: 1\n")]
    [InlineData("a:\n- b: 1\n  c: 2\n- b: 2\n", "a[b=1].d", "4", "a:\n- b: 1\n  c: 2\n  d: 4\n- b: 2\n")]
    [InlineData("a:\n  - {b: 1}\n", "a[b=1].d", "4", "a:\n  - {b: 1, d: 4}\n")]
    [InlineData("---\na: 1\n...\n", "b", "2", "---\na: 1\nb: 2\n...\n")]
    public void Apply_NewKey_IsAddedInTheMannerOfTheFile(string before, string path, string value, string after) =>
        Assert.Equal(after, Apply(before, path, YamlValue.Of(value)).Text);

    [Theory]
    [InlineData("a:\n  - x\n  - y # two\n\nz: 1\n", "a[+]", "w", "a:\n  - x\n  - y # two\n  - w\n\nz: 1\n")]
    [InlineData("a:\n- x\nz: 1\n", "a[+]", "w", "a:\n- x\n- w\nz: 1\n")]
    [InlineData("a: [x, y]\n", "a[+]", "w", "a: [x, y, w]\n")]
    [InlineData("a: [] # none\n", "a[+]", "w", "a: [w] # none\n")]
    [InlineData("a:\n", "a[+]", "w", "a: [w]\n")]
    [InlineData("b: 1\n", "a[+]", "w", "b: 1\na: [w]\n")]
    [InlineData("- x\n", "[+]", "w", "- x\n- w\n")]
    [InlineData("a:\n  - x\n", "a[1]", "w", "a:\n  - x\n  - w\n")]
    public void Apply_NewItem_IsAddedInTheMannerOfTheFile(string before, string path, string value, string after) =>
        Assert.Equal(after, Apply(before, path, YamlValue.Of(value)).Text);

    [Theory]
    [InlineData("rounds:\n  - id: before\n    findings:\n      - {observation: x, answer: no} # sure\n", "rounds:\n  - id: before\n    findings:\n      - {observation: x, answer: no} # sure\n      - {observation: cowl, answer: yes}\n")]
    [InlineData("rounds:\n  - id: before\n    findings: [] # none\n", "rounds:\n  - id: before\n    findings: # none\n      - {observation: cowl, answer: yes}\n")]
    [InlineData("rounds:\n- id: before\n", "rounds:\n- id: before\n  findings:\n  - {observation: cowl, answer: yes}\n")]
    [InlineData("rounds:\n- id: before\n  findings:\n  - observation: x\n    answer: no\n", "rounds:\n- id: before\n  findings:\n  - observation: x\n    answer: no\n  - observation: cowl\n    answer: yes\n")]
    [InlineData("rounds:\n  - {id: before, findings: []}\n", "rounds:\n  - {id: before, findings: [{observation: cowl, answer: yes}]}\n")]
    [InlineData("rounds:\n  - {id: after}\n", "rounds:\n  - {id: after}\n  - id: before\n    findings:\n      - {observation: cowl, answer: yes}\n")]
    [InlineData("logbook: 1\n", "logbook: 1\nrounds:\n  - id: before\n    findings:\n      - {observation: cowl, answer: yes}\n")]
    [InlineData("rounds:\n  - id: before\n    findings:\n      - {observation: cowl, answer: no, place: left}\n", "rounds:\n  - id: before\n    findings:\n      - {observation: cowl, answer: yes, place: left}\n")]
    public void Apply_OneAnswer_IsOneLineWhereverItGoes(string before, string after) => Assert.Equal(
        after,
        Apply(before, "rounds[id=before].findings[observation=cowl].answer", YamlValue.Of("yes")).Text);

    [Fact]
    public void Apply_MapThatWillGrow_IsWrittenLineByLine() => Assert.Equal(
        "rounds:\n  - id: before\n    date: 2024-05-04\n",
        Apply("rounds: []\n", "rounds[id=before]", YamlValue.Lines(KeyValuePair.Create("date", YamlValue.Of("2024-05-04")))).Text);

    [Theory]
    [InlineData("a: 1\nb: 2 # two\nc: 3\n", "b", "a: 1\nc: 3\n")]
    [InlineData("a: 1\r\nb: 2", "b", "a: 1")]
    [InlineData("a:\n  b: 1\nc: 3\n", "a.b", "a: {}\nc: 3\n")]
    [InlineData("a: # x\n  - b\nc: 3\n", "a[0]", "a: [] # x\nc: 3\n")]
    [InlineData("a: 1\n", "a", "{}\n")]
    [InlineData("a: {b: 1, c: 2}\n", "a.b", "a: {c: 2}\n")]
    [InlineData("a: {b: 1, c: 2}\n", "a.c", "a: {b: 1}\n")]
    [InlineData("a: [x, y, z]\n", "a[1]", "a: [x, z]\n")]
    [InlineData("a:\n  - x\n  - y # why\n  - z\n", "a[1]", "a:\n  - x\n  - z\n")]
    [InlineData("a:\n  - b: 1\n    c: 2\n", "a[0].b", "a:\n  - c: 2\n")]
    [InlineData("a:\n  - b: 1 # one\n    # about c\n    c: 2\n", "a[0].b", "a:\n  -  # one\n    # about c\n    c: 2\n")]
    [InlineData("a:\n  b: |\n    text\n\nc: 3\n", "a.b", "a: {}\n\nc: 3\n")]
    [InlineData("a: |+\n  kept\n\nb: 2", "b", "a: |+\n  kept\n\n")]
    [InlineData("a: |+\n  kept\n\nb: 2\n\nc: 3\n", "b", "a: |+\n  kept\n\nc: 3\n")]
    [InlineData("a: 1\n", "b", "a: 1\n")]
    [InlineData("a: 1\n", "b[x=y].c", "a: 1\n")]
    public void Apply_Removal_TakesOnlyThat(string before, string path, string after) => Assert.Equal(after, Apply(before, path, null).Text);

    [Theory]
    [InlineData("a: 1\n", "a.b")]
    [InlineData("a: [1]\n", "a.b")]
    [InlineData("a: {b: 1}\n", "a[0]")]
    [InlineData("a: [1]\n", "a[5]")]
    [InlineData("", "a[5]")]
    public void Apply_PathThatDoesNotFit_IsRefused(string text, string path)
    {
        (string? after, _, string[] codes) = Apply(text, path, YamlValue.Of("x"));

        Assert.Null(after);
        Assert.Equal(["FP1104"], codes);
    }

    [Fact]
    public void Apply_HalfCharacter_IsRefused() => Assert.Equal(["FP1105"], Apply("a: 1\n", "a", YamlValue.Of("x\ud800")).Codes);

    [Fact]
    public void Apply_WholeCharacterPair_IsTaken() => Assert.Equal("a: 😀 x\n", Apply("a: 1\n", "a", YamlValue.Of("😀 x")).Text?.Replace("'", ""));

    [Fact]
    public void Apply_SameValue_ChangesNothing() => Assert.Equal("a: 'x'\n", Apply("a: 'x'\n", "a", YamlValue.Of("x")).Text);

    [Fact]
    public void Apply_UnusualKey_IsRefusedRatherThanSpoiled()
    {
        (string? after, _, string[] codes) = Apply("? a\n: - b\n  - c\nz: 1\n", "a", YamlValue.Of("x"));

        Assert.Null(after);
        Assert.Equal(["FP1106"], codes);
    }

    [Fact]
    public void Apply_Change_SaysWhatWasMadeAtItsOuterEnd()
    {
        YamlChange change = Apply("rounds:\n  - id: before\n", "rounds[id=before].findings[observation=cowl].answer", YamlValue.Of("yes")).Change!;

        Assert.Equal("rounds[id=before].findings", change.Path.ToString());
        Assert.Null(change.Old);
        Assert.Equal(YamlValue.List(Map("observation", "cowl", "answer", "yes")), change.New);
    }

    [Fact]
    public void Apply_MapForNamedItem_KeepsItsName()
    {
        Assert.Equal("a:\n  - {id: x, b: 2}\n", Apply("a:\n  - {id: x, b: 1, c: 1}\n", "a[id=x]", Map("b", "2")).Text);
        Assert.Equal(["FP1104"], Apply("a:\n  - {id: x, b: 1}\n", "a[id=x]", Map("id", "y")).Codes);
    }
}
