using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.Tests.Measurement.Statistics;

public sealed class StatisticsTests
{
    [Fact]
    public void Power_NoEffect_IsTheLevel() => Assert.Equal(0.05, StudentT.Power(0, 7, 0.05), 1e-6);

    [Theory]
    [InlineData(1)]
    [InlineData(2.5)]
    [InlineData(60)]
    public void Power_LargerEffect_IsLarger(double freedom)
    {
        double[] powers = [.. Enumerable.Range(0, 12).Select(effect => StudentT.Power(effect, freedom, 0.05))];
        Assert.Equal(powers.Order(), powers);
        Assert.InRange(powers[^1], 0.3, 1.0000001);
    }

    [Fact]
    public void Of_BeliefAndMeasurementThatAgree_LandBetween()
    {
        BeliefUpdate update = BeliefUpdate.Of(-0.04, 0.02, -0.055, 0.018);
        Assert.InRange(update.Mean, -0.055, -0.04);
        Assert.True(update.Spread < 0.018 && !update.Disagree);
        Assert.Equal(0.999846, update.ChanceBelowZero, 1e-5);
    }

    [Fact]
    public void Of_BeliefAndMeasurementFarApart_Warn() => Assert.True(BeliefUpdate.Of(-0.04, 0.01, 0.03, 0.01).Disagree);

    [Fact]
    public void Of_FewPairs_WeighLess() =>
        Assert.True(BeliefUpdate.Of(0, 1, 1, 0.5, 2).Mean < BeliefUpdate.Of(0, 1, 1, 0.5).Mean);

    // Newcombe's intervals of a share: 81 of 263 gives 0.2553 to 0.3662 (Wilson, from memory of the 1998 paper, recomputed).
    [Fact]
    public void Wilson_KnownCase_AgreesWithThePaper()
    {
        ConfidenceInterval share = Share.Wilson(81, 263);
        Assert.Equal(0.2553, share.Low, 5e-5);
        Assert.Equal(0.3662, share.High, 5e-5);
    }

    // 56 of 70 less 48 of 80: 0.2, interval 0.0524 to 0.3339 (Newcombe's method 10, from memory, recomputed).
    [Fact]
    public void Difference_KnownCase_AgreesWithThePaper()
    {
        ConfidenceInterval change = Share.Difference(Share.Wilson(48, 80), Share.Wilson(56, 70));
        Assert.Equal(0.2, change.Estimate, 1e-9);
        Assert.Equal(0.0524, change.Low, 5e-5);
        Assert.Equal(0.3339, change.High, 5e-5);
    }

    [Fact]
    public void MeanDifference_SameSeed_IsTheSameAndNearTheT()
    {
        double[] before = [0.80, 0.82, 0.79, 0.81, 0.80, 0.83];
        double[] after = [0.76, 0.77, 0.75, 0.78, 0.76, 0.77];
        ConfidenceInterval first = Bootstrap.MeanDifference(before, after, 9);
        Assert.Equal(first, Bootstrap.MeanDifference(before, after, 9));
        ConfidenceInterval t = MeanDifference.Welch(before, after).Interval(0.95);
        Assert.InRange(first.HalfWidth, 0.5 * t.HalfWidth, t.HalfWidth);
    }

    [Fact]
    public void Normal_ManyDraws_HaveMeanZeroAndSpreadOne()
    {
        Chance chance = new(42);
        double[] draws = [.. Enumerable.Range(0, 20_000).Select(_ => chance.Normal())];
        SampleSummary summary = SampleSummary.Of(draws);
        Assert.Equal(0, summary.Mean, 0.03);
        Assert.Equal(1, summary.StandardDeviation, 0.03);
    }
}
