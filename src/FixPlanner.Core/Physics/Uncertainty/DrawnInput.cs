namespace FixPlanner.Core.Physics.Uncertainty;

/// <summary>An input with its draws. Kept, it is drawn and ranked once for all computations that share it.</summary>
internal sealed class DrawnInput
{
    private Ranked? ranks;

    private DrawnInput(string name, bool isCertain, double[] values) => (Name, IsCertain, Values) = (name, isCertain, values);

    /// <summary>Its name, which alone chooses its stream of chance.</summary>
    public string Name { get; }

    /// <summary>True when there was nothing to draw.</summary>
    public bool IsCertain { get; }

    /// <summary>One value for each draw; not to be changed.</summary>
    public double[] Values { get; }

    /// <summary>Ranks of the values.</summary>
    public Ranked Ranks => ranks ??= Ranked.Of(Values);

    /// <summary>A value that was drawn elsewhere.</summary>
    public static DrawnInput Of(string name, double[] values) => new(name, false, values);

    /// <summary>Draws an input.</summary>
    public static DrawnInput Of(UncertainInput input)
    {
        double[] values = new double[MonteCarlo.DrawCount];
        if (input.Value.IsCertain)
        {
            Array.Fill(values, input.Value.Likely);
            return new(input.Name, true, values);
        }

        RandomStream stream = RandomStream.For(MonteCarlo.Seed, input.Name);
        for (int i = 0; i < values.Length; i++)
        {
            values[i] = input.Value.Quantile(stream.NextShare());
        }

        return new(input.Name, false, values);
    }
}
