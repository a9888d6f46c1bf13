using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;

namespace FixPlanner.Tests.Files.Texts;

public class LineMapTests
{
    [Theory]
    [InlineData("", 0, 1, 1)]
    [InlineData("ab\ncd", 0, 1, 1)]
    [InlineData("ab\ncd", 2, 1, 3)]
    [InlineData("ab\ncd", 3, 2, 1)]
    [InlineData("ab\r\ncd", 4, 2, 1)]
    [InlineData("ab\rcd", 3, 2, 1)]
    [InlineData("ab\n", 3, 2, 1)]
    [InlineData("ab\n", 99, 2, 1)]
    [InlineData("\uFEFFab", 1, 1, 1)]
    public void PlaceAt_Offset_CountsAsEditorsDo(string text, int offset, int line, int column) =>
        Assert.Equal(new Place("f", line, column), new LineMap(text).PlaceAt("f", offset));
}
