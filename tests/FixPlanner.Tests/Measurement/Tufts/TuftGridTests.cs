using FixPlanner.Core.Measurement.Tufts;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Measurement.Tufts;

public sealed class TuftGridTests
{
    private static TuftGrid Grid(params string[] lines) => TuftGrid.OfLetters("roof-rear", RoadSpeed.FromKilometresPerHour(80), "before", lines);

    [Fact]
    public void Letters_ThereAndBack_AreTheSame()
    {
        string[] lines = ["ssw.", "slrr", "ll.s"];
        Assert.Equal(lines, Grid(lines).Letters());
        Assert.Throws<ArgumentException>(() => Grid("sx"));
        Assert.Throws<ArgumentException>(() => Grid("s", "ss"));
    }

    [Fact]
    public void Lines_Columns_TellWhereTheFlowLeavesAndLands()
    {
        IReadOnlyList<ColumnLine> lines = Grid("sslw", "wrl.", "lrsw", "rws.").Lines;
        Assert.Equal(1.5, lines[0].Leaves!.Value.Middle);
        Assert.Null(lines[0].Lands);
        Assert.Equal((0.5, 2.5), (lines[1].Leaves!.Value.Middle, lines[1].Lands!.Value.Middle));
        Assert.Equal((-0.5, 1.5), (lines[2].Leaves!.Value.Middle, lines[2].Lands!.Value.Middle));
        Assert.Null(lines[3].Leaves);
    }

    [Fact]
    public void Shares_CountReadableTuftsOnly()
    {
        TuftGrid grid = Grid("ssss", "rrl.", "rr..");
        Assert.Equal(4.0 / 9, grid.ReversedShare!.Value.Estimate, 9);
        Assert.Equal(5.0 / 9, grid.SeparatedShare!.Value.Estimate, 9);
        Assert.Equal(0.25, grid.NotReadableShare, 9);
        Assert.Null(Grid("..", "..").ReversedShare);
    }

    [Fact]
    public void With_OneTuft_LeavesTheOldGridAlone()
    {
        TuftGrid empty = TuftGrid.Empty("bonnet", RoadSpeed.FromKilometresPerHour(60), "before", 2, 3);
        TuftGrid read = empty.With(1, 2, TuftLook.Reversed);
        Assert.Equal(TuftLook.NotReadable, empty[1, 2]);
        Assert.Equal(["...", "..r"], read.Letters());
    }

    [Fact]
    public void Of_BeforeAndAfter_CountsAndSpeaks()
    {
        string[] gone = [.. Enumerable.Repeat("rrrrrrrr", 8)];
        string[] down = [.. Enumerable.Repeat("ssssssss", 7), "llllllll"];
        TuftComparison comparison = TuftComparison.Of(Grid(gone), Grid(down));
        Assert.Equal((56, 0), (comparison.Better, comparison.Worse));
        Assert.True(comparison.SeparatedChange!.Value.High < 0);
        Assert.Equal(7, comparison.LineMoves!.Value, 9);
        Assert.StartsWith("The flow lies on more", comparison.Sentence, StringComparison.Ordinal);
        Assert.StartsWith("No clear change", TuftComparison.Of(Grid("ssl"), Grid("sll")).Sentence, StringComparison.Ordinal);
        Assert.StartsWith("Too little", TuftComparison.Of(Grid("ssl"), Grid("...")).Sentence, StringComparison.Ordinal);
    }

    // Share 0.3 over 30 s of film is about 100 looks: one standard error is 0.046, so the interval is about ±0.09 (worked by hand).
    [Fact]
    public void ReversedShare_ManyFramesOfOneEddy_CountAsFewLooks()
    {
        FrameCount film = new("C3", 400, 230, 0, 270, Duration.FromSeconds(30));
        Assert.Equal(100, film.IndependentLooks, 9);
        Assert.Equal(0.3, film.ReversedShare!.Value.Estimate, 9);
        Assert.InRange(film.ReversedShare!.Value.HalfWidth, 0.08, 0.10);
        Assert.Equal(TuftLook.Steady, film.Look);
    }
}
