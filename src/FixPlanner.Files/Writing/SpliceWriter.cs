using FixPlanner.Files.Yaml;

namespace FixPlanner.Files.Writing;

/// <summary>
/// Finds the span of the text that a change touches and what is to stand there. It answers null where it knows no
/// safe way; whether an answer is right is checked by reading the result again.
/// </summary>
internal sealed class SpliceWriter(YamlDocument document)
{
    private readonly string text = document.Text;
    private readonly TextLayout layout = new(document);
    private readonly ValueText values = new(new TextLayout(document));

    /// <summary>The ways to make a change, the one that touches least first.</summary>
    public IEnumerable<Splice> Ways(YamlChange change)
    {
        if (Write(change) is not Splice first)
        {
            yield break;
        }

        yield return first;

        // What is taken out may leave blank lines behind that a text above it (|+) would now count as its own.
        int end = first.At + first.Removed.Length;
        int blank = text.AsSpan(end).IndexOfAnyExcept(" \t\r\n");
        int stop = blank < 0 ? text.Length : layout.LineStart(end + blank);
        if (stop > end)
        {
            yield return Put(first.At, stop, first.Inserted);
        }

        // The last line took the line end before it along; a text above it (|+) may need that one.
        if (end == text.Length && first.Removed.StartsWith(layout.NewLine, StringComparison.Ordinal))
        {
            yield return Put(first.At + layout.NewLine.Length, end, first.Inserted);
        }
    }

    private Splice? Write(YamlChange change)
    {
        IReadOnlyList<PathStep> steps = change.Path.Steps;
        if (change.Old is null)
        {
            return change.New is not null && Spot.Find(document, steps.SkipLast(1)) is Spot container ? Add(container, steps[^1], change.New) : null;
        }

        return Spot.Find(document, steps) is not Spot spot ? null : change.New is null ? Remove(spot) : Replace(spot, change.New);
    }

    private Splice? Replace(Spot spot, YamlValue value)
    {
        if (spot.Parent is null)
        {
            return ReplaceWhole(spot.Node, value);
        }

        YamlNode node = spot.Node!;
        if (spot.InFlow)
        {
            return Put(node.Start, node.End, Led(spot, OneLine(node, value, inFlow: true)));
        }

        return spot.Entry is YamlEntry entry ? ReplaceBehindKey(spot, entry, value) : ReplaceItem(spot, node, value);
    }

    private Splice ReplaceWhole(YamlNode? node, YamlValue value)
    {
        string lines = value is YamlValue.Keyed { Entries.Count: > 0 } map ? values.Entries(map, "")
            : value is YamlValue.Several { Items.Count: > 0 } list ? values.Items(list, "")
            : OneLine(node, value, inFlow: false);
        if (node is not null and not YamlScalar { IsUnset: true })
        {
            return Put(node.Start, layout.ContentEnd(node), lines);
        }

        bool startsLine = layout.LineStart(text.Length) == text.Length;
        return Put(text.Length, text.Length, (startsLine ? "" : layout.NewLine) + lines + layout.NewLine);
    }

    private Splice? ReplaceBehindKey(Spot spot, YamlEntry entry, YamlValue value)
    {
        if (AfterColon(entry.Key) is not int colon)
        {
            return null;
        }

        YamlNode node = entry.Value;
        int end = layout.ContentEnd(node);
        string indent = layout.Indent(spot.Parent!.Node!.Start);
        bool onLines = ValueText.StandsOnLines(value, underKey: indent.Length == 0);
        bool isEmpty = node is YamlScalar { IsUnset: true, Text: "" };
        if (!onLines && !spot.IsSpread && !isEmpty)
        {
            return Put(node.Start, end, OneLine(node, value, inFlow: false));
        }

        // What else stands on the line of the key is a remark; it stays there.
        int lineEnd = layout.LineEnd(isEmpty || spot.IsSpread ? colon : end);
        string remark = text[(isEmpty || spot.IsSpread ? colon : end)..lineEnd];
        string written = onLines ? remark.TrimEnd() + values.BehindKey(value, indent) : Spaced(OneLine(node, value, inFlow: false)) + remark;
        return Put(colon, spot.IsSpread ? end : lineEnd, written);
    }

    private Splice ReplaceItem(Spot spot, YamlNode node, YamlValue value)
    {
        if (spot.IsSpread && value is YamlValue.Keyed { Entries.Count: > 0 } map)
        {
            string indent = layout.Indent(node.Start);
            return Put(node.Start, layout.ContentEnd(node), values.Entries(map, indent)[indent.Length..]);
        }

        return Put(node.Start, layout.ContentEnd(node), Led(spot, OneLine(node, value, inFlow: false)));
    }

