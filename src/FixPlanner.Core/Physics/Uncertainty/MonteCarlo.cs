namespace FixPlanner.Core.Physics.Uncertainty;

/// <summary>A computation on one draw.</summary>
/// <param name="inputs">One value for each input, in their order.</param>
/// <param name="outputs">To be filled; not a number where there is no answer.</param>
public delegate void DrawComputation(ReadOnlySpan<double> inputs, Span<double> outputs);

/// <summary>
/// Carries ranges through a computation: 2,000 draws, fixed seed, common random numbers (each input has a stream of its own by its
/// name, so that two designs that share an input are compared on the same draws).
/// </summary>
/// <validity>Inputs are drawn independently. Means have a standard error of sd/45, the 5 % and 95 % points one of about sd/21 (normal case).</validity>
public static class MonteCarlo
{
    /// <summary>How many draws every computed range rests on.</summary>
    public const int DrawCount = 2000;

    /// <summary>The seed of every computed range that is shown or written.</summary>
    public const ulong Seed = 1;

    /// <summary>Draws, computes and sums up.</summary>
    /// <param name="inputs">Inputs; certain ones take part without draws.</param>
    /// <param name="outputCount">Number of outputs.</param>
    /// <param name="compute">The computation.</param>
    /// <returns>The range of each output and the inputs that matter.</returns>
    public static Propagated Propagate(IReadOnlyList<UncertainInput> inputs, int outputCount, DrawComputation compute)
    {
        ArgumentNullException.ThrowIfNull(inputs);
        ArgumentNullException.ThrowIfNull(compute);
        DrawnInput[] drawn = [.. inputs.Select(DrawnInput.Of)];
        double[][] results = [.. Enumerable.Range(0, outputCount).Select(_ => new double[DrawCount])];
        Each(drawn, outputCount, compute, (draw, outputs) =>
        {
            for (int i = 0; i < outputs.Length; i++)
            {
                results[i][draw] = outputs[i];
            }
        });
        return new([.. results.Select(result => DrawnOutput.Summed(drawn, result))]);
    }

    /// <summary>Runs the computation on every draw of inputs that were drawn before.</summary>
    internal static void Each(IReadOnlyList<DrawnInput> drawn, int outputCount, DrawComputation compute, Action<int, double[]> keep)
    {
        double[] values = new double[drawn.Count];
        double[] outputs = new double[outputCount];
        for (int draw = 0; draw < DrawCount; draw++)
        {
            for (int i = 0; i < values.Length; i++)
            {
                values[i] = drawn[i].Values[draw];
            }

            compute(values, outputs);
            keep(draw, outputs);
        }
    }
}
