using FixPlanner.Files.Texts;
using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Writing;

/// <summary>How a file is laid out: where its lines end and how its owner indents.</summary>
internal sealed class TextLayout
{
    private static readonly char[] LineEnds = ['\n', '\r'];
    private readonly string text;

    public TextLayout(YamlDocument document)
    {
        text = document.Text;
        int end = text.IndexOfAny(LineEnds);
        NewLine = end < 0 ? "\n" : text[end] == '\n' ? "\n" : end + 1 < text.Length && text[end + 1] == '\n' ? "\r\n" : "\r";
        MapIndent = IndentUnder<YamlMap>(document.Root) ?? "  ";
        ListIndent = IndentUnder<YamlList>(document.Root) ?? "  ";
    }

    /// <summary>The line end of the first line, or a line feed.</summary>
    public string NewLine { get; }

    /// <summary>How far a map is set in under its key.</summary>
    public string MapIndent { get; }

    /// <summary>How far the dashes of a list are set in under its key; some owners do not set them in at all.</summary>
    public string ListIndent { get; }

    public int LineStart(int offset)
    {
        int start = offset == 0 ? 0 : text.LastIndexOfAny(LineEnds, offset - 1) + 1;
        return start == 0 && text.StartsWith(LineMap.ByteOrderMark) ? 1 : start;
    }

    /// <summary>The end of a line, before its line end.</summary>
    public int LineEnd(int offset)
    {
        int end = text.IndexOfAny(LineEnds, Math.Min(offset, text.Length));
        return end < 0 ? text.Length : end;
    }

    /// <summary>Where the next line starts, or the end of the text.</summary>
    public int NextLine(int offset)
    {
        int end = LineEnd(offset);
        return end == text.Length ? end : text[end] == '\r' && end + 1 < text.Length && text[end + 1] == '\n' ? end + 2 : end + 1;
    }

    /// <summary>What stands before an offset on its line, with everything but white space made space: the indentation of what belongs with it.</summary>
    public string Indent(int offset) => new([.. text[LineStart(offset)..offset].Select(c => c is '\t' ? '\t' : ' ')]);

    /// <summary>Whether only white space stands before an offset on its line.</summary>
    public bool IsFirstOnLine(int offset) => string.IsNullOrWhiteSpace(text[LineStart(offset)..offset]);

    /// <summary>Where the content of a node ends, without blank lines behind an indented text.</summary>
    public int ContentEnd(YamlNode node)
    {
        YamlNode last = LastWithin(node);
        return last is YamlScalar { Style: YamlStyle.Literal or YamlStyle.Folded }
            ? last.Start + text[last.Start..last.End].TrimEnd(' ', '\t', '\n', '\r').Length
            : last.End;
    }

    /// <summary>Where something new can stand behind a node: blank lines that a text says it keeps (<c>|+</c>) stay with it.</summary>
    public int EndWithBlankLines(YamlNode node) => LastWithin(node) is YamlScalar { Style: YamlStyle.Literal or YamlStyle.Folded } scalar && KeepsBlankLines(scalar)
        ? scalar.End
        : ContentEnd(node);

    private static YamlNode LastWithin(YamlNode node) => node switch
    {
        YamlMap { IsFlow: false, Entries: [.., YamlEntry last] } => LastWithin(last.Value),
        YamlList { IsFlow: false, Items: [.., YamlNode last] } => LastWithin(last),
        _ => node,
    };

    private bool KeepsBlankLines(YamlScalar scalar) => text[scalar.Start..Math.Min(LineEnd(scalar.Start), scalar.Start + 3)].Contains('+');

    private string? IndentUnder<T>(YamlNode? root)
        where T : YamlNode
    {
        var waiting = new Stack<YamlNode>();
        if (root is not null)
        {
            waiting.Push(root);
        }

        while (waiting.TryPop(out YamlNode? node))
        {
            if (node is YamlMap { IsFlow: false } map)
            {
                string outer = Indent(map.Start);
                foreach (YamlEntry entry in map.Entries.Reverse())
                {
                    bool block = entry.Value is YamlMap { IsFlow: false } or YamlList { IsFlow: false };
                    if (block && entry.Value is T && Indent(entry.Value.Start) is string inner && inner.StartsWith(outer, StringComparison.Ordinal) && inner.Length <= outer.Length + 8)
                    {
                        return inner[outer.Length..];
                    }

                    waiting.Push(entry.Value);
                }
            }
            else if (node is YamlList { IsFlow: false } list)
            {
                foreach (YamlNode item in list.Items)
                {
                    waiting.Push(item);
                }
            }
        }

        return null;
    }
}
