namespace FixPlanner.Files.Writing;

/// <summary>Writes values in the manner of the file: its line ends and its indentation.</summary>
internal sealed class ValueText(TextLayout layout)
{
    // A map or list up to this length stands on one line, so that one finding is one line of a difference.
    private const int LongestLine = 100;

    /// <summary>A value on one line, in brackets or braces where it is a list or map.</summary>
    public static string Flow(YamlValue value) => value switch
    {
        YamlValue.Single single => ScalarText.Write(single.Text, inFlow: true),
        YamlValue.Several list => $"[{string.Join(", ", list.Items.Select(item => item == YamlValue.Unset ? "~" : Flow(item)))}]",
        YamlValue.Keyed map => $"{{{string.Join(", ", map.Entries.Select(entry => FlowEntry(entry.Key, entry.Value)))}}}",
        _ => "",
    };

    public static string FlowEntry(string key, YamlValue value) => $"{ScalarText.Key(key)}: {Flow(value)}";

    /// <summary>A whole entry of a map that is written line by line, without line end behind it.</summary>
    public string Entry(string key, YamlValue value, string indent) => ScalarText.Key(key) + ":" + BehindKey(value, indent);

    /// <summary>What follows the colon of a key.</summary>
    public string BehindKey(YamlValue value, string indent)
    {
        if (!StandsOnLines(value, underKey: indent.Length == 0))
        {
            return value == YamlValue.Unset ? "" : " " + OneLine(value);
        }

        return layout.NewLine + (value is YamlValue.Keyed map
            ? Entries(map, indent + layout.MapIndent)
            : Items((YamlValue.Several)value, indent + layout.ListIndent));
    }

    /// <summary>A whole item of a list that is written line by line, with its dash.</summary>
    public string Item(YamlValue value, string indent, bool spread = false)
    {
        if (value is YamlValue.Keyed { Entries.Count: > 0 } map && (spread || StandsOnLines(map, underKey: false)))
        {
            string inner = indent + "  ";
            return indent + "- " + Entries(map, inner)[inner.Length..];
        }

        return indent + "-" + (value == YamlValue.Unset ? "" : " " + OneLine(value));
    }

    public string Entries(YamlValue.Keyed map, string indent) =>
        string.Join(layout.NewLine, map.Entries.Select(entry => indent + Entry(entry.Key, entry.Value, indent)));

    public string Items(YamlValue.Several list, string indent) =>
        string.Join(layout.NewLine, list.Items.Select(item => Item(item, indent)));

    /// <summary>Whether a value needs lines of its own; at the outer level a map always gets them, because it will grow.</summary>
    public static bool StandsOnLines(YamlValue value, bool underKey) => value switch
    {
        YamlValue.Keyed { Entries.Count: > 0 } map =>
            underKey || map.LineByLine || map.Entries.Any(entry => IsNested(entry.Value)) || Flow(map).Length > LongestLine,
        YamlValue.Several { Items.Count: > 0 } list => list.Items.Any(item => item is not YamlValue.Single) || Flow(list).Length > LongestLine,
        _ => false,
    };

    private static bool IsNested(YamlValue value) =>
        value is YamlValue.Keyed || (value is YamlValue.Several list && list.Items.Any(item => item is not YamlValue.Single));

    private static string OneLine(YamlValue value) => value is YamlValue.Single single ? ScalarText.Write(single.Text, inFlow: false) : Flow(value);
}
