using System.Text;
using FixPlanner.Files.Runs;

namespace FixPlanner.Tests.Files.Runs;

public sealed class FrameCountReaderTests
{
    private static FrameCountFile Read(string text) => FrameCountReader.ReadBytes("film.csv", Encoding.UTF8.GetBytes(text));

    [Theory]
    [InlineData("tuft,steady,waving,lifted,reversed,seconds\nC3,400,230,0,270,30\n")]
    [InlineData("Reversed;Tuft;Steady;Waving;Lifted;Seconds\n270;C3;400;230;0;30\n")]
    public void ReadBytes_Counts_AreRead(string text)
    {
        FrameCountFile file = Read(text);
        Assert.Empty(file.Problems);
        Assert.Equal(("C3", 900, 270, 30.0), (file.Counts[0].Tuft, file.Counts[0].Frames, file.Counts[0].Reversed, file.Counts[0].Length.Seconds));
    }

    [Fact]
    public void ReadBytes_BadLines_AreToldAndTheRestIsUsed()
    {
        FrameCountFile file = Read("tuft,steady,waving,lifted,reversed,seconds\nA1,1,x,3,4,5\nA2,1,2\nA3,1,2,3,4,5\n");
        Assert.Equal(["FP4005", "FP4006"], file.Problems.Select(problem => problem.Code));
        Assert.Equal((2, 6), (file.Problems[0].Place.Line, file.Problems[0].Place.Column));
        Assert.Equal("A3", Assert.Single(file.Counts).Tuft);
    }

    [Theory]
    [InlineData("", "FP4002")]
    [InlineData("a,b\n1,2\n", "FP4030")]
    public void ReadBytes_NothingUsable_SaysWhy(string text, string code) => Assert.Equal(code, Assert.Single(Read(text).Problems).Code);
}
