namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>What a model computed from one set of values: numbers, words and warnings, or the reason why these values cannot go together.</summary>
public sealed class ModelAnswer
{
    private static readonly Dictionary<string, string> NoWords = [];

    // A model answers thousands of draws of which only the numbers are read, in their order: the rest is made when it is asked for.
    private readonly (string Name, double Value)[] outputs;
    private Dictionary<string, double>? numbers;
    private List<(string Name, Func<string> Word)>? said;
    private Dictionary<string, string>? words;
    private List<string>? warnings;

    private ModelAnswer((string Name, double Value)[] outputs) => this.outputs = outputs;

    /// <summary>Why there is no answer, in plain words with range and unit; null when there is one.</summary>
    public string? Impossible { get; private init; }

    /// <summary>Output name to value in its unit. Not a number stands for "there is none" (a speed of turning that does not exist).</summary>
    public IReadOnlyDictionary<string, double> Numbers => numbers ??= outputs.ToDictionary(o => o.Name, o => o.Value);

    /// <summary>Output name to word.</summary>
    public IReadOnlyDictionary<string, string> Words => said is null ? NoWords : words ??= said.ToDictionary(w => w.Name, w => w.Word());

    /// <summary>What the reader must know beside the figures.</summary>
    public IReadOnlyList<string> Warnings => warnings ?? [];

    /// <summary>An answer with its numbers.</summary>
    /// <param name="outputs">Name and value in the unit of the output.</param>
    /// <returns>The answer; words and warnings can be added.</returns>
    public static ModelAnswer Of(params ReadOnlySpan<(string Name, double Value)> outputs) => new(outputs.ToArray());

    /// <summary>The value at a place in the order in which the model names its outputs, or of that name where an answer has another order; not a number where there is none.</summary>
    internal double At(int place, string name) =>
        place < outputs.Length && (object)outputs[place].Name == (object)name ? outputs[place].Value : Numbers.GetValueOrDefault(name, double.NaN);

    /// <summary>The values exclude each other.</summary>
    /// <param name="reason">Plain words, with range and unit.</param>
    /// <returns>An answer without numbers.</returns>
    public static ModelAnswer ThatIsImpossible(string reason) => new([]) { Impossible = reason };

    /// <summary>Adds a word.</summary>
    /// <param name="name">Output name.</param>
    /// <param name="word">The word.</param>
    /// <returns>This answer.</returns>
    public ModelAnswer Saying(string name, string word) => Saying(name, () => word);

    /// <summary>Adds a word that is worked out only where somebody reads it.</summary>
    /// <param name="name">Output name.</param>
    /// <param name="word">Gives the word.</param>
    /// <returns>This answer.</returns>
    public ModelAnswer Saying(string name, Func<string> word)
    {
        (said ??= []).Add((name, word));
        return this;
    }

    /// <summary>Adds a warning.</summary>
    /// <param name="warning">A sentence; null or empty adds nothing.</param>
    /// <returns>This answer.</returns>
    public ModelAnswer Warning(string? warning)
    {
        if (!string.IsNullOrEmpty(warning))
        {
            (warnings ??= []).Add(warning);
        }

        return this;
    }
}
