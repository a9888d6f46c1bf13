using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Rules;

namespace FixPlanner.PublishedChecks.Evidence;

public sealed class EvidenceTests
{
    /// <summary>Set it to 'write' to write the page anew; review the change as text.</summary>
    private const string Variable = "FIXPLANNER_GOLDEN";

    private static readonly string Root = SourceRoot();
    private static readonly Lazy<IReadOnlyList<Comparison>> Table = new(Compare);

    [Fact]
    public void Page_InDocs_IsWhatTheRowsAndThePackSay()
    {
        string path = Path.Combine(Root, "docs", "theory", "evidence.md");
        string text = EvidencePage.Text(Table.Value).ReplaceLineEndings("\n");
        if (Environment.GetEnvironmentVariable(Variable) == "write")
        {
            File.WriteAllText(path, text);
        }

        Assert.True(File.Exists(path), $"no page {path}: run with {Variable}=write and review it");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), text);
    }

    [Fact]
    public void Rows_Texts_SayWhereTheyComeFrom() =>
        Assert.All(Table.Value, one => Assert.All([one.Row.Source, one.Row.Place, one.Row.BaseWhy, one.Row.Grade], text => Assert.NotEmpty(text)));

    [Fact]
    public void Rows_MeasuredAndRead_AreHalfInsideAtLeast()
    {
        // The honest share. If it falls, a range of the pack or a model has moved away from what was measured.
        Comparison[] read = [.. Table.Value.Where(one => one.Row.IsMeasured && one.Row.IsRead)];

        Assert.True(read.Length >= 20);
        Assert.True(read.Count(one => one.Outcome == Outcome.Inside) >= read.Length / 2);
    }

    // A miss without a verdict is a miss that nobody has thought about.
    [Fact]
    public void Rows_NotInside_SayWhatIsAtFault() =>
        Assert.All(Table.Value.Where(one => one.Outcome != Outcome.Inside), one => Assert.NotEmpty(one.Row.Fault));

    [Theory]
    [InlineData(0, 5, 3, 3, 3, "Inside")]
    [InlineData(0, 5, 6, 4, 8, "Touches")]
    [InlineData(0, 5, 6, 5.5, 8, "Miss")]
    public void Outcome_ValueAgainstRange_IsSorted(double low, double high, double measured, double statedLow, double statedHigh, string expected)
    {
        Comparison comparison = Table.Value[0] with { Predicted = new(low, high), Measured = measured, Stated = new(statedLow, statedHigh) };

        Assert.Equal(expected, comparison.Outcome.ToString());
    }

    private static Comparison[] Compare()
    {
        KnowledgePack pack = RulePackReader.Read([Path.Combine(Root, "rules")]).Pack!;
        return [.. EvidenceRow.All().Select(row => Comparison.Of(row, pack))];
    }

    private static string SourceRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FixPlanner.sln")))
        {
            folder = folder.Parent;
        }

        return folder?.FullName ?? throw new DirectoryNotFoundException("the tests run inside the source tree");
    }
}
