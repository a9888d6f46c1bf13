using CsCheck;
using FixPlanner.Core.Physics.Separation;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Separation;

public class SeparationTests
{
    private static readonly Area Front = Area.FromSquareMetres(1.75);

    [Theory]
    [InlineData(110, 64)]
    [InlineData(80, 88)]
    public void Of_FrontEdge_NeedsTheRadiusOfTheRule(double kmh, double neededMm)
    {
        // Rule of 1985 (from memory): U r / nu above 1.3e5, by hand.
        FrontEdge edge = FrontEdge.Of(Length.FromMillimetres(20), Front, AirSpeed.FromKilometresPerHour(kmh));

        Assert.Equal(neededMm, edge.NeededRadius.Millimetres, 0.6);
        Assert.Equal(EdgeFlow.Separated, edge.Flow);
    }

    [Fact]
    public void Of_FrontEdge_RounderOrFasterNeverGetsWorse() =>
        Gen.Select(Gen.Double[0, 0.25], Gen.Double[8, 55]).Sample((radius, speed) =>
        {
            FrontEdge At(double r, double u) => FrontEdge.Of(Length.FromMetres(r), Front, AirSpeed.FromMetresPerSecond(u));
            Assert.True(At(radius + 0.02, speed).Flow <= At(radius, speed).Flow);
            Assert.True(At(radius, speed + 3).Flow <= At(radius, speed).Flow);
        });

    [Theory]
    [InlineData(ObstacleKind.StepDown, 0.18, 0.24)]
    [InlineData(ObstacleKind.Fence, 0.27, 0.39)]
    public void Of_Bubble_ScalesWithHeight(ObstacleKind kind, double low, double high)
    {
        // 30 mm by hand: 6 to 8 heights of a step, 9 to 13 of a fence.
        Bubble bubble = Bubble.Of(kind, Length.FromMillimetres(30));

        Assert.Equal(low, bubble.Low.Metres, 1e-6);
        Assert.Equal(high, bubble.High.Metres, 1e-6);
        Assert.Equal(0, bubble.LandsWithin(bubble.Low));
        Assert.Equal(1, bubble.LandsWithin(bubble.High));
    }

    [Fact]
    public void LandsWithin_MoreRoom_IsSurer() =>
        Gen.Select(Gen.Double[0, 0.6], Gen.Double[0, 0.1]).Sample((room, more) =>
        {
            Bubble bubble = Bubble.Of(ObstacleKind.Fence, Length.FromMillimetres(30));
            Assert.True(bubble.LandsWithin(Length.FromMetres(room + more)) >= bubble.LandsWithin(Length.FromMetres(room)));
        });

    [Theory]
    [InlineData(8, SlantFlow.Attached)]
    [InlineData(20, SlantFlow.SideVortices)]
    [InlineData(30, SlantFlow.Unstable)]
    [InlineData(45, SlantFlow.Separated)]
    public void Of_Slant_IsClassed(double degrees, SlantFlow expected) =>
        Assert.Equal(expected, TailSlant.Of(Angle.FromDegrees(degrees), 0.2));

    [Fact]
    public void Of_ShortLip_IsNotASlant() =>
        Assert.Equal(SlantFlow.TooShort, TailSlant.Of(Angle.FromDegrees(30), 0.05));

    [Fact]
    public void MayBeAdvised_NothingLandsInTheUnstableRange() =>
        Gen.Double[26, 32].Sample(degrees => Assert.False(TailSlant.MayBeAdvised(Angle.FromDegrees(degrees))));

    [Fact]
    public void SimpleBodyDragCoefficient_HasItsLeastNear12AndItsPeakAt30() =>
        Gen.Double[0, 90].Sample(degrees => Assert.InRange(TailSlant.SimpleBodyDragCoefficient(Angle.FromDegrees(degrees)), 0.230 - 1e-12, 0.378 + 1e-12));

    [Theory]
    [InlineData(2, TailEdgeFlow.Clean)]
    [InlineData(6, TailEdgeFlow.NearlyClean)]
    [InlineData(30, TailEdgeFlow.Soft)]
    [InlineData(80, TailEdgeFlow.Round)]
    public void Of_TailEdge_IsClassed(double millimetres, TailEdgeFlow expected) =>
        Assert.Equal(expected, TailEdge.Of(Length.FromMillimetres(millimetres)));

    [Fact]
    public void Cavity_Deeper_NeverGainsLess() =>
        Gen.Select(Gen.Double[0, 0.3], Gen.Double[0, 0.1]).Sample((depth, more) =>
            Assert.True(TailAddition.Cavity(depth + more).Likely <= TailAddition.Cavity(depth).Likely));

    [Fact]
    public void LeaningBoards_TooSteep_CanBackfire()
    {
        Assert.True(TailAddition.LeaningBoards(Angle.FromDegrees(10)).High < 0);
        Assert.True(TailAddition.LeaningBoards(Angle.FromDegrees(20)).High > 0);
    }
}
