using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning.BestSet;
using FixPlanner.Core.Planning.Effects;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Planning.Effects;

/// <summary>Amounts and fractions (docs/theory/plan.md, check cases 4 to 6, 11 and 12, worked out by hand).</summary>
public class EffectFiguresTests
{
    [Fact]
    public void Parts_RangeAcrossZero_SplitAsByHand()
    {
        TriangleParts parts = TriangleParts.Of(new(-2, 2, 6));
        Assert.Equal(2.083333, parts.Good, 6);
        Assert.Equal(-0.083333, parts.Bad, 6);
        Assert.Equal(0.958333, (0.5 * parts.Good) + parts.Bad, 6);
    }

    [Theory]
    [InlineData(-3, -1, 4)]
    [InlineData(-3, 0, 4)]
    [InlineData(-1, 3, 3)]
    [InlineData(-2, -2, 5)]
    [InlineData(1, 2, 3)]
    [InlineData(-3, -2, -1)]
    public void Parts_AnyRange_EqualsNumericalMeans(double low, double likely, double high)
    {
        Triangle range = new(low, likely, high);
        double good = 0;
        double bad = 0;
        const int Steps = 200_000;
        for (int i = 0; i < Steps; i++)
        {
            double x = range.Quantile((i + 0.5) / Steps);
            good += Math.Max(x, 0) / Steps;
            bad += Math.Min(x, 0) / Steps;
        }

        TriangleParts parts = TriangleParts.Of(range);
        Assert.Equal(good, parts.Good, 5);
        Assert.Equal(bad, parts.Bad, 5);
    }

    [Fact]
    public void Nominal_CureAndReduce_OverlapAsByHand()
    {
        // f cures 4, g reduces 2: a = max(4 / 0.95, 2 / 0.8) = 4.210526, fractions 0.95 and 0.475; together 4.1, not 6.
        EffectLayout layout = new(1, 2,
        [
            new(0, EffectOn.Cooling, Triangle.Certain(4), [(0, FixAction.Cures)]),
            new(1, EffectOn.Cooling, Triangle.Certain(2), [(0, FixAction.Reduces)]),
        ]);
        EffectFigures figures = EffectFigures.Nominal(layout);
        Assert.Equal(4.210526, figures.Amount[0], 6);
        Assert.Equal(0.95, figures.Fraction[0], 12);
        Assert.Equal(0.475, figures.Fraction[1], 12);
        Assert.Equal(4.1, figures.Amount[0] * (1 - (0.05 * 0.525)), 12);
    }

    [Fact]
    public void Nominal_OneNoiseCause_LeastEnergyInClosedForm()
    {
        // -2 dB, cap 0.8: x = 0.369043, least E = x / (cap - x) = 0.856332, fraction 0.8.
        EffectLayout layout = new(1, 1, [new(0, EffectOn.Noise, Triangle.Certain(2), [(0, FixAction.Reduces)])]);
        EffectFigures figures = EffectFigures.Nominal(layout);
        Assert.Equal(0.856332, figures.Energy[0], 6);
        Assert.Equal(0.8, figures.NoiseFraction[0], 6);
    }

    [Fact]
    public void Nominal_GeneratedPacks_EverySingleFixComesBack()
    {
        for (int seed = 0; seed < 20; seed++)
        {
            EffectLayout layout = new GeneratedCar(seed).Layout;
            EffectFigures figures = EffectFigures.Nominal(layout);
            for (int e = 0; e < layout.Additive.Rows; e++)
            {
                double gain = 0;
                for (int l = layout.Additive.LinkStart[e]; l < layout.Additive.LinkStart[e + 1]; l++)
                {
                    Assert.True(figures.Fraction[l] <= layout.Additive.LinkCap[l] + 1e-12);
                    gain += figures.Amount[layout.Additive.LinkPlace[l]] * figures.Fraction[l];
                }

                Assert.Equal(TriangleParts.Of(layout.Additive.PlusGood[e]).Good, gain, 12);
                Assert.Equal(layout.Additive.PlusGood[e].Mean, gain + figures.Side[e], 12);
            }

            for (int e = 0; e < layout.Noise.Rows; e++)
            {
                Assert.Equal(TriangleParts.Of(layout.Noise.PlusGood[e]).Good, NoiseAlone(layout, figures, e), 9);
            }
        }
    }

