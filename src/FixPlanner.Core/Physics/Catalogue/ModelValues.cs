namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>The values with which a model computes, each in the unit that its input declares. Already checked against the possible ranges.</summary>
public sealed class ModelValues
{
    private readonly IReadOnlyDictionary<string, double> values;
    private readonly IReadOnlyList<ModelInput> inputs;

    internal ModelValues(IReadOnlyList<ModelInput> inputs, IReadOnlyDictionary<string, double> values)
    {
        this.inputs = inputs;
        this.values = values;
    }

    /// <summary>The value of an input that is required or has a default.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>In the declared unit.</returns>
    public double this[string name] => values[name];

    /// <summary>The value of an optional input.</summary>
    /// <param name="name">Its name.</param>
    /// <returns>In the declared unit; null when not given.</returns>
    public double? Find(string name) => values.TryGetValue(name, out double value) ? value : null;

    /// <summary>The word chosen.</summary>
    /// <param name="name">Name of a choice.</param>
    /// <returns>One of its words.</returns>
    public string Word(string name) => inputs.First(input => input.Name == name).Choices[(int)values[name]];
}
