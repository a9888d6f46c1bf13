namespace FixPlanner.PublishedChecks;

/// <summary>One published value that the program computes: from where, how sure we are that it stands there, and how near we must come.</summary>
/// <param name="Id">Name of the check.</param>
/// <param name="Quantity">What is computed.</param>
/// <param name="Inputs">Name, equals sign, value; semicolons between. Names end in the unit.</param>
/// <param name="Expected">The printed value.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Tolerance">Largest difference, as a share of the printed value.</param>
/// <param name="WhyTolerance">Why that tolerance and not a smaller one.</param>
/// <param name="Mark">How we know the printed value.</param>
/// <param name="IsBand">True for a band of plausible values, false for a point.</param>
/// <param name="Source">Who printed it.</param>
/// <param name="Place">Where in the source.</param>
public sealed record CheckRow(
    string Id, string Quantity, IReadOnlyDictionary<string, string> Inputs, double Expected, string Unit,
    double Tolerance, string WhyTolerance, CheckMark Mark, bool IsBand, string Source, string Place)
{
    /// <summary>A number among the inputs.</summary>
    public double this[string name] => double.Parse(Inputs[name]);

    /// <summary>A list of numbers among the inputs, bars between them.</summary>
    public double[] Numbers(string name) => [.. Inputs[name].Split('|').Select(double.Parse)];

    /// <summary>A word among the inputs.</summary>
    public string Word(string name) => Inputs[name];

    public override string ToString() => Id;
}