    [Fact]
    public void DeriveAt_AnyDraw_CapsHoldAndEffectsComeBack()
    {
        EffectLayout layout = new GeneratedCar(3).Layout;
        EffectFigures figures = new(layout);
        Random chance = new(7);
        for (int draw = 0; draw < 50; draw++)
        {
            double[] shares = [.. Enumerable.Range(0, layout.Fixes).Select(_ => chance.NextDouble())];
            figures.DeriveAt(shares);
            for (int e = 0; e < layout.Additive.Rows; e++)
            {
                double gain = figures.Side[e];
                for (int l = layout.Additive.LinkStart[e]; l < layout.Additive.LinkStart[e + 1]; l++)
                {
                    Assert.InRange(figures.Fraction[l], 0, layout.Additive.LinkCap[l] + 1e-12);
                    gain += figures.Amount[layout.Additive.LinkPlace[l]] * figures.Fraction[l];
                }

                Assert.Equal(layout.Additive.PlusGood[e].Quantile(shares[layout.Additive.Fix[e]]), gain, 10);
            }
        }
    }

    [Fact]
    public void Nominal_OrderOfEffects_DoesNotMatter()
    {
        (EffectOn, double, int)[] claims = [(EffectOn.Noise, 1, 0), (EffectOn.Noise, 3, 1), (EffectOn.Noise, 5, 2), (EffectOn.Drag, 2, 0), (EffectOn.Drag, 3, 1)];
        StatedEffect[] stated = [.. claims.Select(c => new StatedEffect(c.Item3, c.Item1, Triangle.Certain(c.Item2), [(0, FixAction.Reduces), (c.Item3 + 1, FixAction.Cures)]))];
        EffectFigures forward = EffectFigures.Nominal(new(4, 3, stated));
        EffectFigures backward = EffectFigures.Nominal(new(4, 3, [.. stated.Reverse()]));
        Assert.Equal(forward.Energy, backward.Energy);
        Assert.Equal(forward.NoiseFraction, backward.NoiseFraction);
        Assert.Equal(forward.Amount, backward.Amount);
    }

    [Fact]
    public void Drag_TwoParts_AddOnTheCarAsItIs()
    {
        // CdA 0.8: parts of 4 % and 6 % of the car leave 0.720000; chained percentages (0.721920) would be wrong; the second then measures 6.25 %.
        EffectLayout layout = new(2, 2,
        [
            new(0, EffectOn.Drag, Triangle.Certain(4), [(0, FixAction.Cures)]),
            new(1, EffectOn.Drag, Triangle.Certain(6), [(1, FixAction.Cures)]),
        ]);
        CarProblem car = new(layout, [], []);
        car.Fill(EffectFigures.Nominal(layout), [1, 1], Worthwhile.Direct(new Dictionary<EffectOn, double> { [EffectOn.Drag] = 0.8 / 100 }));
        double both = car.Problem.Points([true, true]);
        double first = car.Problem.Points([true, false]);
        Assert.Equal(0.72, 0.8 - both, 12);
        Assert.Equal(0.0625, (both - first) / (0.8 - first), 12);
    }

    private static double NoiseAlone(EffectLayout layout, EffectFigures figures, int e)
    {
        double before = 1;
        double removed = 0;
        for (int l = layout.Noise.LinkStart[e]; l < layout.Noise.LinkStart[e + 1]; l++)
        {
            double energy = figures.Energy[layout.Noise.LinkPlace[l]];
            before += energy;
            removed += energy * figures.NoiseFraction[l];
        }

        return 10 * Math.Log10(before / (before - removed));
    }
}
