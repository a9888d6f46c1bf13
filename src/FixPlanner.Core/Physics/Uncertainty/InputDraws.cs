namespace FixPlanner.Core.Physics.Uncertainty;

/// <summary>Draws of inputs that several computations share: each input is drawn and ranked once.</summary>
internal sealed class InputDraws
{
    // Far more inputs than one car has with all its sets.
    private const int Most = 400;

    private readonly Kept<UncertainInput, DrawnInput> kept = new(Most);

    /// <summary>The draws of an input.</summary>
    public DrawnInput Of(UncertainInput input) => kept.Of(input, () => DrawnInput.Of(input));

    /// <summary>The draws of several inputs, each once.</summary>
    public DrawnInput[] Of(IEnumerable<UncertainInput> inputs) => [.. inputs.Select(Of).Distinct()];
}
