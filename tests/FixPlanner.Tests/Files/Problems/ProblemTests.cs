using FixPlanner.Files.Problems;

namespace FixPlanner.Tests.Files.Problems;

public class ProblemTests
{
    private static readonly Problem Example = new(
        "FP2107",
        Severity.Error,
        new Place("rules/zones/cowl/fixes/seal-bonnet-rear-edge.yaml", 14, 9),
        "the cost \"40\" has no currency",
        "budgets are added up, so every amount needs the same currency",
        "write the currency after the amount, for example: 40 EUR");

    [Fact]
    public void ToString_Problem_HasThreeLinesInTheDocumentedForm() => Assert.Equal(
        """
        rules/zones/cowl/fixes/seal-bonnet-rear-edge.yaml:14:9: error FP2107: the cost "40" has no currency
          why:  budgets are added up, so every amount needs the same currency
          mend: write the currency after the amount, for example: 40 EUR
        """,
        Example.ToString());

    [Fact]
    public void ToString_WholeFile_NamesNoLine() =>
        Assert.StartsWith("gone.yaml: warning FP2107: ", (Example with { Place = Place.Whole("gone.yaml"), Severity = Severity.Warning }).ToString());

    [Fact]
    public void ToString_EscapeCodesInTheFile_AreShownNotSent()
    {
        string shown = (Example with { What = "unknown key \"\u001b[2J\r\n\"" }).ToString();

        Assert.Contains("\\x1b[2J\\r\\n", shown);
        Assert.Equal(3, shown.Split('\n').Length);
        Assert.DoesNotContain('\u001b', shown);
    }

    [Fact]
    public void InOrder_SameProblemTwice_StandsOnce()
    {
        var problems = new ProblemList();
        problems.Add(Example with { Place = new Place("b.yaml", 2, 1) });
        problems.Add(Example with { Place = new Place("b.yaml", 10, 1) });
        problems.Add(Example with { Place = new Place("a.yaml", 30, 1), Severity = Severity.Note });
        problems.Add(Example with { Place = new Place("b.yaml", 2, 1) });

        Assert.Equal(["a.yaml:30:1", "b.yaml:2:1", "b.yaml:10:1"], problems.InOrder().Select(problem => problem.Place.ToString()));
        Assert.True(problems.HasErrors);
    }

    [Fact]
    public void HasErrors_OnlyWarnings_IsFalse()
    {
        var problems = new ProblemList();
        problems.Add(Example with { Severity = Severity.Warning });

        Assert.False(problems.HasErrors);
        Assert.False(problems.IsEmpty);
    }
}
