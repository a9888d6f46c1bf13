using FixPlanner.Core.Quantities;

namespace FixPlanner.Files.Problems;

/// <summary>More about each message than fits into it, by its code.</summary>
public static class Explanations
{
    private const string Resource = "FixPlanner.Files.Problems.explanations.txt";

    private static readonly Lazy<IReadOnlyList<Explanation>> Read = new(() => [.. Blocks().Select(Of)]);

    /// <summary>All of them, by code.</summary>
    public static IReadOnlyList<Explanation> All => Read.Value;

    /// <summary>What a code means.</summary>
    /// <param name="code">A code as messages write it; small letters do.</param>
    /// <returns>The explanation, or null when there is no such code.</returns>
    public static Explanation? Find(string code) => All.FirstOrDefault(one => one.Code.Equals(code.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>The code that was probably meant.</summary>
    /// <param name="code">What was typed.</param>
    /// <returns>A code, or null when none is near.</returns>
    public static string? Nearest(string code) => NearestWord.To(code.Trim().ToUpperInvariant(), All.Select(one => one.Code));

    // Parted by blank lines; the first line is the code and a title, the rest the text.
    private static string[] Blocks()
    {
        using Stream stream = typeof(Explanations).Assembly.GetManifestResourceStream(Resource)!;
        using StreamReader reader = new(stream);
        return reader.ReadToEnd().ReplaceLineEndings("\n").Trim().Split("\n\n");
    }

    private static Explanation Of(string block)
    {
        string[] lines = block.Split('\n', 2);
        string[] head = lines[0].Split(' ', 2);
        return new(head[0], head[1], lines[1]);
    }
}

/// <summary>What a code means.</summary>
/// <param name="Code">The code, such as FP2107.</param>
/// <param name="Title">In a few words.</param>
/// <param name="Text">In sentences, with an example where one helps; indented lines are examples.</param>
public sealed record Explanation(string Code, string Title, string Text);
