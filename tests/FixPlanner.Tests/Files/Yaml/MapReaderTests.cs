using FixPlanner.Core.Quantities;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Tests.Files.Yaml;

public class MapReaderTests
{
    private static readonly Dictionary<string, bool> YesNo = new() { ["yes"] = true, ["no"] = false };

    private readonly ProblemList problems = new();

    private MapReader Of(string text) => MapReader.Of(YamlReader.Read("t.yaml", text, problems)!.Root!, "the fix", problems)!;

    private string[] Found => [.. problems.InOrder().Select(problem => $"{problem.Place.Line}:{problem.Place.Column} {problem.Code} {problem.What}")];

    [Fact]
    public void Need_EverythingThere_IsReadWithoutProblems()
    {
        MapReader map = Of("id: seal\nhours: 3\nshare: 0.25\nspeed: 105 km/h\ncost: 20..35..60 EUR\nlegal: no\ntools: [tape, 'a drill']\nby: {name: x}\nsteps:\n  - do: a\n  - do: b\n");

        Assert.Equal("seal", map.NeedText("id"));
        Assert.Equal(3, map.NeedInteger("hours", 0, 10));
        Assert.Equal(0.25, map.NeedNumber("share", 0, 1));
        Assert.Equal(105 / 3.6, map.NeedAmount("speed", UnitKind.Speed)!.Value.BaseValue, 12);
        Assert.Equal(35, map.NeedRange("cost", UnitKind.Money)!.Value.Values.Likely);
        Assert.False(map.NeedOneOf("legal", YesNo, true));
        Assert.Equal(["tape", "a drill"], map.NeedScalars("tools").Select(tool => tool.Text));
        Assert.Equal("x", map.NeedInner("by", "the author")!.NeedText("name"));
        Assert.Equal(["a", "b"], map.Inners("steps", "the step").Select(step => step.NeedText("do")));
        map.Done();
        Assert.Empty(Found);
    }

    [Fact]
    public void Optional_NothingThere_IsNothingAndNoProblem()
    {
        MapReader map = Of("note:\nplace: ~\n");

        Assert.Null(map.Text("note"));
        Assert.Null(map.Scalar("place"));
        Assert.Null(map.Integer("a", 0, 1));
        Assert.Null(map.Number("b", 0, 1));
        Assert.Null(map.Amount("c", UnitKind.Speed));
        Assert.Null(map.Range("c", UnitKind.Speed));
        Assert.True(map.OneOf("d", YesNo, true));
        Assert.Empty(map.Items("e"));
        Assert.Empty(map.Scalars("e"));
        Assert.Empty(map.Inners("e", "x"));
        Assert.Null(map.Inner("f", "x"));
        map.Done();
        Assert.Empty(Found);
    }

    [Fact]
    public void Need_NothingThere_ReportsEachKeyOnce()
    {
        MapReader map = Of("id:\n");

        Assert.Equal("", map.NeedText("id"));
        Assert.Equal("", map.NeedText("id"));
        Assert.Equal(2, map.NeedInteger("hours", 2, 10));
        Assert.Empty(map.NeedItems("tools"));
        Assert.Equal(["1:1 FP1021 the fix needs \"hours\"", "1:1 FP1021 the fix needs \"tools\"", "1:4 FP1021 the fix needs \"id\""], Found);
    }

    [Fact]
    public void Read_WrongValues_AreAllReportedWithTheirPlace()
    {
        MapReader map = Of("id: [a]\nhours: 2.5\nshare: 7\nspeed: 105\nlegal: yse\ntools: tape\nby: me\nsteps: [{do: a}, b]\n");

        map.NeedText("id");
        map.NeedInteger("hours", 0, 10);
        map.NeedNumber("share", 0, 1);
        Assert.Null(map.NeedAmount("speed", UnitKind.Speed));
        Assert.True(map.NeedOneOf("legal", YesNo, true));
        Assert.Empty(map.Scalars("tools"));
        Assert.Null(map.Inner("by", "the author"));
        Assert.Single(map.Inners("steps", "the step"));

        Assert.Equal(
            ["1:5 FP1022", "2:8 FP1024", "3:8 FP1025", "4:8 FP1026", "5:8 FP1023", "6:8 FP1022", "7:5 FP1022", "8:18 FP1022"],
            Found.Select(found => string.Join(' ', found.Split(' ')[..2])));
        Assert.Contains("did you mean yes?", Found[4]);
        Assert.Contains("km/h", problems.InOrder()[3].Mend);
    }

    [Fact]
    public void Done_UnknownKeys_AreReportedWithTheNearestSpelling()
    {
        MapReader map = Of("id: a\nhuors: 3\nzzzzz: 1\n");
        map.NeedText("id");
        map.Integer("hours", 0, 10);

        map.Done(Severity.Warning);

        Assert.Equal(["2:1 FP1020 the fix has no \"huors\"; did you mean hours?", "3:1 FP1020 the fix has no \"zzzzz\""], Found);
        Assert.False(problems.HasErrors);
    }
}
