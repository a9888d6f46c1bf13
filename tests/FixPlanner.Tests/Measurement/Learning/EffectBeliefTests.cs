using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Measurement.Learning;

namespace FixPlanner.Tests.Measurement.Learning;

public sealed class EffectBeliefTests
{
    [Fact]
    public void Likelihood_OfACertainEffect_IsTheRatioOfTwoNormals()
    {
        // -2 % if the cause is there, 0 if not; measured -1.5 with an error of 0.5: exp(-0.5) against exp(-4.5), both with a twentieth elsewhere.
        EffectBelief belief = EffectBelief.Of(Packs.OneCause, Packs.OneCause.Fix("lip")!, EffectOn.Drag)!;
        double[] table = belief.Likelihood(-1.5, 0.5);
        double wide = Math.Sqrt(36 + 0.25);
        double elsewhere = 0.05 * Math.Exp(-1.5 * 1.5 / (2 * wide * wide)) / wide;
        double without = (0.95 * Math.Exp(-4.5) / 0.5) + elsewhere;
        double with = (0.95 * Math.Exp(-0.5) / 0.5) + elsewhere;
        Assert.Equal(without / with, table[0], 1e-9);
        Assert.Equal(1, table[1]);
    }

    [Fact]
    public void Likelihood_FarFromEverything_SettlesNothing()
    {
        double[] table = EffectBelief.Of(Packs.OneCause, Packs.OneCause.Fix("lip")!, EffectOn.Drag)!.Likelihood(30, 0.5);
        Assert.Equal(1, table[0] / table[1], 1e-6);
    }

    [Fact]
    public void Shown_OfARange_IsItsMeanWithTheCauseAndItsBadPartWithout()
    {
        EffectBelief belief = EffectBelief.Of(Packs.Backfires, Packs.Backfires.Fix("lip")!, EffectOn.Drag)!;
        Assert.Equal(-1, belief.Shown([0, 1]).Mean, 3);

        // Triangle from -1 over 1 to 3, plus is good: below zero lies the mean -1/24 (worked by hand).
        Assert.Equal(1.0 / 24, belief.Shown([1, 0]).Mean, 3);
    }

    [Fact]
    public void SizeAfter_APreciseMeasurement_IsWhatWasMeasured()
    {
        EffectBelief belief = EffectBelief.Of(Packs.Backfires, Packs.Backfires.Fix("lip")!, EffectOn.Drag)!;
        (double mean, double deviation) = belief.SizeAfter([0, 1], -2, 0.05);
        Assert.Equal(-2, mean, 2);
        Assert.InRange(deviation, 0.04, 0.06);
        (double vague, double wide) = belief.SizeAfter([0, 1], -2, 50);
        Assert.InRange(vague, -1.2, -0.9);
        Assert.True(wide > 0.7);
    }

    [Fact]
    public void Of_AQuantityThePackDoesNotState_IsNothing() =>
        Assert.Null(EffectBelief.Of(Packs.OneCause, Packs.OneCause.Fix("lip")!, EffectOn.Noise));
}
