namespace FixPlanner.Core.Physics.Catalogue;

/// <summary>What a model computed from one set of values: numbers, words and warnings, or the reason why these values cannot go together.</summary>
public sealed class ModelAnswer
{
    private static readonly Dictionary<string, string> NoWords = [];

    // A model answers thousands of draws of which only the numbers are read: room is made for what is said only.
    private readonly Dictionary<string, double> numbers;
    private Dictionary<string, string>? words;
    private List<string>? warnings;

    private ModelAnswer(int count) => numbers = new(count);

    /// <summary>Why there is no answer, in plain words with range and unit; null when there is one.</summary>
    public string? Impossible { get; private init; }

    /// <summary>Output name to value in its unit. Not a number stands for "there is none" (a speed of turning that does not exist).</summary>
    public IReadOnlyDictionary<string, double> Numbers => numbers;

    /// <summary>Output name to word.</summary>
    public IReadOnlyDictionary<string, string> Words => words ?? NoWords;

    /// <summary>What the reader must know beside the figures.</summary>
    public IReadOnlyList<string> Warnings => warnings ?? [];

    /// <summary>An answer with its numbers.</summary>
    /// <param name="outputs">Name and value in the unit of the output.</param>
    /// <returns>The answer; words and warnings can be added.</returns>
    public static ModelAnswer Of(params ReadOnlySpan<(string Name, double Value)> outputs)
    {
        ModelAnswer answer = new(outputs.Length);
        foreach ((string name, double value) in outputs)
        {
            answer.numbers.Add(name, value);
        }

        return answer;
    }

    /// <summary>The values exclude each other.</summary>
    /// <param name="reason">Plain words, with range and unit.</param>
    /// <returns>An answer without numbers.</returns>
    public static ModelAnswer ThatIsImpossible(string reason) => new(0) { Impossible = reason };

    /// <summary>Adds a word.</summary>
    /// <param name="name">Output name.</param>
    /// <param name="word">The word.</param>
    /// <returns>This answer.</returns>
    public ModelAnswer Saying(string name, string word)
    {
        (words ??= []).Add(name, word);
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