    private Splice? Add(Spot container, PathStep step, YamlValue value)
    {
        switch (container.Node)
        {
            case YamlMap map when step is PathStep.ToKey key:
                if (map.Entries.Count == 0)
                {
                    return Replace(container, YamlValue.Map(KeyValuePair.Create(key.Key, value)));
                }

                string indent = layout.Indent(map.Start);
                return map.IsFlow
                    ? Put(map.Entries[^1].Value.End, map.Entries[^1].Value.End, ", " + ValueText.FlowEntry(key.Key, value))
                    : LinesAfter(map, indent + values.Entry(key.Key, value, indent));
            case YamlList list when step is not PathStep.ToKey:
                if (list.Items.Count == 0)
                {
                    return Replace(container, YamlValue.List(value));
                }

                return list.IsFlow
                    ? Put(list.Items[^1].End, list.Items[^1].End, ", " + ValueText.Flow(value))
                    : LinesAfter(list, values.Item(value, layout.Indent(list.Start), spread: list.Items[^1] is YamlMap { IsFlow: false }));
            default:
                return null;
        }
    }

    private Splice LinesAfter(YamlNode node, string lines)
    {
        int end = layout.EndWithBlankLines(node);
        return end > 0 && text[end - 1] is '\n' or '\r'
            ? Put(end, end, lines + layout.NewLine)
            : Put(layout.LineEnd(end), layout.LineEnd(end), layout.NewLine + lines);
    }

    private Splice? Remove(Spot spot) => spot.Parent?.Node switch
    {
        YamlMap { Entries.Count: 1 } => Replace(spot.Parent, YamlValue.Map()),
        YamlList { Items.Count: 1 } => Replace(spot.Parent, YamlValue.List()),
        YamlMap { IsFlow: true } map => RemoveInFlow([.. map.Entries.Select(entry => (entry.Key.Start, entry.Value.End))], spot.Index),
        YamlList { IsFlow: true } list => RemoveInFlow([.. list.Items.Select(item => (item.Start, item.End))], spot.Index),
        YamlMap map => RemoveLines(map.Entries[spot.Index].Key.Start, spot, spot.Index + 1 < map.Entries.Count ? map.Entries[spot.Index + 1].Key.Start : null),
        YamlList list when Dash(list.Items[spot.Index]) is int dash =>
            RemoveLines(dash, spot, spot.Index + 1 < list.Items.Count ? Dash(list.Items[spot.Index + 1]) : null),
        _ => null,
    };

    private Splice RemoveInFlow((int Start, int End)[] pieces, int index) => index + 1 < pieces.Length
        ? Put(pieces[index].Start, pieces[index + 1].Start, "")
        : Put(pieces[index - 1].End, pieces[index].End, "");

    private Splice? RemoveLines(int start, Spot spot, int? next)
    {
        int end = layout.ContentEnd(spot.Node!);
        if (layout.IsFirstOnLine(start))
        {
            int first = layout.LineStart(start);
            int after = layout.NextLine(end);
            bool lastLineIsOpen = after == text.Length && layout.LineStart(after) != after;
            return lastLineIsOpen && first > 0
                ? Put(text[..first].EndsWith("\r\n", StringComparison.Ordinal) ? first - 2 : first - 1, after, "")
                : Put(first, after, "");
        }

        // The first key behind a dash: the next one moves up to the dash, unless a remark of its own stands before it.
        return next is not int following ? null
            : text[layout.LineEnd(end)..following].Contains('#') ? Put(start, end, "")
            : Put(start, following, "");
    }

    private int? AfterColon(YamlScalar key)
    {
        int i = key.End;
        while (i < text.Length && text[i] is ' ' or '\t')
        {
            i++;
        }

        return i < text.Length && text[i] == ':' ? i + 1 : null;
    }

    private int? Dash(YamlNode item)
    {
        int i = item.Start - 1;
        while (i >= 0 && char.IsWhiteSpace(text[i]))
        {
            i--;
        }

        return i >= 0 && text[i] == '-' ? i : null;
    }

    // A value that takes an empty place needs the space, and in braces perhaps the colon, that are not there yet.
    private string Led(Spot spot, string written)
    {
        if (spot.Node!.Start != spot.Node.End)
        {
            return written;
        }

        bool hasColon = spot.Entry is null || text[spot.Entry.Key.End..spot.Node.Start].Contains(':');
        return hasColon ? Spaced(written, spot.Node.Start) : ": " + written;
    }

    private string Spaced(string written, int at) => at > 0 && text[at - 1] is ' ' ? written : Spaced(written);

    private static string Spaced(string written) => written.Length == 0 ? "" : " " + written;

    private static string OneLine(YamlNode? old, YamlValue value, bool inFlow) => value is YamlValue.Single single
        ? ScalarText.Write(single.Text, inFlow, old is YamlScalar scalar ? scalar.Style : YamlStyle.Plain)
        : ValueText.Flow(value);

    private Splice Put(int start, int end, string inserted) => Splice.Of(text, start, end, inserted);
}
