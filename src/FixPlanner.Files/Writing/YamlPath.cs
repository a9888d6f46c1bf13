using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace FixPlanner.Files.Writing;

/// <summary>
/// The way to a value: <c>rounds[id=before].findings[observation=cowl-tufts].answer</c>, <c>limits.never[+]</c>, <c>readings[0]</c>.
/// Items that have a name of their own are best reached by it, because numbers shift when somebody edits the file.
/// </summary>
public sealed class YamlPath : IEquatable<YamlPath>
{
    private const string Special = ".[]=,+\"";

    private readonly string text;

    private YamlPath(IReadOnlyList<PathStep> steps)
    {
        Steps = steps;
        text = Write(steps);
    }

    /// <summary>The way to the whole.</summary>
    public static YamlPath Root { get; } = new([]);

    internal IReadOnlyList<PathStep> Steps { get; }

    /// <summary>On to the value of a key.</summary>
    /// <param name="key">The key; made where it is missing.</param>
    /// <returns>The longer path.</returns>
    public YamlPath Key(string key) => Then(new PathStep.ToKey(key));

    /// <summary>On to an item by its number.</summary>
    /// <param name="index">From 0 to the number of items; the latter makes a new one.</param>
    /// <returns>The longer path.</returns>
    public YamlPath Item(int index) => Then(new PathStep.ToItem(index));

    /// <summary>On to a new item at the end of a list.</summary>
    /// <returns>The longer path.</returns>
    public YamlPath New() => Then(new PathStep.ToNew());

    /// <summary>On to the last item of a list in which a key has a value; made where there is none.</summary>
    /// <param name="key">The key.</param>
    /// <param name="value">Its value.</param>
    /// <returns>The longer path.</returns>
    public YamlPath Where(string key, string value) => Where([new(key, value)]);

    /// <summary>On to the last item of a list in which several keys have these values; made where there is none.</summary>
    /// <param name="conditions">At least one key with its value.</param>
    /// <returns>The longer path.</returns>
    /// <exception cref="ArgumentException">No condition.</exception>
    public YamlPath Where(IReadOnlyList<KeyValuePair<string, string>> conditions)
    {
        ArgumentNullException.ThrowIfNull(conditions);
        return conditions.Count > 0
            ? Then(new PathStep.ToWhere(conditions))
            : throw new ArgumentException("an item is found by at least one key", nameof(conditions));
    }

    /// <summary>Reads a path back from its text.</summary>
    /// <param name="text">As <see cref="ToString"/> writes it.</param>
    /// <returns>The path, or null when the text is none.</returns>
    public static YamlPath? Parse(string text) => new PathParser(text).Read() is IReadOnlyList<PathStep> steps ? new YamlPath(steps) : null;

    /// <inheritdoc/>
    public override string ToString() => text;

    /// <inheritdoc/>
    public bool Equals(YamlPath? other) => other is not null && other.text == text;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as YamlPath);

    /// <inheritdoc/>
    public override int GetHashCode() => text.GetHashCode(StringComparison.Ordinal);

    /// <summary>The path with its last steps replaced: what leads to the same place once it exists.</summary>
    internal YamlPath Cut(int count, PathStep? instead = null) => new([.. Steps.Take(count), .. instead is null ? (PathStep[])[] : [instead]]);

    internal YamlPath Then(IEnumerable<PathStep> more) => new([.. Steps, .. more]);

    private YamlPath Then(PathStep step) => new([.. Steps, step]);

    private static string Write(IReadOnlyList<PathStep> steps)
    {
        var written = new StringBuilder();
        foreach (PathStep step in steps)
        {
            written.Append(step switch
            {
                PathStep.ToKey key => (written.Length == 0 ? "" : ".") + Word(key.Key),
                PathStep.ToItem item => $"[{item.Index}]",
                PathStep.ToWhere where => $"[{string.Join(',', where.Conditions.Select(one => $"{Word(one.Key)}={Word(one.Value)}"))}]",
                _ => "[+]",
            });
        }

        return written.ToString();
    }

    private static string Word(string word) => word.Length > 0 && !word.Any(c => Special.Contains(c) || char.IsControl(c) || char.IsSurrogate(c))
        ? word
        : $"\"{JsonEncodedText.Encode(word, JavaScriptEncoder.Default)}\"";
}
