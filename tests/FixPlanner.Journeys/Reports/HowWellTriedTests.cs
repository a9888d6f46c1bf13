using System.Text.Json;
using System.Text.RegularExpressions;
using FixPlanner.Commands;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Quantities;
using FixPlanner.Plain;
using FixPlanner.Wizard.Screens;

namespace FixPlanner.Journeys.Reports;

/// <summary>How far a rule was tried (draft, tried, trusted) stands beside each fix of the plan, in whatever form the plan is read.</summary>
public sealed class HowWellTriedTests
{
    private static readonly Lazy<Assessment> Car = new(Mixed);

    [Theory]
    [InlineData("text", @"^{0} +.*\b{1}\b")]
    [InlineData("markdown", @"^\| {0} \|.*\| {1} \|")]
    public void Plan_OnPaper_SaysItInTheRowOfEachFix(string format, string row)
    {
        string written = PlanCommand.Written(Car.Value, format);

        Assert.All(Car.Value.Plan.Items, item => Assert.Matches(new Regex(row.Replace("{0}", $"{item.Rank}").Replace("{1}", Word(item.Fix)), RegexOptions.Multiline), written));
    }

    [Fact]
    public void Plan_AsAPage_SaysItInTheRowOfEachFix()
    {
        string[] rows = PlanCommand.Written(Car.Value, "html").Split("<tr>");

        Assert.All(Car.Value.Plan.Items, item => Assert.Contains(rows, row => row.Contains($"<td>{item.Rank}</td>", StringComparison.Ordinal) && row.Contains($"<td>{Word(item.Fix)}</td>", StringComparison.Ordinal)));
    }

    [Fact]
    public void Plan_ForPrograms_SaysItOfEachFixInAndOut()
    {
        JsonElement plan = JsonDocument.Parse(PlanCommand.Written(Car.Value, "json")).RootElement;

        Assert.Equal(Car.Value.Plan.Items.Select(item => (item.Fix.Id, Word(item.Fix))), Said("plan"));
        Assert.Equal(Car.Value.Plan.LeftOut.Select(left => (left.Fix.Id, Word(left.Fix))).OrderBy(left => left.Id, StringComparer.Ordinal), Said("left_out"));

        IEnumerable<(string, string)> Said(string list) =>
            plan.GetProperty(list).EnumerateArray().Select(fix => (fix.GetProperty("fix").GetString()!, fix.GetProperty("maturity").GetString()!));
    }

    [Fact]
    public void Plan_InBothFaces_SaysItInTheLineOfEachFix()
    {
        var rows = PlanView.Of(Car.Value).Rows;
        var lines = PlainLists.Plan(Car.Value);

        Assert.All(Car.Value.Plan.Items, item => Assert.Contains(rows, row => row.Id == $"fix/{item.Fix.Id}" && row.Cells.Contains(Word(item.Fix))));
        Assert.All(Car.Value.Plan.Items, item => Assert.Contains(lines, line => line.Line.Contains(Prose.Plain(item.Fix.Title), StringComparison.Ordinal) && line.Line.EndsWith($"rule is {Word(item.Fix)}", StringComparison.Ordinal)));
    }

    [Fact]
    public void Plan_WithRulesOfEachKind_HasAllThreeWords() =>
        Assert.Equal(["draft", "tried", "trusted"], Car.Value.Plan.Items.Select(item => Word(item.Fix)).Distinct().Order(StringComparer.Ordinal));

    private static string Word(Fix fix) => fix.Maturity switch { Maturity.Draft => "draft", Maturity.Tried => "tried", _ => "trusted" };

    // The demo car, as if some of its rules had been tried: all shipped ones are drafts, and one word for all would prove nothing.
    private static Assessment Mixed()
    {
        Assessment drafts = DemoReports.Of("marram");
        int at = 0;
        return drafts with
        {
            Plan = drafts.Plan with { Items = [.. drafts.Plan.Items.Select(item => item with { Fix = item.Fix with { Maturity = (Maturity)(at++ % 3) } })] },
        };
    }
}
