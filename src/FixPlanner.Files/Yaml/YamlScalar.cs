using FixPlanner.Files.Problems;

namespace FixPlanner.Files.Yaml;

/// <summary>How a single value is written.</summary>
internal enum YamlStyle
{
    Plain,
    SingleQuoted,
    DoubleQuoted,
    Literal,
    Folded,
}

/// <summary>A single value, always the text as it was written: <c>no</c>, <c>1.0</c> and <c>105 km/h</c> stay what they are.</summary>
internal sealed class YamlScalar(Place place, int start, int end, string text, YamlStyle style) : YamlNode(place, start, end)
{
    public string Text { get; } = text;

    public YamlStyle Style { get; } = style;

    /// <summary>Whether nothing stands here: <c>key:</c>, <c>key: ~</c> or <c>key: null</c>.</summary>
    public bool IsUnset => Style == YamlStyle.Plain && IsUnsetWord(Text);

    public static bool IsUnsetWord(string plain) => plain is "" or "~" or "null" or "Null" or "NULL";
}
