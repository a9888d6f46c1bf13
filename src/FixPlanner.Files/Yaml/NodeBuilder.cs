using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace FixPlanner.Files.Yaml;

/// <summary>Builds nodes from events. An open map or list waits on a stack of our own until its end comes.</summary>
internal sealed class NodeBuilder(string file, int skip, int length, LineMap lines, ProblemList problems)
{
    private readonly Stack<Open> open = new();
    private bool hasDocument;

    /// <summary>What the first document says.</summary>
    public YamlNode? Root { get; private set; }

    /// <summary>The furthest offset that has been understood.</summary>
    public int Reached { get; private set; }

    /// <summary>Where the innermost bracket or brace opens that is not closed yet.</summary>
    public int? OpenBracket => open.FirstOrDefault(node => node.IsFlow)?.Start;

    /// <summary>Takes the next event.</summary>
    /// <returns>Whether reading should go on.</returns>
    public bool Take(ParsingEvent next)
    {
        Reached = Math.Max(Reached, Offset(next.End));
        switch (next)
        {
            case DocumentStart when hasDocument:
                problems.Add(Messages.SecondDocument(PlaceOf(next)));
                return false;
            case DocumentStart:
                hasDocument = true;
                return true;
            case AnchorAlias alias:
                problems.Add(Messages.Alias(PlaceOf(next), alias.Value.Value));
                Close(new YamlScalar(PlaceOf(next), Offset(next.Start), Offset(next.End), "", YamlStyle.DoubleQuoted));
                return true;
            case Scalar scalar:
                Refuse(scalar);
                Close(new YamlScalar(PlaceOf(next), Offset(next.Start), Offset(next.End), scalar.Value, StyleOf(scalar.Style)));
                return true;
            case MappingStart map:
                Refuse(map);
                return Begin(new Open(PlaceOf(next), Offset(next.Start), map.Style == MappingStyle.Flow, []));
            case SequenceStart list:
                Refuse(list);
                return Begin(new Open(PlaceOf(next), Offset(next.Start), list.Style == SequenceStyle.Flow, null));
            case MappingEnd or SequenceEnd:
                Close(open.Pop().ToNode(Offset(next.Start)));
                return true;
            default:
                return true;
        }
    }

    private bool Begin(Open node)
    {
        if (open.Count >= YamlReader.DeepestNesting)
        {
            problems.Add(Messages.TooDeep(node.Place, YamlReader.DeepestNesting));
            return false;
        }

        open.Push(node);
        return true;
    }

    private void Close(YamlNode node)
    {
        if (open.TryPeek(out Open? parent))
        {
            parent.Take(node, problems);
        }
        else
        {
            Root = node;
        }
    }

    private void Refuse(NodeEvent node)
    {
        if (!node.Anchor.IsEmpty)
        {
            problems.Add(Messages.Anchor(PlaceOf(node), node.Anchor.Value));
        }

        if (!node.Tag.IsEmpty)
        {
            problems.Add(Messages.Tag(PlaceOf(node), node.Tag.IsNonSpecific ? "!" : node.Tag.Value));
        }
    }

    private Place PlaceOf(ParsingEvent node) => lines.PlaceAt(file, Offset(node.Start));

    private int Offset(Mark mark) => Math.Min((int)mark.Index + skip, length);

    private static YamlStyle StyleOf(ScalarStyle style) => style switch
    {
        ScalarStyle.SingleQuoted => YamlStyle.SingleQuoted,
        ScalarStyle.DoubleQuoted => YamlStyle.DoubleQuoted,
        ScalarStyle.Literal => YamlStyle.Literal,
        ScalarStyle.Folded => YamlStyle.Folded,
        _ => YamlStyle.Plain,
    };

    /// <summary>A map (with entries) or a list (without) whose end has not come yet.</summary>
    private sealed class Open(Place place, int start, bool isFlow, List<YamlEntry>? entries)
    {
        private readonly List<YamlNode> items = [];
        private readonly Dictionary<string, Place> keys = [];
        private YamlScalar? key;
        private bool hasKey;

        public Place Place { get; } = place;

        public int Start { get; } = start;

        public bool IsFlow { get; } = isFlow;

        public void Take(YamlNode node, ProblemList problems)
        {
            if (entries is null)
            {
                items.Add(node);
            }
            else if (!hasKey)
            {
                hasKey = true;
                key = node as YamlScalar;
                if (key is null)
                {
                    problems.Add(Messages.KeyIsNotText(node.Place));
                }
                else if (!keys.TryAdd(key.Text, key.Place))
                {
                    problems.Add(Messages.RepeatedKey(key.Place, key.Text, keys[key.Text].Line));
                }
            }
            else
            {
                hasKey = false;
                if (key is not null)
                {
                    entries.Add(new YamlEntry(key, node));
                }
            }
        }

        public YamlNode ToNode(int endMark)
        {
            // The end mark of a bracketed piece stands before its bracket; that of an indented piece far behind, at the next thing.
            YamlNode? last = entries is null ? items.LastOrDefault() : entries.LastOrDefault()?.Value;
            int end = IsFlow ? endMark + 1 : last?.End ?? Start;
            return entries is null
                ? new YamlList(Place, Start, end, items, IsFlow)
                : new YamlMap(Place, Start, end, entries, IsFlow);
        }
    }
}
