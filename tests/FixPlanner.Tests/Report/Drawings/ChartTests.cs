using System.Xml.Linq;
using FixPlanner.Report.Drawings;

namespace FixPlanner.Tests.Report.Drawings;

/// <summary>Charts: round marks, well-formed SVG with title and description, the same in plain characters.</summary>
public sealed class ChartTests
{
    private static readonly Chart Sample = new("s", "Pull <on> glass", "speed, km/h", "N", [new("pull", [(0, 0), (50, 20), (100, 80)]), new("stairs", [(0, 10), (60, 40)], Stroke.Dashed, Stairs: true)])
    {
        Bands = [new("range", [(0, 0, 5), (100, 60, 110)], "lines")],
        Spans = [new("boom", 80, 95, "dots"), new("now", 90, 90, "")],
        Words = "Rises with speed & more.",
    };

    [Theory]
    [InlineData(0, 597, 8, 0, 600, 100)]
    [InlineData(0, 9.16, 5, 0, 10, 2)]
    [InlineData(-0.031, 0.012, 5, -0.04, 0.02, 0.01)]
    [InlineData(3, 3, 5, 3, 4, 0.2)]
    public void Axis_Values_EndsAndStepsAreRound(double low, double high, int marks, double axisLow, double axisHigh, double step)
    {
        Axis axis = Axis.Over([low, high], marks, withZero: false);
        Assert.Equal(axisLow, axis.Low, 9);
        Assert.Equal(axisHigh, axis.High, 9);
        Assert.Equal(step, axis.Step, 9);
    }

    [Fact]
    public void Axis_NothingToShow_IsZeroToOne() => Assert.Equal((0, 1), (Axis.Over([], 5, true).Low, Axis.Over([], 5, true).High));

    [Fact]
    public void Svg_Chart_IsWellFormedWithTitleDescriptionAndOwnIds()
    {
        XElement svg = XElement.Parse(ChartSvg.Of(Sample));
        XNamespace ns = "http://www.w3.org/2000/svg";
        Assert.Equal("Pull <on> glass", svg.Element(ns + "title")!.Value);
        Assert.Equal("Rises with speed & more.", svg.Element(ns + "desc")!.Value);
        Assert.All(svg.Descendants().Attributes("id"), id => Assert.StartsWith("s-", id.Value, StringComparison.Ordinal));
        Assert.Contains(svg.Descendants(ns + "text"), t => t.Value == "boom");
    }

    [Fact]
    public void Characters_Chart_KeepsTo78ColumnsAndNamesEveryLine()
    {
        IReadOnlyList<string> lines = ChartCharacters.Of(Sample);
        Assert.All(lines, l => Assert.InRange(l.Length, 0, 78));
        Assert.All((string[])["* pull", "o stairs", ": range", "boom", "now"], name => Assert.Contains(lines, l => l.Contains(name, StringComparison.Ordinal)));
        Assert.Contains(lines, l => l.Contains("110", StringComparison.Ordinal) || l.Contains("150", StringComparison.Ordinal));
    }
}
