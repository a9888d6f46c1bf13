using FixPlanner.Core.Physics.Uncertainty;
using FixPlanner.Core.Quantities;

namespace FixPlanner.Tests.Physics.Uncertainty;

public sealed class MonteCarloTests
{
    // Published test output of the generator that starts a stream (Java SplittableRandom and the reference C code agree): seed 1234567.
    [Fact]
    public void SplitMix_KnownSeed_GivesThePublishedNumbers()
    {
        ulong state = 1234567;
        ulong[] published = [6457827717110365317, 3203168211198807973, 9817491932198370423, 4593380528125082431, 16408922859458223821];
        Assert.Equal(published, published.Select(_ => RandomStream.SplitMix(ref state)));
    }

    [Fact]
    public void Propagate_Triangle_GivesItsClosedFormMeanAndQuantiles()
    {
        Triangle triangle = new(0, 2, 10);
        Spread spread = Only([new("x", Uncertain.Triangular(triangle))], values => values[0]).Spread!.Value;
        double standardError = Math.Sqrt(triangle.Variance / MonteCarlo.DrawCount);
        Assert.Equal(triangle.Mean, spread.Likely, 4 * standardError);
        Assert.Equal(triangle.Quantile(0.05), spread.Low, 8 * standardError);
        Assert.Equal(triangle.Quantile(0.95), spread.High, 8 * standardError);
    }

    [Fact]
    public void Propagate_SumOfNormals_GivesRootSumOfSquaresAndShares()
    {
        PropagatedOutput output = Only(
            [new("wide", Uncertain.Normal(5, 3)), new("narrow", Uncertain.Normal(1, 1))],
            values => values[0] + values[1]);
        double deviation = Math.Sqrt(10);
        Assert.Equal(6, output.Spread!.Value.Likely, 4 * deviation / Math.Sqrt(2000));
        Assert.Equal(6 + (1.645 * deviation), output.Spread.Value.High, 0.4);
        Assert.Equal("wide", output.MattersMost);
        Assert.Equal(0.9, output.Shares[0].Share, 0.04); // 3² / (3² + 1²)
    }

    [Fact]
    public void Propagate_SameNameInTwoComputations_GivesTheSameDraws()
    {
        UncertainInput shared = new("shared", Uncertain.Uniform(0, 1));
        Spread alone = Only([shared], values => values[0]).Spread!.Value;
        Spread beside = Only([new("other", Uncertain.Uniform(5, 6)), shared], values => values[1]).Spread!.Value;
        Assert.Equal(alone, beside);
    }

    [Fact]
    public void Propagate_InputsWithoutWidth_GiveNoSharesAndNoWidth()
    {
        PropagatedOutput output = Only([new("x", Uncertain.Normal(4, 0))], values => values[0] * 2);
        Assert.Equal(Spread.Certain(8), output.Spread);
        Assert.Null(output.MattersMost);
    }

    [Fact]
    public void Propagate_DrawsWithoutAnswer_AreCounted()
    {
        PropagatedOutput output = Only([new("x", Uncertain.Uniform(-1, 1))], values => Math.Sqrt(values[0]));
        Assert.InRange(output.Missing, 900, 1100);
        Assert.Equal(2.0 / 3, output.Spread!.Value.Likely, 0.03); // mean of a square root on 0..1
    }

    [Fact]
    public void Propagate_LogNormal_KeepsItsMedianUnderAFactor()
    {
        Spread spread = Only([new("x", Uncertain.LogNormal(100, 0.35))], values => values[0]).Spread!.Value;
        Assert.Equal(100 * Math.Exp(0.35 * 0.35 / 2), spread.Likely, 4.0);
        Assert.Equal(100 * Math.Exp(-1.645 * 0.35), spread.Low, 4.0);
    }

    private static PropagatedOutput Only(UncertainInput[] inputs, Func<double[], double> compute) =>
        MonteCarlo.Propagate(inputs, 1, (values, outputs) => outputs[0] = compute(values.ToArray())).Outputs[0];
}
