using CsCheck;
using FixPlanner.Wizard.Shell;

namespace FixPlanner.Journeys.Screens;

public sealed class WrapTests
{
    [Fact]
    public void To_Paragraph_BreaksAtBlanksAndHangs()
    {
        List<TextLine> rows = Wrap.To([TextLine.Of("1. the air leaves the roof late", hanging: 3)], 14);
        Assert.Equal(["1. the air", "   leaves the", "   roof late"], rows.Select(row => row.Text));
    }

    [Fact]
    public void To_Emphasis_StaysWithItsWords()
    {
        List<TextLine> rows = Wrap.To([TextLine.Of(new Words("Why: ", Emphasis.Underline), new Words("it is loud"))], 8);
        Assert.Equal("Why: it", rows[0].Text);
        Assert.Equal(Emphasis.Underline, rows[0].Parts[0].Emphasis);
        Assert.Equal(Emphasis.None, rows[1].Parts[0].Emphasis);
    }

    [Fact]
    public void To_AnyTextAndWidth_FitsAndLosesNoLetter() =>
        Gen.Select(Gen.Char["ab é車 -,"].Array[0, 80], Gen.Int[2, 30], Gen.Int[0, 6]).Sample((text, width, hanging) =>
        {
            string whole = new(text);
            List<TextLine> rows = Wrap.To([TextLine.Of(whole, hanging: hanging)], width);
            string kept = string.Concat(rows.Select(row => row.Text)).Replace(" ", "", StringComparison.Ordinal);
            return rows.All(row => row.Width <= width) && kept == whole.Replace(" ", "", StringComparison.Ordinal);
        }, iter: 3_000, threads: 1);

    [Theory]
    [InlineData("abc", 5, "abc  ")]
    [InlineData("abcdef", 4, "abc…")]
    [InlineData("車車車", 4, "車…")]
    public void Fit_AnyText_TakesExactlyItsColumns(string text, int width, string start)
    {
        string fitted = Columns.Fit(text, width);
        Assert.StartsWith(start, fitted, StringComparison.Ordinal);
    }
}
